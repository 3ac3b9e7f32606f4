package peakproof.fact;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * An entry a finding points at.
 *
 * @param pointer JSON pointer of the entry
 * @param date its day, or null when it is about more than a day
 * @param week the Monday of its week, or null when it is about more than a week
 */
public record Where(String pointer, @Nullable LocalDate date, @Nullable LocalDate week) {}
