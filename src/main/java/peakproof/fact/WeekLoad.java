package peakproof.fact;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import peakproof.document.Sport;
import peakproof.measure.Constant;
import peakproof.measure.Coverage;
import peakproof.measure.Digits;
import peakproof.measure.LoadRatio;
import peakproof.measure.Median;
import peakproof.measure.Monotony;

/** The session-RPE load of a week, done and planned in one unit, and how evenly it is spread. */
public final class WeekLoad implements Fact {
  private static final int WEEKS_BEFORE = 4;
  private static final List<Sport> RACING = List.of(Sport.SWIM, Sport.BIKE, Sport.RUN);

  private final Timeline timeline;
  private final Week week;
  private final Spread spread;
  private final LoadRatio ratios;
  private final @Nullable Double medianLoad;
  private final @Nullable Double strainRankShare;
  private final boolean evenerThanUsual;

  /**
   * Holds a week against those before it.
   *
   * @param before the weeks before, oldest first
   */
  private WeekLoad(Week week, Spread spread, List<Spread> before, Timeline timeline) {
    this.timeline = timeline;
    this.week = week;
    this.spread = spread;
    this.ratios = ratios(week, timeline);
    this.medianLoad = median(before, timeline);
    List<Spread> past = before.stream().filter(Spread::done).toList();
    List<Double> strains = values(past.stream().map(each -> each.days.strain().value()));
    Double strain = spread.days.strain().value();
    boolean enough = strains.size() >= timeline.constant(Constant.STRAIN_WEEKS);
    this.strainRankShare = enough && strain != null ? (Double) rank(strain, strains) : null;
    Double usual = Median.of(values(past.stream().map(Spread::monotony)));
    Double monotony = spread.monotony();
    this.evenerThanUsual = monotony != null && usual != null && monotony > usual + 1e-9;
  }

  /** The week. */
  public Week week() {
    return week;
  }

  /** Load of the week, arbitrary units; unknown when a day or session is. */
  public @Nullable Double load() {
    return Exact.of(spread.load);
  }

  /** Median load of the four weeks before; unknown while too few of them are known. */
  public @Nullable Double medianLoad() {
    return medianLoad;
  }

  /** Mean over deviation of the days; unknown of equal days and with an unknown one. */
  public @Nullable Double monotony() {
    return Exact.of(spread.monotony());
  }

  /** True when all seven days weigh the same, so that there is no such number. */
  public boolean equalDays() {
    return spread.equalDays();
  }

  /** Load times monotony; unknown when either is. */
  public @Nullable Double strain() {
    return Exact.of(spread.days.strain().value());
  }

  /**
   * Share of the athlete's past weeks whose strain was below it; unknown without some weeks of log.
   */
  public @Nullable Double strainRankShare() {
    return strainRankShare;
  }

  /** True when its monotony is above the median of those past weeks. */
  public boolean evenerThanUsual() {
    return evenerThanUsual;
  }

  /**
   * Exponentially weighted load of the last week over that of the last four; unknown in a taper,
   * without a phase, and with too few known days.
   */
  public @Nullable Double ratio() {
    return Exact.of(ratios.weighted().value());
  }

  /**
   * Mean load of the last seven days over that of the last 28, those seven among them, so that it
   * is never above four; unknown like the ratio.
   */
  public @Nullable Double coupledRatio() {
    return Exact.of(ratios.coupled().value());
  }

  /** {@code the week of 14 Jun}. */
  public String label() {
    return week.label();
  }

  /** What the week is for; unknown without a block and a focus. */
  public @Nullable Phase phase() {
    return week.phase();
  }

  /** Its Monday. */
  public LocalDate starts() {
    return week.starts();
  }

  /** The Monday of the week before. */
  public LocalDate weekBefore() {
    return week.starts().minusWeeks(1);
  }

  /** True when the coach can still change a day of it. */
  public boolean changeable() {
    return week.changeable();
  }

  /**
   * True for a week of training as usual: no camp, nothing that interrupts it, two sports or more.
   */
  public boolean usual() {
    return !week.camp() && !week.interrupted() && sports() > 1;
  }

  /** True with more load than the median of the four weeks before; false while one is unknown. */
  public boolean aboveMedian() {
    Double load = load();
    return load != null && medianLoad != null && load > medianLoad;
  }

  /** True when it is known how the load is spread, here and in the weeks before. */
  boolean spreadKnown() {
    return medianLoad != null && spread.load != null && (monotony() != null || equalDays());
  }

  private long sports() {
    return RACING.stream()
        .filter(sport -> week.sessions().anyMatch(session -> session.sport() == sport))
        .count();
  }

  /** The monotony in words. */
  public String evenness() {
    Double monotony = monotony();
    if (equalDays()) {
      return "no end, every day being the same,";
    }
    return monotony == null ? "unknown size" : Digits.fixed(monotony, 2);
  }

  static List<WeekLoad> all(Timeline timeline) {
    List<Week> weeks = timeline.weeks().all();
    List<Spread> spreads = weeks.stream().map(week -> Spread.of(week, timeline)).toList();
    List<WeekLoad> all = new ArrayList<>();
    for (int i = 0; i < weeks.size(); i++) {
      all.add(new WeekLoad(weeks.get(i), spreads.get(i), spreads.subList(0, i), timeline));
    }
    return all;
  }

  /** What the days of one week come to. */
  private record Spread(boolean done, @Nullable Double load, Monotony days) {
    static Spread of(Week week, Timeline timeline) {
      boolean done = week.days().stream().allMatch(day -> day.known() == Known.DONE);
      Loads loads = timeline.loads();
      Monotony days = Monotony.of(loads.of(week, null), timeline.constants());
      return new Spread(done, loads.sum(week, null), days);
    }

    @Nullable Double monotony() {
      return days.coverage().known() < days.coverage().days() ? null : days.monotony().value();
    }

    boolean equalDays() {
      return load != null && load > 0 && days.deviation().known() && !days.monotony().known();
    }
  }

  private static List<Double> values(Stream<@Nullable Double> amounts) {
    return amounts.filter(Objects::nonNull).map(Objects::requireNonNull).toList();
  }

  private static @Nullable Double median(List<Spread> before, Timeline timeline) {
    List<Double> loads =
        values(
            before.subList(Math.max(0, before.size() - WEEKS_BEFORE), before.size()).stream()
                .map(Spread::load));
    return new Coverage(loads.size(), WEEKS_BEFORE).enough(timeline.constants())
        ? Exact.of(Median.of(loads))
        : null;
  }

  private static double rank(double strain, List<Double> past) {
    long below = past.stream().filter(each -> each < strain - 1e-9).count();
    return Exact.of((double) below / past.size());
  }

  private static LoadRatio ratios(Week week, Timeline timeline) {
    boolean taper = week.phase() == null || week.phase() == Phase.TAPER;
    return LoadRatio.of(timeline.loads().until(week.lastDay()), taper, timeline.constants());
  }

  /** The monotony of each sport in words. */
  public String bySport() {
    return RACING.stream()
        .map(sport -> sport.word() + " " + monotonyOf(sport))
        .collect(Collectors.joining(", "));
  }

  private String monotonyOf(Sport sport) {
    Monotony days = Monotony.of(timeline.loads().of(week, sport), timeline.constants());
    Double monotony = days.monotony().value();
    return monotony == null ? "unknown" : Digits.fixed(monotony, 2);
  }

  @Override
  public List<Where> where() {
    return week.where();
  }
}
