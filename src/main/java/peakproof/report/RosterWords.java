package peakproof.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import peakproof.fact.KeySession;
import peakproof.fact.Words;

/** What a roster says in words, the same in text and on a page. */
final class RosterWords {
  /** A squad that prepares for more races than these is told how many. */
  private static final int EVENTS = 3;

  private RosterWords() {}

  /** {@code 8 athletes · Saltmarsh Long Course, Sun 4 Jul 2027 · as of Sun 30 May 2027}. */
  static List<String> heading(Roster roster) {
    List<RosterLine> lines = roster.lines();
    List<String> parts = new ArrayList<>();
    parts.add(plural(lines.size(), "athlete"));
    Map<String, Integer> events = new LinkedHashMap<>();
    lines.forEach(
        line -> events.merge(line.event() + ", " + Dates.full(line.raceDate()), 1, Integer::sum));
    if (events.size() > EVENTS) {
      parts.add(events.size() + " races");
    } else {
      events.forEach(
          (event, count) -> parts.add(event + (events.size() > 1 ? " (" + count + ")" : "")));
    }
    LocalDate first = lines.stream().map(RosterLine::asOf).min(LocalDate::compareTo).orElse(null);
    LocalDate last = lines.stream().map(RosterLine::asOf).max(LocalDate::compareTo).orElse(null);
    if (first != null && last != null) {
      parts.add(
          "as of "
              + (first.equals(last)
                  ? Dates.full(first)
                  : Dates.full(first) + " to " + Dates.full(last) + ", each by its log"));
    }
    return parts;
  }

  /** What became of all since a day; null when nobody asked. */
  static @Nullable String since(Roster roster) {
    LocalDate date = roster.since();
    if (date == null) {
      return null;
    }
    List<SinceDay> all =
        roster.lines().stream().flatMap(line -> Stream.ofNullable(line.since())).toList();
    List<String> parts = new ArrayList<>();
    changed(parts, all, SinceDay::added, "new");
    changed(parts, all, SinceDay::heavier, "heavier");
    changed(parts, all, SinceDay::gone, "gone");
    if (parts.isEmpty()) {
      parts.add("nothing changed");
    }
    long apart = all.stream().filter(one -> !one.compared()).count();
    if (apart > 0) {
      parts.add(apart + " not compared");
    }
    return "since " + Dates.full(date) + ": " + Lines.dotted(parts);
  }

  private static void changed(
      List<String> parts,
      List<SinceDay> all,
      Function<SinceDay, List<Headline>> kind,
      String what) {
    int findings = all.stream().mapToInt(since -> kind.apply(since).size()).sum();
    long athletes = all.stream().filter(since -> !kind.apply(since).isEmpty()).count();
    if (findings > 0) {
      parts.add(Lines.bound(findings + " " + what + " in " + athletes));
    }
  }

  /** {@code No open-water swim this week}, or that nothing was found. */
  static String first(RosterLine line) {
    Headline first = line.first();
    String title = first == null ? "nothing found" : first.title();
    return line.complete() ? title : title + " (incomplete: a rule is broken)";
  }

  /** {@code 30 May}, or why there is no such day. */
  static String logEnds(RosterLine line) {
    LocalDate ends = line.logEnds();
    return ends == null
        ? line.log() == null ? "no log" : "empty"
        : line.raceDate().getYear() == ends.getYear() ? Words.day(ends) : ends.toString();
  }

  /** {@code Sat 5 Jun bike 5h, long}. */
  static String next(RosterLine line) {
    KeySession next = line.next();
    if (next == null) {
      return line.daysToGo() > 0 ? "none written" : "";
    }
    String amount = next.minutes() == null ? "" : " " + Words.minutes(next.minutes());
    String what =
        switch (next.kind()) {
          case RACE, REHEARSAL -> " " + next.kind().word();
          default -> " " + next.sport().word() + amount + ", " + next.kind().word();
        };
    return Dates.day(next.date(), line.raceDate()) + what;
  }

  /** Why what became of an athlete's findings is not told. */
  static String notCompared(RosterLine line) {
    SinceDay since = line.since();
    return since != null && line.asOf().isAfter(since.date())
        ? "the plan could not be judged as of that day"
        : "judged as of " + Dates.day(line.asOf(), line.raceDate()) + ", nothing is logged since";
  }

  static String plural(int count, String noun) {
    return count + " " + noun + (count == 1 ? "" : "s");
  }
}
