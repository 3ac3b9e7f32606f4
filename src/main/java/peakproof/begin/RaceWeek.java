package peakproof.begin;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The six days before the race, short and sharp; the day before the last one rests. */
final class RaceWeek {
  /** Days before the race that belong to it. */
  static final int DAYS = 6;

  private final Brief brief;

  RaceWeek(Brief brief) {
    this.brief = brief;
  }

  /** What each day has; a day off hands its session to the day before it. */
  Map<LocalDate, List<Work>> days() {
    Map<LocalDate, List<Work>> days = new TreeMap<>();
    List<LocalDate> free = new ArrayList<>();
    for (int before = DAYS; before > 2; before--) {
      LocalDate day = brief.race().minusDays(before);
      if (!brief.daysOff().contains(day.getDayOfWeek())) {
        free.add(day);
      }
    }
    List<Work> sessions = sessions();
    for (int i = 0; i < sessions.size(); i++) {
      LocalDate day = free.get(Math.min(i, free.size() - 1));
      days.computeIfAbsent(day, none -> new ArrayList<>()).add(sessions.get(i));
    }
    days.put(brief.race().minusDays(1), List.of(openers()));
    days.put(
        brief.race(), List.of(new Work("race: " + Scalar.of(brief.event().name()), List.of())));
    return days;
  }

  /** Amounts: common practice, no source. */
  private List<Work> sessions() {
    boolean isLong = brief.isLong();
    return List.of(
        Work.of(
                "swim",
                "300 easy, 4x50 drill r15s, "
                    + (isLong ? "4x200" : "4x100")
                    + " race r20s, 100 easy")
            .with("where", "pool"),
        Work.of(
                "bike",
                isLong
                    ? "20min easy, 3x4min race r3min, 10min easy"
                    : "10min easy, 3x3min race r3min, 10min easy")
            .with("kit", "[race-bike]"),
        Work.of(
                "run",
                isLong
                    ? "15min easy, 4x20s hard r1min, 10min easy"
                    : "10min easy, 4x20s hard r1min, 5min easy")
            .with("kit", "[race-shoes]"),
        new Swims(brief).last());
  }

  private static Work openers() {
    return Work.of("bike", "20min easy")
        .with("kit", "[race-bike]")
        .then(new Work("run: 10min easy", List.of()));
  }
}
