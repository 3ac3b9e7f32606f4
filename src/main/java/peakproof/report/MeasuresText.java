package peakproof.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import peakproof.audit.Workup;
import peakproof.fact.Measured;
import peakproof.measure.Digits;

/**
 * The computed numbers for a coach: those of the plan as a whole with where they come from, and its
 * weeks as a table; with {@code all} every number of every week, day and session as well.
 */
public final class MeasuresText {
  private static final String PLAN = "plan";
  private static final int MOST_PLACES = 3;
  private static final double WHOLE = 1 - 1e-9;

  private final Workup workup;
  private final int width;
  private final Places places;
  private final List<String> lines = new ArrayList<>();

  private MeasuresText(Workup workup, int width) {
    this.workup = workup;
    this.width = width;
    this.places = new Places(workup.plan(), workup.raceDate());
  }

  /** The list in lines of at most {@code width}. */
  public static String of(Workup workup, boolean all, int width) {
    MeasuresText text = new MeasuresText(workup, width);
    text.write(all);
    return String.join("\n", text.lines) + "\n";
  }

  private void write(boolean all) {
    lines.addAll(
        Lines.wrapped(
            "",
            2,
            Lines.dotted(
                List.of(
                    workup.athlete(),
                    workup.event() + ", " + Lines.bound(Dates.full(workup.raceDate())),
                    Lines.bound("as of " + Dates.full(workup.asOf())))),
            width));
    Map<String, List<Measured>> groups = new LinkedHashMap<>();
    workup
        .values()
        .forEach(
            value -> groups.computeIfAbsent(heading(value), of -> new ArrayList<>()).add(value));
    group(PLAN, groups.getOrDefault(PLAN, List.of()));
    lines.add("");
    lines.addAll(WeekTable.of(workup.values()));
    lines.add("");
    if (all) {
      groups.remove(PLAN);
      groups.forEach(this::group);
    } else {
      lines.add("every number of every week, day and session: --all");
    }
  }

  /** What a value is of, its sport aside. */
  private static String heading(Measured value) {
    Map<String, String> scope = value.scope();
    if (scope.containsKey("week")) {
      return "week of " + scope.get("week");
    }
    if (scope.containsKey("session")) {
      return scope.get("day") + ", " + scope.get("session");
    }
    return scope.containsKey("day") && !scope.containsKey("sport")
        ? String.valueOf(scope.get("day"))
        : PLAN;
  }

  private void group(String heading, List<Measured> values) {
    lines.add("");
    lines.add(heading);
    int widest = values.stream().mapToInt(value -> label(value).length()).max().orElse(0);
    values.forEach(value -> row(value, widest));
  }

  private static String label(Measured value) {
    String of =
        value.scope().entrySet().stream()
            .filter(key -> key.getKey().equals("sport") || key.getKey().equals("leg"))
            .map(Map.Entry::getValue)
            .collect(Collectors.joining(" "));
    return of.isEmpty() ? value.name() : value.name() + " " + of;
  }

  private void row(Measured value, int widest) {
    Double number = value.value();
    String what =
        number == null
            ? "? " + value.unknown()
            : Digits.fixed(number, 2).replaceAll("\\.?0+$", "")
                + " "
                + value.unit()
                + coverage(value)
                + from(value);
    String first = "  " + label(value) + " ".repeat(widest - label(value).length() + 2);
    lines.addAll(Lines.wrapped(first, first.length(), what, width));
  }

  private static String coverage(Measured value) {
    Double coverage = value.coverage();
    return coverage == null || coverage >= WHOLE
        ? ""
        : ", " + Math.round(100 * coverage) + "% of the days known";
  }

  private String from(Measured value) {
    List<String> all =
        value.from().stream().map(workup.positions()::of).map(places::line).distinct().toList();
    if (all.isEmpty()) {
      return "";
    }
    List<String> told = all.subList(0, Math.min(MOST_PLACES, all.size()));
    int left = all.size() - told.size();
    return " (" + String.join(", ", told) + (left > 0 ? " and " + left + " more" : "") + ")";
  }
}
