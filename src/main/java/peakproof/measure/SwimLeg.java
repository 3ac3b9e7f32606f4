package peakproof.measure;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Log;
import peakproof.document.Plan;
import peakproof.document.Session;
import peakproof.document.Sport;
import peakproof.measure.Projected.Range;

/**
 * The race swim from the newest logged set at goal pace that is nearly as long; else from critical
 * swim speed, which over-reads it by 2 to 6 s/100 m; else from a shorter set at goal pace. Then a
 * wetsuit that is allowed and worn, and what is swum besides the straight line. Allowances are
 * common practice, no source.
 */
final class SwimLeg {
  private final Plan plan;
  private final @Nullable Log log;
  private final LocalDate asOf;
  private final Calibration athlete;
  private final Constants constants;

  private SwimLeg(
      Plan plan, @Nullable Log log, LocalDate asOf, Calibration athlete, Constants constants) {
    this.plan = plan;
    this.log = log;
    this.asOf = asOf;
    this.athlete = athlete;
    this.constants = constants;
  }

  /** Paces in s/100 m with how they were come by. */
  private record Held(Range pace, List<String> entries, String how) {}

  static Projected projected(
      Plan plan, @Nullable Log log, LocalDate asOf, Calibration athlete, Constants constants) {
    return new SwimLeg(plan, log, asOf, athlete, constants).projected();
  }

  private Projected projected() {
    Double metres = plan.event().legs().swim();
    if (metres == null) {
      return Projected.unknown("the event's swim leg");
    }
    Held rehearsed = newestSet(metres * constants.of(Constant.HELD_SET_LEAST));
    Held tested = rehearsed == null ? tested() : null;
    Held held = rehearsed != null ? rehearsed : tested != null ? tested : newestSet(0);
    if (held == null) {
      return Projected.unknown(
          athlete.criticalSwimSpeed().because() + ", or a logged goal-pace set with `held`");
    }
    Range range = overCourse(metres, suited(held.pace));
    List<String> arithmetic = new ArrayList<>(List.of(held.how));
    if (suit()) {
      arithmetic.add(
          InWords.span(Constant.SUIT_GAIN_SLOW, Constant.SUIT_GAIN_FAST, constants)
              + " s/100 m faster in the wetsuit that is allowed and worn");
    }
    arithmetic.add(
        InWords.percent(constants.of(Constant.NAVIGATION_FAST) - 1)
            + " to "
            + InWords.percent(constants.of(Constant.NAVIGATION_SLOW) - 1)
            + " more than the straight line");
    Projected projected = Projected.of(range, held.entries, arithmetic);
    if (tested == null) {
      return projected;
    }
    double pinned = tested.pace.likely();
    Range one = overCourse(metres, suited(new Range(pinned, pinned, pinned)));
    double share = constants.of(Constant.HELD_SET_LEAST);
    return projected.narrowedBy(
        "a goal-pace set over " + InWords.percent(share) + " of the race swim, logged with `held`",
        range.width() - one.width());
  }

  private Range overCourse(double metres, Range pace) {
    double hundreds = metres / 100;
    return new Range(
        hundreds * pace.low() * constants.of(Constant.NAVIGATION_FAST),
        hundreds * pace.likely() * constants.of(Constant.NAVIGATION_LIKELY),
        hundreds * pace.high() * constants.of(Constant.NAVIGATION_SLOW));
  }

  private Range suited(Range pace) {
    return suit()
        ? new Range(
            Math.max(0, pace.low() - constants.of(Constant.SUIT_GAIN_FAST)),
            Math.max(0, pace.likely() - constants.of(Constant.SUIT_GAIN_LIKELY)),
            Math.max(0, pace.high() - constants.of(Constant.SUIT_GAIN_SLOW)))
        : pace;
  }

  private boolean suit() {
    String rule = plan.event().swim().wetsuit();
    boolean legal = "allowed".equals(rule) || "required".equals(rule);
    return legal && plan.raceDay() != null && Boolean.TRUE.equals(plan.raceDay().wetsuitWorn());
  }

  private @Nullable Held tested() {
    Double speed = athlete.criticalSwimSpeed().value();
    if (speed == null) {
      return null;
    }
    double pace = 100 / speed;
    return new Held(
        new Range(
            pace + constants.of(Constant.OPEN_SWIM_FAST),
            pace + constants.of(Constant.OPEN_SWIM_LIKELY),
            pace + constants.of(Constant.OPEN_SWIM_SLOW)),
        athlete.criticalSwimSpeed().entries(),
        "critical swim speed "
            + Digits.clock(pace)
            + "/100m by tests, "
            + InWords.span(Constant.OPEN_SWIM_FAST, Constant.OPEN_SWIM_SLOW, constants)
            + " s/100 m slower over the race");
  }

  private @Nullable Held newestSet(double least) {
    if (log == null) {
      return null;
    }
    LocalDate first = asOf.minusWeeks((long) constants.of(Constant.RACE_WEEKS));
    List<Log.Day> days = new ArrayList<>(log.days().subMap(first, asOf.plusDays(1)).values());
    Collections.reverse(days);
    for (Log.Day day : days) {
      for (Session session : day.sessions()) {
        Double held = session.recorded().held();
        if (held != null && goalPaceSet(session, held, least)) {
          double pace = 100 * held;
          return new Held(
              new Range(pace, pace, pace),
              List.of(session.at() + "/held"),
              "newest goal-pace set in the log, held at " + Digits.clock(pace) + "/100m");
        }
      }
    }
    return null;
  }

  /** A swim with at least 10 min at race effort, and at least so many metres. */
  private boolean goalPaceSet(Session session, double held, double metresLeast) {
    if (session.sport() != Sport.SWIM || session.set() == null) {
      return false;
    }
    Double metres = SetBreakdown.of(session.set(), Sport.SWIM, athlete, constants).raceMetres();
    double least = constants.of(Constant.RACE_EFFORT_LEAST) * SetPieces.SECONDS_A_MINUTE;
    return metres != null
        && Limit.positive(held)
        && !Limit.below(metres, metresLeast)
        && !Limit.below(metres * held, least);
  }
}
