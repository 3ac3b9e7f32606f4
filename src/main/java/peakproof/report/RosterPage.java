package peakproof.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import peakproof.rule.Severity;

/**
 * A roster as a page: readable as it is, sorted and filtered with a little script.
 *
 * @param heading the races and the day
 * @param summary how many athletes stop at which word
 * @param since what became of all since a day; null when nobody asked
 * @param shared what the squad has in common, to be read first
 * @param more what else it has in common
 * @param named the things in common by which rows may be told: none about health
 * @param races true when there is more than one
 */
public record RosterPage(
    Frame frame,
    String heading,
    String summary,
    @Nullable String since,
    List<Shared> shared,
    List<Shared> more,
    List<Shared> named,
    boolean races,
    List<Row> rows,
    List<String> notAudited) {
  /** Stands in every such page and nowhere else, so that no other is taken for one. */
  public static final String SIGN = "<main id=\"main\" class=\"roster\"";

  /**
   * An athlete.
   *
   * @param page the file of the athlete's page, or null
   * @param worst null when nothing was found
   * @param counts of each severity, heaviest first
   * @param in numbers of {@code named} that are found here
   */
  record Row(
      String athlete,
      @Nullable String page,
      @Nullable Severity worst,
      String first,
      long days,
      String race,
      List<Integer> counts,
      String log,
      String logDate,
      String next,
      String nextDate,
      String in,
      @Nullable SinceDay since,
      String notCompared) {
    /** By how much it changed; what is new counts most. */
    int news() {
      return since == null
          ? 0
          : 1000 * since.added().size() + 30 * since.heavier().size() + since.gone().size();
    }
  }

  /** The page of a roster. */
  public static String of(Roster roster) {
    List<Shared> all = roster.shared();
    List<Shared> first = roster.sharedFirst();
    List<Shared> named = all.stream().filter(shared -> !shared.health()).toList();
    Map<String, Integer> numbers = new HashMap<>();
    named.forEach(shared -> numbers.put(shared.rule(), numbers.size()));
    List<Roster.Row> rows = roster.rows();
    return Html.of(
        "roster",
        new RosterPage(
            Frame.of(
                    "Roster",
                    "This page tells what hurts. It is for the coach, not for passing on.")
                .with("roster.js"),
            String.join(" · ", RosterWords.heading(roster)),
            Summary.nameless(roster.ranks(), roster.plans()).replace('\u00a0', ' '),
            spoken(RosterWords.since(roster)),
            first,
            all.stream().filter(shared -> !first.contains(shared)).toList(),
            named,
            rows.stream().map(row -> race(row.line())).distinct().count() > 1,
            rows.stream().map(row -> row(row, numbers)).toList(),
            roster.notAudited()));
  }

  private static @Nullable String spoken(@Nullable String text) {
    return text == null ? null : text.replace('\u00a0', ' ');
  }

  private static Row row(Roster.Row row, Map<String, Integer> numbers) {
    RosterLine line = row.line();
    List<Integer> counts = new ArrayList<>();
    for (Severity severity : Severity.values()) {
      counts.add(line.found(severity));
    }
    return new Row(
        line.athlete(),
        row.page(),
        line.rank().heaviest(),
        RosterWords.first(line),
        line.daysToGo(),
        race(line),
        counts,
        RosterWords.logEnds(line),
        line.logEnds() == null ? "" : line.logEnds().toString(),
        RosterWords.next(line),
        line.next() == null ? "9999" : line.next().date().toString(),
        line.rules().stream()
            .filter(numbers::containsKey)
            .map(rule -> String.valueOf(numbers.get(rule)))
            .collect(Collectors.joining(" ")),
        line.since(),
        line.since() == null ? "" : RosterWords.notCompared(line));
  }

  private static String race(RosterLine line) {
    return line.event() + ", " + Dates.day(line.raceDate(), line.raceDate());
  }
}
