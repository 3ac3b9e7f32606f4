package peakproof.fact;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import peakproof.document.Log;
import peakproof.document.Plan;
import peakproof.document.PlanWeek;
import peakproof.measure.Constant;
import peakproof.measure.TaperReduction;
import peakproof.measure.WeekChange;
import peakproof.measure.WeekVolume;

/** The weeks of a timeline, and how each stands to the ones before it. */
final class Weeks {
  private final Timeline timeline;
  private final Plan plan;
  private final TreeMap<LocalDate, Week> weeks = new TreeMap<>();
  private final List<Week> all;
  private final Memo<Week, Boolean> wellBelow = new Memo<>(this::isWellBelow);

  Weeks(Timeline timeline, Plan plan, @Nullable Log log) {
    this.timeline = timeline;
    this.plan = plan;
    Phases phases = new Phases(plan, log == null ? Map.of() : log.weeks());
    Map<LocalDate, List<Day>> days = new TreeMap<>();
    for (Day day : timeline.days()) {
      days.computeIfAbsent(Week.monday(day.date()), monday -> new ArrayList<>()).add(day);
    }
    days.forEach((monday, its) -> weeks.put(monday, week(monday, its, phases)));
    this.all = List.copyOf(weeks.values());
  }

  private Week week(LocalDate monday, List<Day> days, Phases phases) {
    PlanWeek written = timeline.writtenWeek(monday);
    long missed = days.stream().filter(Day::missed).count();
    boolean interrupted =
        written != null && written.away() != null
            || days.stream().anyMatch(Day::ill)
            || missed >= timeline.constant(Constant.INTERRUPTED_MISSED);
    return new Week(
        timeline,
        monday,
        phases.of(monday),
        List.copyOf(days),
        written == null ? plan.at() + "/weeks" : written.at(),
        written == null ? Map.of() : written.without(),
        interrupted);
  }

  List<Week> all() {
    return all;
  }

  @Nullable Week of(LocalDate date) {
    return weeks.get(Week.monday(date));
  }

  boolean inCamp(LocalDate date) {
    Week week = of(date);
    return week != null && week.phase() == Phase.CAMP;
  }

  private List<Week> before(Week week, int count) {
    List<Week> found = new ArrayList<>();
    for (Week earlier : weeks.headMap(week.starts(), false).descendingMap().values()) {
      if (found.size() < count) {
        found.add(earlier);
      }
    }
    return found;
  }

  /** True when the week holds no more than the glossary's share of the best of the weeks before. */
  boolean wellBelow(Week week) {
    return Objects.requireNonNull(wellBelow.of(week));
  }

  private boolean isWellBelow(Week week) {
    Double minutes = week.minutes();
    double best =
        before(week, (int) timeline.constant(Constant.LIGHTER_WEEKS)).stream()
            .map(Week::minutes)
            .filter(Objects::nonNull)
            .mapToDouble(Double::doubleValue)
            .max()
            .orElse(0);
    return minutes != null
        && best > 0
        && minutes <= best * timeline.constant(Constant.LIGHTER_SHARE);
  }

  /** The weeks before, oldest first; an interrupted week says as little as a lighter one. */
  List<WeekVolume> volumes(Week week, Function<Week, @Nullable Double> amount) {
    return weeks.headMap(week.starts(), false).values().stream()
        .map(earlier -> volume(earlier, amount))
        .toList();
  }

  private static WeekVolume volume(Week week, Function<Week, @Nullable Double> amount) {
    return new WeekVolume(amount.apply(week), week.lighter() || week.interrupted());
  }

  /** A week's minutes against those before it; {@code stated} tells whose hours those were. */
  record Comparison(WeekChange change, boolean stated) {}

  /** What the coach states stands in for weeks that no log tells of. */
  Comparison minutesChange(Week week) {
    WeekChange logged = minutesChange(week, volumes(week, Week::minutes));
    Double stated = timeline.hasLately() ? timeline.lately().weekSeconds() : null;
    if (logged.known() || stated == null) {
      return new Comparison(logged, false);
    }
    WeekVolume usual = new WeekVolume(stated / 60, false);
    List<WeekVolume> before = new ArrayList<>();
    for (int i = 0; i < timeline.constant(Constant.WEEK_CHANGE_WEEKS); i++) {
      before.add(usual);
    }
    for (Week earlier : weeks.headMap(week.starts(), false).values()) {
      before.add(timeline.beforePlan(earlier.starts()) ? usual : volume(earlier, Week::minutes));
    }
    return new Comparison(minutesChange(week, before), true);
  }

  private WeekChange minutesChange(Week week, List<WeekVolume> before) {
    return WeekChange.of(week.minutes(), before, 0, timeline.constants());
  }

  WeekChange runKmChange(Week week) {
    double floor = timeline.constant(Constant.WEEK_FLOOR_RUN_DISTANCE) / 1000;
    return WeekChange.of(week.runKm(), volumes(week, Week::runKm), floor, timeline.constants());
  }

  WeekChange swimMetresChange(Week week) {
    double floor = timeline.constant(Constant.WEEK_FLOOR_SWIM);
    return WeekChange.of(
        week.swimMetres(), volumes(week, Week::swimMetres), floor, timeline.constants());
  }

  /** The median of some amount over the last weeks that were not lighter; null without enough. */
  @Nullable Double usual(Week week, Function<Week, @Nullable Double> amount) {
    return WeekVolume.usual(volumes(week, amount), timeline.constants());
  }

  /** The coach's own sum less the sessions as written, minutes; null without a sum. */
  @Nullable Double hoursOff(Week week) {
    PlanWeek written = timeline.writtenWeek(week.starts());
    if (written == null || written.hours() == null || !week.ahead()) {
      return null;
    }
    Double minutes = week.minutes();
    return minutes == null ? null : (Double) Math.abs(written.hours() / 60 - minutes);
  }

  /** How much less a day than in the reference weeks before the taper; null without enough. */
  @Nullable Double reduction(List<Day> days) {
    return days.isEmpty()
        ? null
        : Exact.of(taperReduction(days, taperStart(days.get(0).date())).reduction());
  }

  /** Some days against the reference weeks before a week. */
  TaperReduction taperReduction(List<Day> days, Week before) {
    return TaperReduction.of(
        days.stream().map(day -> day.isKnown() ? day.minutes() : null).toList(),
        volumes(before, Week::minutes),
        timeline.constants());
  }

  Week taperStart(LocalDate first) {
    return weeks.values().stream()
        .filter(week -> week.phase() == Phase.TAPER)
        .findFirst()
        .orElseGet(() -> Objects.requireNonNull(weeks.floorEntry(first)).getValue());
  }

  /**
   * Where to point for something missing in a span: the last written week in it, else the block.
   */
  Where lastWritten(LocalDate first, LocalDate last) {
    LocalDate monday = Week.monday(last);
    while (!monday.isBefore(Week.monday(first))) {
      PlanWeek written = timeline.writtenWeek(monday);
      if (written != null) {
        return new Where(written.at(), null, monday);
      }
      monday = monday.minus(1, ChronoUnit.WEEKS);
    }
    return new Where(plan.at() + "/weeks", null, null);
  }
}
