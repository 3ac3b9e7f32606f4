package peakproof.document;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A log read without its plan.
 *
 * @param log null when there is any fault
 * @param positions where each JSON pointer stands; pointers begin with {@code /log}
 */
public record LogReading(@Nullable Log log, Positions positions, List<Fault> faults) {}
