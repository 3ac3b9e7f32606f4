package peakproof.document;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import org.jspecify.annotations.Nullable;

/**
 * What was really done.
 *
 * @param completeSince from here on a day without an entry is a rest day
 * @param weeks how past weeks were meant, by their Monday
 * @param days entries by date
 */
public record Log(
    String at,
    @Nullable LocalDate completeSince,
    Map<LocalDate, String> weeks,
    SortedMap<LocalDate, Day> days) {

  /** One day's entry. */
  public record Day(
      String at,
      List<Session> sessions,
      boolean rest,
      @Nullable Missed missed,
      @Nullable Morning morning,
      List<Pain> pain,
      @Nullable Ill ill,
      Set<String> medicine) {}

  /** Sessions missed; because of illness, work, travel, closed or other. */
  public record Missed(@Nullable Integer sessions, @Nullable String because) {}

  /** The morning's entries: seconds of sleep, ratings 0–10 (mood 10 is best), beats a minute. */
  public record Morning(
      @Nullable Double sleepSeconds,
      @Nullable Double fatigue,
      @Nullable Double soreness,
      @Nullable Double mood,
      @Nullable Double stress,
      @Nullable Double restingHeartRate) {}

  /** Pain at a site: level 0–10, when it is felt, how it was next morning, signs seen. */
  public record Pain(
      String at,
      String site,
      @Nullable Double level,
      @Nullable String when,
      @Nullable String nextMorning,
      Set<String> signs) {}

  /** An illness entry. */
  public record Ill(
      String at,
      Set<String> signs,
      @Nullable Boolean fever,
      @Nullable String kind,
      @Nullable LocalDate over) {}
}
