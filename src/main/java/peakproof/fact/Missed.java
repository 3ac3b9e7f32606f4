package peakproof.fact;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Log;

/**
 * Sessions missed in the seven days up to the as-of date.
 *
 * @param sessions how many, a missed day without a number counting as one
 * @param days on how many days
 */
public record Missed(double sessions, double days, List<Where> entries) implements Fact {
  private static final int DAYS = 7;

  @Override
  public List<Where> where() {
    return entries;
  }

  static List<Missed> in(@Nullable Log log, LocalDate asOf) {
    if (log == null) {
      return List.of();
    }
    double sessions = 0;
    List<Where> entries = new ArrayList<>();
    for (var day : log.days().subMap(asOf.minusDays(DAYS - 1), asOf.plusDays(1)).entrySet()) {
      Log.Missed missed = day.getValue().missed();
      if (missed != null) {
        sessions += missed.sessions() == null ? 1 : missed.sessions();
        entries.add(new Where(day.getValue().at(), day.getKey(), null));
      }
    }
    return entries.isEmpty() ? List.of() : List.of(new Missed(sessions, entries.size(), entries));
  }
}
