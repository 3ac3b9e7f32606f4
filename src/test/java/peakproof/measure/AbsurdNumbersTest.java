package peakproof.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import peakproof.document.Event;
import peakproof.document.Log;
import peakproof.document.Session;
import peakproof.document.Sport;
import peakproof.document.WaterTable;
import peakproof.measure.Athletes.Dated;

/** Numbers no document can hold come out as unknown, each in the way of its measure. */
class AbsurdNumbersTest {
  private static final Constants CONSTANTS = ShippedConstants.constants();
  private static final LocalDate DAY = LocalDate.of(2027, 6, 20);
  private static final double MANY = Double.POSITIVE_INFINITY;

  @Test
  void absurdPairsDoNotScaleLoads() {
    List<SessionLoad.Pair> pairs = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      pairs.add(new SessionLoad.Pair(100, 125));
      pairs.add(new SessionLoad.Pair(100, Double.NaN));
      pairs.add(new SessionLoad.Pair(MANY, 100));
      pairs.add(new SessionLoad.Pair(Double.MIN_VALUE, Double.MAX_VALUE));
    }
    assertThat(SessionLoad.scale(pairs, CONSTANTS)).isEqualTo(1.25);
  }

  @Test
  void anAbsurdWeekBeginsNoTaper() {
    List<WeekVolume> before = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      before.add(new WeekVolume(600.0, false));
    }
    List<TaperLength.Week> taper = List.of(new TaperLength.Week(DAY, Double.NaN));
    assertThat(TaperLength.of(taper, before, DAY.plusDays(14), CONSTANTS).because())
        .isEqualTo("one of the taper weeks is not known whole");
  }

  @Test
  void aCutNextToNothingAddsNothing() {
    assertThat(new TaperShape.Step(-1e-10).volumes(100, 1)).containsExactly(100.0);
  }

  @Test
  void aRideOfNoTimeIsHeldAtNothing() {
    Session ride =
        Athletes.logged(
            Sport.BIKE, new Session.Recorded(null, null, null, null, 150.0, null, null));
    Calibration athlete = Athletes.tove().calibration();
    for (double none : new double[] {Double.NaN, MANY}) {
      assertThat(HeldEffort.logged(ride, none, athlete))
          .isEqualTo(new HeldEffort(0, null, 0, null, true));
    }
  }

  @Test
  void repetitionsOfNoLengthAreNoSet() {
    for (double none : new double[] {Double.NaN, MANY, -1}) {
      assertThat(RepeatSet.withRest(4, none, 100, 10)).isNull();
      assertThat(RepeatSet.offInterval(4, none, 100, 120, CONSTANTS)).isNull();
      assertThat(RepeatSet.of(4, none, 60.0, null, CONSTANTS)).isNull();
    }
    assertThat(RepeatSet.of(4, 100, 60.0, Lines.rest(Double.NaN), CONSTANTS).rest()).isZero();
    assertThat(RepeatSet.of(4, 100, null, Lines.off(MANY), CONSTANTS).sendOff()).isNull();
    // 199 times 1.7e306 s is past what a double holds
    assertThat(RepeatSet.offInterval(200, 100, 1.7e306, 1, CONSTANTS).late()).isNull();
  }

  @Test
  void absurdGoalsAndFiguresAreUnknown() {
    Athletes.Draft draft =
        Athletes.tove()
            .withGoal(Athletes.goal(MANY, Double.NaN, 0.0, MANY, null))
            .withFigures(MANY, Double.NaN, 46.0);
    Calibration athlete = draft.calibration();
    assertThat(athlete.goalSwimPace().because()).isEqualTo("a distance and a time above zero");
    assertThat(athlete.goalBikeSpeed().known()).isFalse();
    assertThat(athlete.goalRunPace().known()).isFalse();
    assertThat(athlete.criticalPower().because()).isEqualTo(Amount.BEYOND);
    assertThat(athlete.maximumHeartRate()).isNull();
    assertThat(athlete.restingHeartRate()).isEqualTo(46);
    RaceProjection race = RaceProjection.of(draft.plan(), null, Athletes.AS_OF, athlete, CONSTANTS);
    assertThat(race.transitions().because()).isEqualTo(Amount.BEYOND);
    Forecast forecast = Forecast.of(draft.plan(), race);
    assertThat(forecast.legs().get(0).goal()).isNull();
    assertThat(forecast.legs().get(3).goal()).isZero();
  }

  @Test
  void absurdTestsAndLegsGiveNoRun() {
    Athletes.Draft tested = Athletes.tove().withTests(Athletes.run("2027-05-08", 5000, MANY));
    assertThat(tested.calibration().openMarathonPace().because())
        .isEqualTo("two distances and a time above zero");
    assertThat(run(tested).because()).isEqualTo("a run race or test of the last weeks");
    Event.Legs endless = new Event.Legs(3800.0, 180_000.0, Double.MAX_VALUE);
    assertThat(run(Athletes.tove().withLegs(endless, null)).range()).isNull();
    RunLegRatio ratio = RunLegRatio.projected(3600, 10_000, 0, 1200, CONSTANTS);
    assertThat(ratio.usual().because()).isEqualTo("two distances and a time above zero");
  }

  @Test
  void ridesWithoutDistanceOrTimeHaveNoSpeed() {
    Log log =
        Athletes.log(
            new Dated("2027-05-01", Athletes.ride(240, 0)),
            new Dated("2027-05-02", Athletes.ride(0, 120)),
            new Dated("2027-05-03", Athletes.ride(240, 120)));
    Reading speed = Athletes.tove().calibration(log).rideSpeed();
    assertThat(speed.value()).isEqualTo(30);
    assertThat(speed.entries()).hasSize(1);
  }

  @Test
  void anUnknownProjectionHasNothingToNoteOrNarrow() {
    Projected unknown =
        Projected.of(new Projected.Range(1, 2, MANY), List.of("/x"), List.of("how"));
    assertThat(unknown).isEqualTo(Projected.unknown(Amount.BEYOND));
    assertThat(Projected.of(new Projected.Range(Double.NaN, 2, 3), List.of(), List.of()).range())
        .isNull();
    assertThat(Projected.of(new Projected.Range(1, MANY, 3), List.of(), List.of()).range())
        .isNull();
    assertThat(unknown.noting("more")).isEqualTo(unknown);
    assertThat(unknown.narrowedBy("a test", 5)).isEqualTo(unknown);
    Projected known = Projected.of(new Projected.Range(1, 2, 3), List.of(), List.of());
    assertThat(known.narrowedBy("a test", Double.NaN)).isEqualTo(known);
    assertThat(known.narrowedBy("a test", 1).narrowing().seconds()).isEqualTo(1);
  }

  @Test
  void absurdMinutesAreUnknown() {
    assertThat(new Matching.Entry("", DAY, Sport.RUN, Double.NaN).minutes()).isNull();
    assertThat(new Matching.Entry("", DAY, Sport.RUN, 40.0).minutes()).isEqualTo(40);
    assertThat(DomainMinutes.whole(Domain.HEAVY, MANY).heavy()).isNull();
    DomainMinutes most = DomainMinutes.whole(Domain.HEAVY, Double.MAX_VALUE);
    assertThat(most.plus(most).heavy()).isNull();
    assertThat(most.plus(most).severe()).isZero();
  }

  @Test
  void aRuleBookWithoutALimitThatIsOneHasNone() {
    assertThat(limit(Double.NaN)).isNull();
    assertThat(limit(null)).isNull();
    assertThat(limit(4200.0)).isEqualTo(4200);
  }

  @Test
  void aSettingPastWhatSecondsHoldIsRefused() {
    assertThatThrownBy(() -> ShippedConstants.with(Constant.CONTINUOUS_REST, 1e308))
        .isInstanceOf(IllegalArgumentException.class);
    assertThat(ShippedConstants.with(Constant.LONG_RIDE, 1e308).of(Constant.LONG_RIDE))
        .isEqualTo(1e308);
  }

  private static Double limit(Double seconds) {
    WaterTable table =
        new WaterTable(
            List.of(
                new WaterTable.Edition(
                    "later",
                    "",
                    "",
                    List.of(new WaterTable.Row("elite", 4000, 22, 15.9, seconds)),
                    List.of())));
    return ((WaterTemperature.Ruled) WaterTemperature.of(table, "later", "elite", 1500, 20))
        .limitSeconds();
  }

  private static Projected run(Athletes.Draft draft) {
    return RaceProjection.of(draft.plan(), null, Athletes.AS_OF, draft.calibration(), CONSTANTS)
        .run();
  }
}
