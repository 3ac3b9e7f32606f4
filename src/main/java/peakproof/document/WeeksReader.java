package peakproof.document;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Reads a plan's weeks and fills in the days of those written {@code like} another. */
final class WeeksReader {
  private final Desk desk;

  WeeksReader(Desk desk) {
    this.desk = desk;
  }

  /** The weeks by their Mondays. */
  List<PlanWeek> read(List<Node> nodes) {
    WeekReader reader = new WeekReader(desk);
    boolean allRead = true;
    Map<LocalDate, WeekReader.Written> weeks = new LinkedHashMap<>();
    for (Node node : nodes) {
      WeekReader.Written week = node.faulty() ? null : reader.read(node);
      allRead &= week != null;
      if (week != null) {
        WeekReader.Written before = weeks.putIfAbsent(week.week().starts(), week);
        if (before != null) {
          desk.fault(
              week.startsAt(),
              "a second week starts on "
                  + week.week().starts()
                  + ", the first at "
                  + before.startsAt(),
              "expected one week for each Monday",
              "put their days together, or check the dates");
        }
      }
    }
    boolean known = allRead;
    return weeks.values().stream()
        .map(week -> filled(week, weeks, known))
        .sorted(Comparator.comparing(PlanWeek::starts))
        .toList();
  }

  /**
   * The week with the days it takes over.
   *
   * @param known false when some week's start could not be read, so that a week not found may be it
   */
  private PlanWeek filled(
      WeekReader.Written written, Map<LocalDate, WeekReader.Written> weeks, boolean known) {
    Map<DayOfWeek, PlanDay> days = new EnumMap<>(DayOfWeek.class);
    days.putAll(written.week().days());
    Set<LocalDate> passed = new LinkedHashSet<>();
    WeekReader.@Nullable Written at = written;
    boolean first = true;
    while (at != null && at.like() != null) {
      LocalDate like = at.like();
      passed.add(at.week().starts());
      if (passed.contains(like)) {
        if (like.equals(written.week().starts())) {
          circle(written, passed);
        }
        break;
      }
      WeekReader.Written next = weeks.get(like);
      if (next == null && first && known) {
        desk.fault(
            written.likeAt(),
            "there is no week that starts on " + like,
            "expected the start of another week of this plan",
            "write one of "
                + Words.listed(
                    weeks.keySet().stream()
                        .filter(start -> !start.equals(written.week().starts()))
                        .sorted()
                        .map(LocalDate::toString)
                        .toList()));
      }
      if (next != null) {
        next.week().days().forEach(days::putIfAbsent);
      }
      at = next;
      first = false;
    }
    PlanWeek week = written.week();
    return new PlanWeek(
        week.at(),
        week.starts(),
        week.focus(),
        week.hours(),
        week.note(),
        week.without(),
        week.away(),
        Collections.unmodifiableMap(days));
  }

  /** Tells a circle once, at its earliest week. */
  private void circle(WeekReader.Written written, Set<LocalDate> passed) {
    if (Collections.min(passed).equals(written.week().starts())) {
      String way = passed.stream().map(LocalDate::toString).collect(Collectors.joining(", "));
      desk.fault(
          written.likeAt(),
          "'like' leads back to this week, by " + way,
          "expected a week that is written out in the end",
          "write the days of one of them");
    }
  }
}
