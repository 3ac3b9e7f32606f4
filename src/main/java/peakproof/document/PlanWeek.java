package peakproof.document;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One written week; a {@code like} week comes with the other's days filled in.
 *
 * @param starts its Monday
 * @param focus build, peak, taper, lighter or camp; null when unsaid
 * @param hours the coach's own sum in seconds
 * @param without declared gaps by sport or {@code open-water}, with the reason
 * @param away travel, illness or work
 */
public record PlanWeek(
    String at,
    LocalDate starts,
    @Nullable String focus,
    @Nullable Double hours,
    @Nullable String note,
    Map<String, String> without,
    @Nullable String away,
    Map<DayOfWeek, PlanDay> days) {}
