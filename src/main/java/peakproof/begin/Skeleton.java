package peakproof.begin;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;

/** The weeks of a plan, from what an athlete did lately to the race. */
final class Skeleton {
  /** How much further one week swims without a rest (common practice, no source). */
  private static final double SWIM_GROWTH = 1.25;

  private final Brief brief;
  private final List<Frame.Week> frame;
  private final List<WeekAmounts> amounts;
  private final Map<DayOfWeek, Slots.Role> roles;
  private final Map<LocalDate, List<Work>> raceWeek;

  Skeleton(Brief brief, int peakWeeks, int taperWeeks) {
    this.brief = brief;
    this.frame = Frame.of(brief, peakWeeks, taperWeeks);
    this.roles = Slots.of(brief.daysOff(), brief.longestRun() > brief.mostWeekday());
    this.amounts = amounts();
    this.raceWeek = new RaceWeek(brief).days();
  }

  private List<WeekAmounts> amounts() {
    List<Double> sizes = frame.stream().map(Frame.Week::size).toList();
    List<Double> longSizes = frame.stream().map(Frame.Week::longSize).toList();
    List<Double> swimSizes =
        frame.stream().map(week -> week.focus() == Frame.Focus.PEAK ? 1 : week.longSize()).toList();
    Profile profile = brief.profile();
    double runGrowth = 1 + brief.house().of("run-session-spike", "longer");
    List<Double> weeks =
        Growth.of(
            sizes, brief.latelyWeek(), brief.mostWeek(), profile.weekGrowth, Growth.Steps.MINUTES);
    List<Double> rides =
        Growth.of(
            longSizes,
            brief.latelyRide(),
            brief.longestRide(),
            profile.rideGrowth,
            Growth.Steps.MINUTES);
    List<Double> runs =
        Growth.of(
            longSizes, brief.latelyRun(), brief.longestRun(), runGrowth, Growth.Steps.MINUTES);
    List<Double> swims =
        Growth.of(
            swimSizes, brief.latelySwim(), brief.longestSwim(), SWIM_GROWTH, Growth.Steps.METRES);
    List<WeekAmounts> amounts = new ArrayList<>();
    for (int i = 0; i < frame.size(); i++) {
      amounts.add(
          new WeekAmounts(weeks.get(i), rides.get(i), runs.get(i), Math.max(400, swims.get(i))));
    }
    return amounts;
  }

  /** Where the long sessions do not come as far as the house asks, in words. */
  List<String> shortfalls() {
    List<String> fallShort = new ArrayList<>();
    longest(
        "ride",
        amounts.stream().mapToDouble(WeekAmounts::longRide).max(),
        brief.leastRide(),
        fallShort);
    longest(
        "run",
        amounts.stream().mapToDouble(WeekAmounts::longRun).max(),
        brief.leastRun(),
        fallShort);
    return fallShort;
  }

  private static void longest(String what, OptionalDouble comes, double wanted, List<String> into) {
    if (comes.orElse(0) < wanted) {
      into.add(
          "the longest "
              + what
              + " comes to "
              + Scalar.duration((int) comes.orElse(0))
              + "; the house asks for "
              + Scalar.duration((int) Math.ceil(wanted))
              + "; only an earlier --starts or a longer one lately brings it there without haste");
    }
  }

  void write(StringBuilder text) {
    for (int i = 0; i < frame.size(); i++) {
      Frame.Week week = frame.get(i);
      text.append("    # ").append(heading(week)).append('\n');
      text.append("    - starts: ").append(week.starts()).append('\n');
      text.append("      focus: ")
          .append(week.focus().name().toLowerCase(Locale.ROOT))
          .append('\n');
      text.append("      days:\n");
      Map<DayOfWeek, List<Work>> days = new TrainingWeek(brief, week, amounts.get(i), roles).days();
      for (int day = 0; day < 7; day++) {
        write(text, week.starts().plusDays(day), days);
      }
    }
  }

  private static String heading(Frame.Week week) {
    return switch (week.toRace()) {
      case 0 -> "race week";
      case 1 -> "1 week to race week";
      default -> week.toRace() + " weeks to race week";
    };
  }

  private void write(StringBuilder text, LocalDate date, Map<DayOfWeek, List<Work>> days) {
    long before = ChronoUnit.DAYS.between(date, brief.race());
    List<Work> works =
        before <= RaceWeek.DAYS
            ? raceWeek.getOrDefault(date, List.of())
            : days.getOrDefault(date.getDayOfWeek(), List.of());
    if (before < 0) {
      return;
    }
    String day = date.getDayOfWeek().name().substring(0, 3).toLowerCase(Locale.ROOT);
    if (works.isEmpty()) {
      text.append("        ").append(day).append(": rest\n");
      return;
    }
    text.append("        ").append(day).append(":\n");
    works.forEach(work -> work.write(text, "          "));
  }
}
