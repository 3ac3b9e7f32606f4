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
import peakproof.measure.Digits;
import peakproof.measure.LoadRatio;
import peakproof.measure.Median;
import peakproof.measure.Monotony;

/**
 * The session-RPE load of a week, done and planned in one unit, and how evenly it is spread.
 *
 * @param load of the week, arbitrary units; unknown when a day or session is
 * @param medianLoad median of the four weeks before; unknown while too few of them are known
 * @param monotony mean over deviation of the days; unknown of equal days and with an unknown one
 * @param equalDays true when all seven days weigh the same, so that there is no such number
 * @param strain load times monotony; unknown when either is
 * @param strainRankShare share of the athlete's past weeks whose strain was below it; unknown
 *     without some weeks of log
 * @param evenerThanUsual true when its monotony is above the median of those past weeks
 * @param ratio exponentially weighted load of the last week over that of the last four; unknown in
 *     a taper, without a phase, and with too few known days
 * @param coupledRatio mean load of the last seven days over that of the last 28, those seven among
 *     them, so that it is never above four; unknown like the ratio
 * @param bySport the monotony of each sport in words
 */
public record WeekLoad(
    Week week,
    @Nullable Double load,
    @Nullable Double medianLoad,
    @Nullable Double monotony,
    boolean equalDays,
    @Nullable Double strain,
    @Nullable Double strainRankShare,
    boolean evenerThanUsual,
    @Nullable Double ratio,
    @Nullable Double coupledRatio,
    String bySport)
    implements Fact {
  private static final int WEEKS_BEFORE = 4;
  private static final List<Sport> RACING = List.of(Sport.SWIM, Sport.BIKE, Sport.RUN);

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
    return load != null && medianLoad != null && load > medianLoad;
  }

  private long sports() {
    return RACING.stream()
        .filter(sport -> week.sessions().anyMatch(session -> session.sport() == sport))
        .count();
  }

  /** The monotony in words. */
  public String evenness() {
    if (equalDays) {
      return "no end, every day being the same,";
    }
    return monotony == null ? "unknown size" : Digits.fixed(monotony, 2);
  }

  static List<WeekLoad> all(Timeline timeline) {
    List<Week> weeks = timeline.weeks().all();
    List<Spread> spreads = weeks.stream().map(week -> Spread.of(week, timeline)).toList();
    List<WeekLoad> all = new ArrayList<>();
    for (int i = 0; i < weeks.size(); i++) {
      all.add(of(weeks.get(i), spreads.get(i), spreads.subList(0, i), timeline));
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

  private static WeekLoad of(Week week, Spread spread, List<Spread> before, Timeline timeline) {
    List<Spread> past = before.stream().filter(Spread::done).toList();
    List<Double> strains = values(past.stream().map(each -> each.days.strain().value()));
    Double usual = Median.of(values(past.stream().map(Spread::monotony)));
    Double strain = spread.days.strain().value();
    Double monotony = spread.monotony();
    LoadRatio ratio = ratio(week, timeline);
    boolean enough = strains.size() >= timeline.constant(Constant.STRAIN_WEEKS);
    return new WeekLoad(
        week,
        Exact.of(spread.load),
        median(before, timeline),
        Exact.of(monotony),
        spread.equalDays(),
        Exact.of(strain),
        enough && strain != null ? (Double) rank(strain, strains) : null,
        monotony != null && usual != null && monotony > usual + 1e-9,
        Exact.of(ratio.weighted().value()),
        Exact.of(ratio.coupled().value()),
        bySport(week, timeline));
  }

  private static List<Double> values(Stream<@Nullable Double> amounts) {
    return amounts.filter(Objects::nonNull).map(Objects::requireNonNull).toList();
  }

  private static @Nullable Double median(List<Spread> before, Timeline timeline) {
    List<Double> loads =
        values(
            before.subList(Math.max(0, before.size() - WEEKS_BEFORE), before.size()).stream()
                .map(Spread::load));
    return loads.size() < WEEKS_BEFORE * timeline.constant(Constant.COVERAGE_LEAST)
        ? null
        : Exact.of(Median.of(loads));
  }

  private static double rank(double strain, List<Double> past) {
    long below = past.stream().filter(each -> each < strain - 1e-9).count();
    return Exact.of((double) below / past.size());
  }

  private static LoadRatio ratio(Week week, Timeline timeline) {
    boolean taper = week.phase() == null || week.phase() == Phase.TAPER;
    return LoadRatio.of(timeline.loads().until(week.lastDay()), taper, timeline.constants());
  }

  private static String bySport(Week week, Timeline timeline) {
    return RACING.stream()
        .map(
            sport -> {
              Double monotony =
                  Monotony.of(timeline.loads().of(week, sport), timeline.constants())
                      .monotony()
                      .value();
              return sport.word()
                  + " "
                  + (monotony == null ? "unknown" : Digits.fixed(monotony, 2));
            })
        .collect(Collectors.joining(", "));
  }

  @Override
  public List<Where> where() {
    return week.where();
  }
}
