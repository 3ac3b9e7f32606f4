package peakproof.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static peakproof.document.Effort.DRILL;
import static peakproof.document.Effort.EASY;
import static peakproof.document.Effort.HARD;
import static peakproof.document.Effort.MAX;
import static peakproof.document.Effort.RACE;
import static peakproof.document.Effort.STEADY;
import static peakproof.document.Effort.THRESHOLD;
import static peakproof.measure.Lines.at;
import static peakproof.measure.Lines.group;
import static peakproof.measure.Lines.line;
import static peakproof.measure.Lines.metres;
import static peakproof.measure.Lines.minutes;
import static peakproof.measure.Lines.off;
import static peakproof.measure.Lines.part;
import static peakproof.measure.Lines.rest;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import peakproof.document.Effort;
import peakproof.document.Event;
import peakproof.document.SetLine;
import peakproof.document.Sport;
import peakproof.document.Target;

/**
 * Worked by hand for an athlete with critical swim speed pace 101.5 s/100 m (400 m in 6:28, 200 m
 * in 3:05), goal 4200 s for 3800 m (110.526 s/100 m) and 6 h for 180 km (30 km/h).
 */
class SetBreakdownTest {
  private static final Constants CONSTANTS = ShippedConstants.constants();
  private static final Calibration TOVE = Athletes.tove().calibration();
  private static final Calibration NOBODY =
      Athletes.tove()
          .withTests()
          .withGoal(null)
          .withFigures(null, null, null)
          .withLegs(new Event.Legs(null, null, null), null)
          .calibration();
  private static final Offset<Double> EXACT = within(1e-9);
  private static final double CRITICAL = 101.5;
  private static final double GOAL = 4200 / 38.0;

  @Test
  void swimWithIntervalsAndARacePart() {
    // 300 easy, 6x100 hard r30s, 1500 race, 200 easy
    SetBreakdown swim =
        of(
            Sport.SWIM,
            line(
                part(metres(300), EASY),
                part(6, metres(100), HARD, null, rest(30)),
                part(metres(1500), RACE),
                part(metres(200), EASY)));
    double easy = 5 * (CRITICAL + 12) / 60;
    double hard = 6 * (CRITICAL - 2) / 60;
    double race = 15 * GOAL / 60;
    assertThat(swim.minutes()).isCloseTo(easy + hard + race + 3, EXACT);
    assertThat(swim.metres()).isEqualTo(2600);
    assertThat(swim.restMinutes()).isCloseTo(3, EXACT);
    assertThat(swim.domains().moderate()).isCloseTo(easy, EXACT);
    assertThat(swim.domains().heavy()).isCloseTo(race, EXACT);
    assertThat(swim.domains().severe()).isCloseTo(hard, EXACT);
    assertThat(swim.domains().unclassified()).isEqualTo(0);
    assertThat(swim.raceMinutes()).isCloseTo(race, EXACT);
    assertThat(swim.raceMetres()).isEqualTo(1500);
    assertThat(swim.longestRaceMinutes()).isCloseTo(race, EXACT);
    assertThat(swim.longestRepetition()).isEqualTo(1500);
    // the rest before the 1500 ends the stretch before it; the 200 follows straight on
    assertThat(swim.longestContinuous()).isEqualTo(1700);
    assertThat(swim.hard()).isTrue();
    // the mean is (9.46x3 + 27.63x5 + 9.95x8 + 3x1) / 50.04 = 4.98; 9.95 min severe lift it to 8 -
    // 1
    assertThat(swim.rating()).isEqualTo(7);
    assertThat(swim.load()).isCloseTo(7 * swim.minutes(), EXACT);
    assertThat(swim.sets()).hasSize(1);
    assertThat(swim.sets().get(0).rest()).isEqualTo(30);
  }

  @Test
  void goalPaceSetOffAnIntervalIsRaceEffortAndContinuous() {
    // 400 easy, 4x50 drill r15s, 38x100 @1:50/100m off 2:00, 200 easy
    SetBreakdown swim =
        of(
            Sport.SWIM,
            line(
                part(metres(400), EASY),
                part(4, metres(50), DRILL, null, rest(15)),
                part(38, metres(100), null, new Target.Pace(1.10), off(120)),
                part(metres(200), EASY)));
    double easy = 6 * (CRITICAL + 12);
    double drill = 2 * (CRITICAL + 25) + 4 * 15;
    assertThat(swim.minutes()).isCloseTo((easy + drill + 37 * 120 + 110) / 60, EXACT);
    assertThat(swim.raceMinutes()).isCloseTo(38 * 110 / 60.0, EXACT);
    // 10 s of rest in 120 s is under a tenth, and the 200 follows straight on
    assertThat(swim.longestContinuous()).isEqualTo(4000);
    assertThat(swim.longestRaceMinutes()).isCloseTo(38 * 110 / 60.0, EXACT);
    assertThat(swim.longestRepetition()).isEqualTo(400);
    RepeatSet set = swim.sets().get(1);
    assertThat(set.sessionSeconds()).isCloseTo(37 * 120 + 110, EXACT);
    assertThat(set.pace()).isCloseTo(110, EXACT);
    assertThat(set.feasible()).isTrue();
    assertThat(swim.fastestRacePace()).isNull();
  }

  @Test
  void longRideByTheMean() {
    // 30min easy, 3h30 race: (30x3 + 210x5) / 240 = 4.75, above 5.5 - 1
    SetBreakdown ride = of(Sport.BIKE, line(part(minutes(30), EASY), part(minutes(210), RACE)));
    assertThat(ride.minutes()).isEqualTo(240);
    assertThat(ride.rating()).isCloseTo(4.75, EXACT);
    assertThat(ride.load()).isCloseTo(1140, EXACT);
    assertThat(ride.hard()).isFalse();
    assertThat(ride.raceMetres()).isCloseTo(105_000, within(1e-6));
    // no ride is logged, so easy riding has no known speed
    assertThat(ride.metres()).isNull();
  }

  @Test
  void hardestDomainCountsFromSixMinutes() {
    assertThat(intervals(3).hard()).isTrue();
    assertThat(intervals(3).rating()).isEqualTo(7);
    SetBreakdown less = of(Sport.BIKE, line(part(minutes(30), EASY), part(minutes(5.9), HARD)));
    assertThat(less.hard()).isFalse();
    assertThat(less.rating()).isCloseTo((30 * 3 + 5.9 * 8) / 35.9, EXACT);
  }

  @Test
  void hardestDomainIsTheDomainsRatingAndNotTheWords() {
    // threshold is heavy: 5.5 - 1 = 4.5 though the word is rated 6.5
    SetBreakdown ride = of(Sport.BIKE, line(part(minutes(60), EASY), part(minutes(8), THRESHOLD)));
    assertThat(ride.rating()).isEqualTo(4.5);
    SetBreakdown all = of(Sport.BIKE, line(part(minutes(30), MAX)));
    assertThat(all.rating()).isEqualTo(9.5);
  }

  @Test
  void unsaidEffortIsEasyAtBothEndsAndSteadyBetweenAndAlone() {
    SetBreakdown ends =
        of(
            Sport.BIKE,
            line(part(minutes(10), null), part(minutes(20), null), part(minutes(50), null)));
    assertThat(ends.rating()).isCloseTo((3 * 10 + 4 * 20 + 3 * 50) / 80.0, EXACT);
    assertThat(of(Sport.BIKE, line(part(minutes(60), null))).rating()).isEqualTo(4);
  }

  @Test
  void restIsTakenOnlyWhenSomethingFollows() {
    SetBreakdown last = of(Sport.BIKE, line(part(3, minutes(10), STEADY, null, rest(180))));
    assertThat(last.minutes()).isEqualTo(36);
    SetBreakdown followed =
        of(
            Sport.BIKE,
            line(part(3, minutes(10), STEADY, null, rest(180)), part(minutes(10), EASY)));
    assertThat(followed.minutes()).isEqualTo(49);
  }

  @Test
  void bracketsRepeatWithTheirOwnRest() {
    // 3x(400 race r20s, 4x50 hard r15s) r1min: inside each 20 s and 4 x 15 s, but the last 50 of
    // all
    SetBreakdown swim =
        of(
            Sport.SWIM,
            line(
                part(
                    3,
                    group(
                        part(1, metres(400), RACE, null, rest(20)),
                        part(4, metres(50), HARD, null, rest(15))),
                    null,
                    null,
                    rest(60))));
    assertThat(swim.metres()).isEqualTo(1800);
    assertThat(swim.restMinutes()).isCloseTo((3 * 20 + 11 * 15 + 2 * 60) / 60.0, EXACT);
    assertThat(swim.sets()).hasSize(1);
    assertThat(swim.sets().get(0).count()).isEqualTo(4);
  }

  @Test
  void wordsBesideABracketHoldForPartsWithoutTheirOwn() {
    SetBreakdown ride =
        of(
            Sport.BIKE,
            line(part(2, group(part(minutes(5), null), part(minutes(5), EASY)), HARD, null, null)));
    assertThat(ride.domains().severe()).isEqualTo(10);
    assertThat(ride.domains().moderate()).isEqualTo(10);
  }

  @Test
  void aSendOffFixesTheTimeOfEveryRepetitionButTheLast() {
    SetBreakdown swim = of(Sport.SWIM, line(part(10, metres(100), THRESHOLD, null, off(130))));
    assertThat(swim.minutes()).isCloseTo((9 * 130 + CRITICAL) / 60, EXACT);
    // too short an interval: the work takes the time it takes
    SetBreakdown late = of(Sport.SWIM, line(part(10, metres(100), THRESHOLD, null, off(90))));
    assertThat(late.minutes()).isCloseTo(10 * CRITICAL / 60, EXACT);
    assertThat(late.restMinutes()).isEqualTo(0);
  }

  @Test
  void onlyAPaceThatIsAskedForCanMissASendOff() {
    assertThat(off90(null, new Target.Pace(1.0)).feasible()).isFalse();
    assertThat(off90(RACE, null).feasible()).isFalse();
    assertThat(off90(THRESHOLD, null).feasible()).isNull();
    assertThat(off90(EASY, null).feasible()).isNull();
    assertThat(off90(EASY, null).rest()).isNegative();
  }

  private static RepeatSet off90(Effort effort, Target target) {
    SetLine line = line(part(10, metres(100), effort, target, off(90)));
    return of(Sport.SWIM, line).sets().get(0);
  }

  @Test
  void shortRestsKeepASwimContinuousUpToTenSecondsAndATenthOfTheTime() {
    assertThat(continuous(100, rest(10))).isEqualTo(1000);
    assertThat(continuous(100, rest(11))).isEqualTo(100);
    // 50 m at threshold take 50.75 s: 5 s of rest are under a tenth, 6 s over
    assertThat(continuous(50, rest(5))).isEqualTo(500);
    assertThat(continuous(50, rest(6))).isEqualTo(50);
  }

  @Test
  void easyWorkBetweenEndsARaceStretch() {
    SetBreakdown run =
        of(
            Sport.RUN,
            line(
                part(minutes(20), RACE),
                part(minutes(5), EASY),
                part(minutes(10), RACE),
                part(minutes(12), RACE)));
    assertThat(run.longestRaceMinutes()).isEqualTo(22);
    assertThat(run.raceMinutes()).isEqualTo(42);
  }

  @Test
  void targetWithinThreePerCentOfTheGoalIsRace() {
    assertThat(swimAt(GOAL * 1.03).raceMinutes()).isPositive();
    assertThat(swimAt(GOAL * 1.031).raceMinutes()).isEqualTo(0);
    assertThat(swimAt(GOAL * 0.97).raceMinutes()).isPositive();
    assertThat(swimAt(GOAL * 0.969).raceMinutes()).isEqualTo(0);
  }

  @Test
  void aRideAtTheGoalsShareOfMaximumIsRaceEffortInEitherSpelling() {
    assertThat(rideAt(TOVE, new Target.ShareOfMaximum(0.70)).raceMinutes()).isEqualTo(60);
    assertThat(rideAt(TOVE, new Target.HeartRate(128)).raceMinutes()).isEqualTo(60);
    assertThat(rideAt(TOVE, new Target.HeartRate(135)).raceMinutes()).isEqualTo(0);
    // 130 bpm are 70 % of maximum here, whatever they are of the reserve of 136
    assertThat(rideAt(TOVE, new Target.ShareOfReserve(0.60)).raceMinutes()).isEqualTo(60);
  }

  @Test
  void ratingTargetIsItself() {
    SetBreakdown run = of(Sport.RUN, line(at(minutes(40), new Target.Rating(5.5))));
    assertThat(run.rating()).isEqualTo(5.5);
    assertThat(run.domains().heavy()).isEqualTo(40);
  }

  @Test
  void targetSpeaksBeforeTheWordBesideIt() {
    SetBreakdown ride =
        of(Sport.BIKE, line(part(1, minutes(30), EASY, new Target.Power(250), null)));
    assertThat(ride.domains().severe()).isEqualTo(30);
    assertThat(ride.rating()).isEqualTo(8);
  }

  @Test
  void fastestPaceBesideTheWordRace() {
    SetBreakdown run =
        of(
            Sport.RUN,
            line(
                part(1, minutes(20), RACE, new Target.Pace(0.320), null),
                part(1, minutes(20), RACE, new Target.Pace(0.300), null),
                at(minutes(5), new Target.Pace(0.250))));
    assertThat(run.fastestRacePace()).isCloseTo(300, EXACT);
    assertThat(run.raceMinutes()).isEqualTo(40);
    SetBreakdown swim =
        of(Sport.SWIM, line(part(1, metres(400), RACE, new Target.Pace(1.08), null)));
    assertThat(swim.fastestRacePace()).isCloseTo(108, EXACT);
    assertThat(of(Sport.SWIM, line(part(metres(400), RACE))).fastestRacePace()).isNull();
  }

  @Test
  void unknownPacesLeaveUnknownTimesAndNeverZero() {
    SetBreakdown swim =
        SetBreakdown.of(
            line(part(metres(400), EASY), part(10, metres(100), HARD, null, rest(20))),
            Sport.SWIM,
            NOBODY,
            CONSTANTS);
    assertThat(swim.minutes()).isNull();
    assertThat(swim.metres()).isEqualTo(1400);
    assertThat(swim.restMinutes()).isEqualTo(3);
    assertThat(swim.domains().moderate()).isNull();
    assertThat(swim.domains().severe()).isNull();
    assertThat(swim.hard()).isNull();
    assertThat(swim.rating()).isNull();
    assertThat(swim.load()).isNull();
    assertThat(swim.longestRepetition()).isEqualTo(400);
    assertThat(swim.longestContinuous()).isEqualTo(500);
    assertThat(swim.sets().get(0).feasible()).isNull();
  }

  @Test
  void withoutADistanceClassRaceEffortHasMinutesButNoRating() {
    SetBreakdown ride =
        SetBreakdown.of(line(part(minutes(60), RACE)), Sport.BIKE, NOBODY, CONSTANTS);
    assertThat(ride.minutes()).isEqualTo(60);
    assertThat(ride.raceMinutes()).isEqualTo(60);
    assertThat(ride.rating()).isNull();
    assertThat(ride.domains().unclassified()).isEqualTo(60);
    assertThat(ride.hard()).isNull();
  }

  @Test
  void heartRateTargetWithoutTheAthletesMaximumIsUnclassified() {
    SetBreakdown ride = rideAt(NOBODY, new Target.HeartRate(131));
    assertThat(ride.domains().unclassified()).isEqualTo(60);
    assertThat(ride.load()).isNull();
    assertThat(ride.minutes()).isEqualTo(60);
  }

  @Test
  void strengthWeighsByItsOwnRatings() {
    SetBreakdown strength = of(Sport.STRENGTH, line(part(minutes(15), null)));
    assertThat(strength.load()).isEqualTo(60);
    assertThat(strength.hard()).isFalse();
    assertThat(strength.domains().unclassified()).isEqualTo(15);
    assertThat(of(Sport.OTHER, line(part(minutes(40), null))).load()).isEqualTo(160);
  }

  @Test
  void partsAddUpToTheWhole() {
    SetBreakdown swim =
        of(
            Sport.SWIM,
            line(
                part(minutes(10), null),
                part(5, metres(200), THRESHOLD, null, rest(20)),
                at(metres(400), new Target.HeartRate(140)),
                part(metres(200), EASY)));
    DomainMinutes in = swim.domains();
    assertThat(in.moderate() + in.heavy() + in.severe() + in.unclassified() + swim.restMinutes())
        .isCloseTo(swim.minutes(), EXACT);
    assertThat(in.unclassified()).isPositive();
  }

  @Test
  void runPacesByTheOpenMarathonPace() {
    double open = 6090 * Math.pow(2, 1.06) / 42.195;
    assertThat(kilometre(EASY)).isCloseTo(1.18 * open, within(1e-6));
    assertThat(kilometre(STEADY)).isCloseTo(1.06 * open, within(1e-6));
    assertThat(kilometre(THRESHOLD)).isCloseTo(0.93 * open, within(1e-6));
    assertThat(kilometre(HARD)).isCloseTo(0.88 * open, within(1e-6));
    assertThat(kilometre(MAX)).isCloseTo(0.80 * open, within(1e-6));
    assertThat(kilometre(RACE)).isCloseTo(13_800 / 42.195, within(1e-6));
  }

  @Test
  void swimPacesByCriticalSwimSpeed() {
    assertThat(hundred(THRESHOLD)).isCloseTo(CRITICAL, within(1e-9));
    assertThat(hundred(HARD)).isCloseTo(CRITICAL - 2, within(1e-9));
    assertThat(hundred(MAX)).isCloseTo(CRITICAL - 6, within(1e-9));
    assertThat(hundred(STEADY)).isCloseTo(CRITICAL + 6, within(1e-9));
    assertThat(hundred(EASY)).isCloseTo(CRITICAL + 12, within(1e-9));
    assertThat(hundred(DRILL)).isCloseTo(CRITICAL + 25, within(1e-9));
    assertThat(hundred(RACE)).isCloseTo(GOAL, within(1e-9));
  }

  @Test
  void ratingIsTheMeanOfWorkAndRestWhereThatIsMore() {
    SetLine line = line(part(2, minutes(10), EASY, null, rest(300)));
    assertThat(of(Sport.RUN, line).rating()).isCloseTo((20 * 3 + 5 * 1) / 25.0, EXACT);
    Constants heavierRest = ShippedConstants.with(Constant.RATING_REST, 2);
    assertThat(SetBreakdown.of(line, Sport.RUN, TOVE, heavierRest).rating())
        .isCloseTo((20 * 3 + 5 * 2) / 25.0, EXACT);
  }

  @Test
  void moreRestThanWorkStillWeighs() {
    SetLine line = line(part(2, minutes(1), EASY, null, rest(300)));
    assertThat(of(Sport.RUN, line).rating()).isCloseTo((2 * 3 + 5 * 1) / 7.0, EXACT);
  }

  @Test
  void aPaceThatWouldTakeNoTimeIsUnknown() {
    Calibration absurd =
        Athletes.tove()
            .withTests()
            .withGoal(Athletes.goal(380.0, null, null, null, null))
            .calibration();
    // 10 s/100 m by the goal leave 6 at threshold: 4 hard, and nothing for max
    assertThat(
            SetBreakdown.of(line(part(metres(100), HARD)), Sport.SWIM, absurd, CONSTANTS).minutes())
        .isCloseTo(4 / 60.0, EXACT);
    assertThat(
            SetBreakdown.of(line(part(metres(100), MAX)), Sport.SWIM, absurd, CONSTANTS).minutes())
        .isNull();
  }

  @Test
  void noTimeAtAllHasNoRating() {
    DomainMinutes none = new DomainMinutes(0.0, 0.0, 0.0, 0.0);
    assertThat(PlannedRating.of(java.util.List.of(), 0.0, none, CONSTANTS)).isNull();
  }

  @Test
  void repetitionsOfNothingAreNoSet() {
    assertThat(RepeatSet.of(4, 0, 60.0, null, CONSTANTS).pace()).isNull();
    assertThat(RepeatSet.of(4, 100, 0.0, null, CONSTANTS).pace()).isNull();
    assertThat(RepeatSet.of(4, 100, 60.0, null, CONSTANTS).pace()).isEqualTo(60);
  }

  @Test
  void unknownTimesLeaveAStretchOpenOnlyWhereARestMayBeTooLong() {
    assertThat(twice400(5).longestContinuous()).isNull();
    assertThat(twice400(0).longestContinuous()).isEqualTo(800);
    assertThat(twice400(60).longestContinuous()).isEqualTo(400);
    SetBreakdown byTime =
        SetBreakdown.of(line(part(minutes(10), EASY)), Sport.SWIM, NOBODY, CONSTANTS);
    assertThat(byTime.longestContinuous()).isNull();
    assertThat(byTime.longestRepetition()).isNull();
  }

  @Test
  void aSendOffNobodyKnowsTheRestOfLeavesAStretchUnknown() {
    SetLine line = line(part(4, metres(100), EASY, null, off(120)));
    assertThat(SetBreakdown.of(line, Sport.SWIM, NOBODY, CONSTANTS).longestContinuous()).isNull();
  }

  @Test
  void effortWordStandsInForATargetThatSaysNothing() {
    SetBreakdown run =
        SetBreakdown.of(
            line(part(1, minutes(30), HARD, new Target.HeartRate(150), null)),
            Sport.RUN,
            NOBODY,
            CONSTANTS);
    assertThat(run.domains().severe()).isEqualTo(30);
    assertThat(run.rating()).isEqualTo(8);
    SetBreakdown strength =
        SetBreakdown.of(line(part(minutes(30), EASY)), Sport.STRENGTH, NOBODY, CONSTANTS);
    assertThat(strength.rating()).isEqualTo(3);
  }

  @Test
  void aTargetIsAsFastAsTheWordNearestToItsDomain() {
    double open = TOVE.openMarathonPace().value() / 1000;
    // 46 + 0.6, 0.75 and 0.9 x 136 bpm: moderate, heavy and severe
    assertThat(of(Sport.RUN, line(at(minutes(60), new Target.ShareOfReserve(0.60)))).metres())
        .isCloseTo(3600 / (1.06 * open), within(1e-6));
    assertThat(of(Sport.RUN, line(at(minutes(60), new Target.ShareOfReserve(0.75)))).metres())
        .isCloseTo(3600 / (0.93 * open), within(1e-6));
    assertThat(of(Sport.RUN, line(at(minutes(60), new Target.ShareOfReserve(0.90)))).metres())
        .isCloseTo(3600 / (0.88 * open), within(1e-6));
    // the word beside it decides the speed
    assertThat(
            of(Sport.RUN, line(part(1, minutes(60), EASY, new Target.ShareOfReserve(0.90), null)))
                .metres())
        .isCloseTo(3600 / (1.18 * open), within(1e-6));
    // the goal's own pace in other words is race pace
    assertThat(of(Sport.BIKE, line(at(minutes(60), new Target.ShareOfMaximum(0.70)))).metres())
        .isCloseTo(30_000, within(1e-6));
    assertThat(of(Sport.BIKE, line(at(minutes(60), new Target.ShareOfMaximum(0.80)))).metres())
        .isNull();
  }

  private static SetBreakdown twice400(double rest) {
    return SetBreakdown.of(
        line(part(2, metres(400), EASY, null, rest(rest))), Sport.SWIM, NOBODY, CONSTANTS);
  }

  private static double hundred(peakproof.document.Effort effort) {
    return 60 * of(Sport.SWIM, line(part(metres(100), effort))).minutes();
  }

  private static double kilometre(peakproof.document.Effort effort) {
    return 60 * of(Sport.RUN, line(part(metres(1000), effort))).minutes();
  }

  private static Double continuous(double repetition, SetLine.Rest rest) {
    return of(Sport.SWIM, line(part(10, metres(repetition), THRESHOLD, null, rest)))
        .longestContinuous();
  }

  private static SetBreakdown intervals(int count) {
    return of(
        Sport.BIKE, line(part(minutes(30), EASY), part(count, minutes(2), HARD, null, rest(60))));
  }

  private static SetBreakdown swimAt(double per100m) {
    return of(Sport.SWIM, line(at(metres(1000), new Target.Pace(per100m / 100))));
  }

  private static SetBreakdown rideAt(Calibration athlete, Target target) {
    return SetBreakdown.of(line(at(minutes(60), target)), Sport.BIKE, athlete, CONSTANTS);
  }

  private static SetBreakdown of(Sport sport, SetLine line) {
    return SetBreakdown.of(line, sport, TOVE, CONSTANTS);
  }
}
