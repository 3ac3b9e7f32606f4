package peakproof.bench;

import java.util.Objects;
import java.util.stream.Stream;
import peakproof.fact.Fact;
import peakproof.fact.Run;
import peakproof.fact.Session;
import peakproof.fact.Settings;
import peakproof.fact.Strength;
import peakproof.fact.Stretch;
import peakproof.fact.Week;
import peakproof.measure.DistanceClass;

/** The rules of running, load, strength work and taper among the twenty. */
final class RunsByHand {
  private RunsByHand() {}

  static Stream<Run> longestTooLong(Evidence all, Settings set) {
    if (!all.over(DistanceClass.FULL, DistanceClass.HALF)
        || !all.onFoot()
        || !all.mayBeOf("age-group")) {
      return Stream.empty();
    }
    double longest = set.minutes("longest", Objects.requireNonNull(all.facts.race().distance()));
    return all.runs.stream()
        .filter(Session::planned)
        .filter(
            run ->
                ByHand.above(run.minutes(), longest) || ByHand.above(run.km(), set.km("furthest")));
  }

  static Stream<Run> sessionSpike(Evidence all, Settings set) {
    return all.onFoot() && all.knows("runs.spike")
        ? all.runs.stream()
            .filter(run -> run.planned() && ByHand.above(run.spike(), set.share("longer")))
        : Stream.empty();
  }

  static Stream<Week> weekJump(Evidence all, Settings set) {
    if (!all.onFoot() || !all.knows("weeks.run-change")) {
      return Stream.empty();
    }
    double floor = set.km("floor") + set.km("floor") * set.share("jump");
    return all.facts.weeks().stream()
        .filter(week -> week.changeable() && !week.camp() && !week.interrupted())
        .filter(week -> ByHand.above(week.runKmChange(), set.share("jump")))
        .filter(week -> ByHand.above(week.runKm(), floor));
  }

  static Stream<Week> loadJump(Evidence all, Settings set) {
    return all.knows("weeks.minutes-change")
        ? all.facts.weeks().stream()
            .filter(week -> week.changeable() && !week.camp())
            .filter(week -> ByHand.above(week.minutesChange(), set.share("most")))
        : Stream.empty();
  }

  static Stream<Stretch> restDayNone(Evidence all, Settings set) {
    double most =
        all.facts.athlete().masters()
            ? Math.min(set.count("days"), set.count("days-masters"))
            : set.count("days");
    return all.stretches.stream()
        .filter(stretch -> stretch.restless() && !stretch.camp() && stretch.days() >= most);
  }

  static Stream<? extends Fact> strengthNone(Evidence all, Settings set) {
    return all.knows("block.phases")
            && all.facts.block().peakWeeksWithoutStrength() >= set.count("weeks")
        ? all.wholePeakWeeks()
            .filter(week -> week.changeable() && !week.withoutStrength())
            .filter(
                week -> all.strength.stream().noneMatch(work -> work.week().equals(week.starts())))
        : Stream.empty();
  }

  static Stream<Strength> tooHeavyLate(Evidence all, Settings set) {
    return all.knows("strength.told")
        ? all.strength.stream()
            .filter(Session::planned)
            .filter(
                work ->
                    work.heavy() && work.legs() && work.daysToRace() <= set.day("heavy-from")
                        || work.newProgramme() && work.daysToRace() <= set.day("new-from"))
        : Stream.empty();
  }

  static Stream<Session> panicSession(Evidence all, Settings set) {
    return (all.knows("block.phases") || all.knows("past")) && all.knows("sessions.longest")
        ? all.sessions.stream()
            .filter(session -> session.planned() && session.endurance())
            .filter(session -> session.daysToRace() <= set.day("from"))
            .filter(
                session ->
                    session.test() || ByHand.atLeast(session.shareOfLongest(), set.share("share")))
        : Stream.empty();
  }
}
