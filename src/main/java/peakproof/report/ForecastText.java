package peakproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Workup;
import peakproof.fact.Words;
import peakproof.measure.CutOffMargin;
import peakproof.measure.Forecast;
import peakproof.measure.Forecast.Leg;
import peakproof.measure.Projected;

/** The race-day forecast for a coach: ranges, how they were come by, and what would narrow them. */
public final class ForecastText {
  private static final int NAME = 12;
  private static final int TIME = 9;
  private static final int DRAWING = 24;

  private final Workup workup;
  private final int width;
  private final List<String> lines = new ArrayList<>();

  private ForecastText(Workup workup, int width) {
    this.workup = workup;
    this.width = width;
  }

  /** The whole forecast in lines of at most {@code width}. */
  public static String of(Workup workup, int width) {
    ForecastText text = new ForecastText(workup, width);
    text.write();
    return String.join("\n", text.lines) + "\n";
  }

  private void write() {
    wrapped(
        "",
        Lines.dotted(
            List.of(
                workup.athlete(),
                workup.event() + ", " + Lines.bound(Dates.full(workup.raceDate())),
                Lines.bound("as of " + Dates.full(workup.asOf())))));
    wrapped("", "From tests and log; the goal is no evidence. Times in hours, minutes, seconds.");
    lines.add("");
    lines.add(columns("", "fast", "likely", "slow", "goal"));
    workup.forecast().legs().forEach(this::leg);
    cutOffs();
    workup.forecast().legs().forEach(this::arithmetic);
    lines.add("");
    narrowing();
    lines.add("Not medical advice; race rules, local law and licensed practitioners come first.");
  }

  private void leg(Leg leg) {
    Projected.Range range = leg.time().range();
    if (range == null) {
      lines.add(columns(leg.name(), "?", "?", "?", GoalPart.clock(leg.goal())));
      return;
    }
    String row =
        columns(
            leg.name(),
            GoalPart.clock(range.low()),
            GoalPart.clock(range.likely()),
            GoalPart.clock(range.high()),
            GoalPart.clock(leg.goal()));
    lines.add((row + "  " + drawing(range, leg.goal()) + verdict(leg)).stripTrailing());
  }

  private static String columns(String name, String low, String likely, String high, String goal) {
    return String.format(
            Locale.ROOT,
            "%-" + NAME + "s%" + TIME + "s%" + TIME + "s%" + TIME + "s%" + TIME + "s",
            name,
            low,
            likely,
            high,
            goal)
        .stripTrailing();
  }

  /** From the fast to the slow end, the likely time as {@code +} and the goal as {@code o}. */
  private static String drawing(Projected.Range range, @Nullable Double goal) {
    double from = goal == null ? range.low() : Math.min(goal, range.low());
    double to = goal == null ? range.high() : Math.max(goal, range.high());
    if (to <= from) {
      return "";
    }
    char[] line = " ".repeat(DRAWING).toCharArray();
    for (int i = at(range.low(), from, to); i <= at(range.high(), from, to); i++) {
      line[i] = '-';
    }
    line[at(range.low(), from, to)] = '|';
    line[at(range.high(), from, to)] = '|';
    line[at(range.likely(), from, to)] = '+';
    if (goal != null) {
      line[at(goal, from, to)] = 'o';
    }
    return new String(line);
  }

  private static int at(double value, double from, double to) {
    return (int) Math.round((DRAWING - 1) * (value - from) / (to - from));
  }

  private static String verdict(Leg leg) {
    Leg.Verdict verdict = leg.verdict();
    if (verdict == null || leg.name().equals("transitions")) {
      return "";
    }
    return switch (verdict) {
      case AHEAD -> "  goal ahead of the range";
      case WITHIN -> "";
      case BEHIND -> "  goal behind the range";
    };
  }

  private void cutOffs() {
    if (workup.forecast().cutOffs().isEmpty()) {
      return;
    }
    lines.add("");
    lines.add("Limits, from the start");
    for (Forecast.CutOff limit : workup.forecast().cutOffs()) {
      Projected.Range range = limit.reached().range();
      wrapped(
          "  " + limit.name() + " ",
          GoalPart.clock(limit.limit())
              + (range == null
                  ? ": not projected"
                  : ": likely reached after "
                      + GoalPart.clock(range.likely())
                      + left(limit.limit(), range.likely())
                      + "; at the slow end after "
                      + GoalPart.clock(range.high())));
    }
  }

  private static String left(double limit, double likely) {
    Double share = CutOffMargin.of(limit, likely).share().value();
    return share == null ? "" : ", " + Words.share(share) + " of it left";
  }

  private void arithmetic(Leg leg) {
    Projected time = leg.time();
    if (leg.name().equals("total")) {
      return;
    }
    lines.add("");
    lines.add(leg.name());
    if (time.range() == null) {
      wrapped("  ", "not projected: it needs " + time.because());
    }
    time.arithmetic().forEach(line -> wrapped("  ", line));
    List<String> from =
        time.entries().stream()
            .map(workup.positions()::of)
            .map(place -> new Places(workup.plan(), workup.raceDate()).line(place))
            .distinct()
            .toList();
    if (!from.isEmpty()) {
      wrapped("  ", "from " + String.join(", ", from));
    }
  }

  private void narrowing() {
    List<String> open =
        workup.forecast().legs().stream()
            .filter(leg -> leg.time().range() == null && !leg.name().equals("total"))
            .map(leg -> leg.time().because())
            .toList();
    Projected.Narrowing most = workup.forecast().narrowsMost();
    if (!open.isEmpty()) {
      wrapped("What would help most: ", String.join("; ", open) + ".");
    } else if (most != null) {
      wrapped(
          "What would narrow this most: ",
          most.entry() + ", by about " + Words.minutes(most.seconds() / 60) + ".");
    }
  }

  private void wrapped(String first, String text) {
    lines.addAll(Lines.wrapped(first, 2, text, width));
  }
}
