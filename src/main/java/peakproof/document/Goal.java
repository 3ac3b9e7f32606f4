package peakproof.document;

import org.jspecify.annotations.Nullable;

/** Goal times in seconds, and the effort the bike leg is ridden at. */
public record Goal(
    String at,
    @Nullable Double swim,
    @Nullable Double bike,
    @Nullable Double run,
    @Nullable Double transitions,
    @Nullable Double total,
    @Nullable Target bikeEffort) {}
