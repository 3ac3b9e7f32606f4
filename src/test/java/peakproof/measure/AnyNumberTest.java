package peakproof.measure;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import peakproof.document.Sport;
import peakproof.document.WaterTable;

/**
 * Whatever numbers are handed in, NaN and infinity among them: no result holds one, none throws.
 */
class AnyNumberTest {
  private static final Constants CONSTANTS = ShippedConstants.constants();
  private static final LocalDate DAY = LocalDate.of(2027, 5, 30);
  private static final int RUNS = 1000;
  private static final double[] ODD = {
    Double.NaN,
    Double.POSITIVE_INFINITY,
    Double.NEGATIVE_INFINITY,
    Double.MAX_VALUE,
    -Double.MAX_VALUE,
    Double.MIN_VALUE,
    -Double.MIN_VALUE,
    0,
    -0.0,
    1e-300,
    1e300,
    1e-9,
    -1,
    1,
    0.5,
    15,
    50,
    180,
    3600,
    101_325
  };

  private final Random random = new Random(2027);

  @Test
  void trialsAndHeartRates() throws ReflectiveOperationException {
    for (int run = 0; run < RUNS; run++) {
      CriticalRate rate =
          CriticalRate.of(
              several(() -> new CriticalRate.Trial(DAY.plusDays(random.nextInt()), any(), time())),
              CONSTANTS);
      Finite.check(rate);
      if (rate.workTime() != null) {
        Finite.check(rate.workTime().secondsAt(any()));
        Finite.check(rate.inverseTime().rateFor(any()));
      }
      Finite.check(new CriticalRate.Fit(250, 14_400).secondsAt(any()));
      Finite.check(new CriticalRate.Fit(any(), any()).rateFor(any()));
      Finite.check(
          CriticalSwimSpeed.of(
              several(() -> new CriticalSwimSpeed.Trial(any(), any())), CONSTANTS));
      HeartRateRange range = HeartRateRange.of(orNull(), orNull(), orNull(), CONSTANTS);
      HeartRateRange sound = HeartRateRange.of(50.0, 180.0, null, CONSTANTS);
      for (HeartRateRange each : List.of(range, sound)) {
        Finite.check(each);
        Finite.check(each.shareOfMaximum(any(), CONSTANTS));
        Finite.check(each.shareOfReserve(any(), CONSTANTS));
        Finite.check(each.atShareOfMaximum(any()));
        Finite.check(each.atShareOfReserve(any()));
      }
      Finite.check(ZoneLoad.zone(any(), CONSTANTS));
      Finite.check(ZoneLoad.fiveZones(days(5)));
      Finite.check(ZoneLoad.threeZones(new DomainMinutes(orNull(), orNull(), orNull(), orNull())));
      Finite.check(
          Trimp.of(
              several(() -> new Trimp.Stretch(any(), any())), Trimp.Coefficients.WOMEN, CONSTANTS));
    }
  }

  @Test
  void daysWeeksAndTapers() throws ReflectiveOperationException {
    for (int run = 0; run < RUNS; run++) {
      Monotony week = Monotony.of(days(7), CONSTANTS);
      Finite.check(week);
      Finite.check(week.shown(CONSTANTS));
      Finite.check(Monotony.overall(List.of(days(7), days(random.nextInt(9))), CONSTANTS));
      Finite.check(LoadRatio.of(days(random.nextInt(60)), random.nextBoolean(), CONSTANTS));
      Finite.check(LoadRatio.of(plain(40), false, CONSTANTS));
      Finite.check(ImpulseResponse.compared(plain(30), plain(30), CONSTANTS));
      Finite.check(ImpulseResponse.compared(days(28), days(28), CONSTANTS));
      Finite.check(new TaperShape.Step(any()).volumes(any(), random.nextInt(20)));
      Finite.check(new TaperShape.Linear(any()).volumes(any(), random.nextInt(20)));
      Finite.check(new TaperShape.Exponential(any()).volumes(any(), random.nextInt(20) - 3));
      List<WeekVolume> before = several(() -> new WeekVolume(orNull(), random.nextBoolean()));
      Finite.check(
          TaperLength.of(
              several(() -> new TaperLength.Week(DAY.minusDays(random.nextInt(40)), orNull())),
              before,
              DAY,
              CONSTANTS));
      Finite.check(TaperReduction.of(days(14), before, CONSTANTS));
      Finite.check(WeekChange.of(orNull(), before, any(), CONSTANTS));
      Finite.check(WeekChange.fromLast(orNull(), orNull(), any()));
      Finite.check(DailyEntry.sleep(days(random.nextInt(9)), CONSTANTS));
      Finite.check(DailyEntry.restingHeartRate(days(random.nextInt(40)), CONSTANTS));
      Finite.check(
          RunSpike.of(
              DAY,
              any(),
              several(() -> new RunSpike.Run(DAY.minusDays(random.nextInt(40)), orNull())),
              CONSTANTS));
      Finite.check(Detraining.of(any(), random.nextBoolean(), CONSTANTS));
      Finite.check(
          DomainShares.of(new DomainMinutes(orNull(), orNull(), orNull(), orNull()), CONSTANTS));
      check(DomainShares.polarisation(any(), any(), any(), CONSTANTS));
      check(SessionLoad.of(orNull(), orNull()));
      Finite.check(Adherence.of(Matching.of(entries(), entries(), CONSTANTS)));
    }
  }

  @Test
  void rides() throws ReflectiveOperationException {
    Cycling sound = Cycling.of(85, 0.3, 0.004, 1.2, CONSTANTS);
    for (int run = 0; run < RUNS; run++) {
      Finite.check(AirDensity.of(any(), any()));
      Cycling odd = Cycling.of(any(), any(), any(), any(), CONSTANTS);
      Cycling planned = Cycling.planned(any(), any(), CONSTANTS);
      for (Cycling each : List.of(sound, odd, planned)) {
        Cycling.Course course = new Cycling.Course(any(), any(), any());
        Finite.check(each.power(any(), any(), any()));
        Finite.check(each.power(any(), any(), any(), any(), any(), any()));
        Finite.check(each.power(any(), course));
        Finite.check(each.speed(any(), any(), any()));
        Finite.check(each.speed(any(), course));
      }
      Finite.check(sound.power(10, 0, 0, any(), any(), any()));
      Finite.check(sound.speed(any(), new Cycling.Course(90_000, 900, 3)));
      RideShare.of(any(), DistanceClass.FULL, CONSTANTS);
      Finite.check(PositionShare.of(several(() -> new PositionShare.Ride(orNull(), orNull()))));
    }
  }

  @Test
  void runsAndSwims() throws ReflectiveOperationException {
    for (int run = 0; run < RUNS; run++) {
      Finite.check(BrickPace.of(any(), any()));
      RunLegRatio ratio = RunLegRatio.of(any(), any());
      Finite.check(ratio);
      ratio.verdict(CONSTANTS);
      RunLegRatio projected = RunLegRatio.projected(any(), any(), any(), any(), CONSTANTS);
      Finite.check(projected);
      projected.verdict(CONSTANTS);
      check(EnduranceTime.personalExponent(any(), any(), any(), any(), CONSTANTS));
      UnitSlip.of(Sport.values()[random.nextInt(5)], any(), any(), CONSTANTS);
      Finite.check(GoalPaceSet.of(plain(random.nextInt(12)), any(), CONSTANTS));
      checkNumbers(RepeatSet.offInterval(random.nextInt(50), any(), any(), any(), CONSTANTS));
      checkNumbers(RepeatSet.withRest(random.nextInt(50), any(), any(), any()));
      check(RepeatSet.worstCase(any(), any(), any(), any()));
      Finite.check(WaterTemperature.adjusted(any(), orNull(), CONSTANTS));
      Finite.check(
          WaterTemperature.of(
              new WaterTable(
                  List.of(
                      new WaterTable.Edition(
                          "later",
                          "",
                          "",
                          List.of(new WaterTable.Row("elite", 4000, 22, 15.9, null)),
                          List.of(new WaterTable.Shortened(12, 13, 750.0))))),
              "later",
              "elite",
              any(),
              any()));
    }
  }

  @Test
  void foodDrinkHeatStrengthAndRatings() throws ReflectiveOperationException {
    for (int run = 0; run < RUNS; run++) {
      List<Carbohydrate.Stretch> stretches = several(() -> new Carbohydrate.Stretch(any(), any()));
      Finite.check(Carbohydrate.grams(stretches));
      Finite.check(Carbohydrate.rate(stretches));
      Finite.check(Carbohydrate.target(any(), CONSTANTS));
      Finite.check(Carbohydrate.loading(any(), CONSTANTS));
      Finite.check(Carbohydrate.mealBefore(any(), CONSTANTS));
      Finite.check(Carbohydrate.caffeine(any(), CONSTANTS));
      Finite.check(Sweat.of(new Sweat.Weighing(any(), any(), any(), orNull(), any())));
      Finite.check(Sweat.sodium(any(), any(), CONSTANTS));
      Finite.check(Sweat.drinkLimit(orNull(), random.nextBoolean(), CONSTANTS));
      Finite.check(Wbgt.measured(any(), any(), any(), CONSTANTS));
      Finite.check(Wbgt.estimated(any(), any(), CONSTANTS));
      Wbgt.heat(any(), CONSTANTS);
      Wbgt.caution(any(), random.nextBoolean(), CONSTANTS);
      Finite.check(StrengthDose.of(days(random.nextInt(4)), orNull(), CONSTANTS));
      Finite.check(
          IntensityMatch.of(
              several(
                  () -> new IntensityMatch.Pair(Domain.HEAVY, Domain.SEVERE, orNull(), orNull())),
              CONSTANTS));
    }
  }

  private static void checkNumbers(RepeatSet set) throws ReflectiveOperationException {
    if (set != null) {
      Finite.check(set);
      check(set.late());
    }
  }

  private static void check(Object value) throws ReflectiveOperationException {
    if (value != null) {
      Finite.check(value);
    }
  }

  private List<Matching.Entry> entries() {
    return several(
        () -> new Matching.Entry("", DAY.plusDays(random.nextInt(6)), Sport.RUN, orNull()));
  }

  private <T> List<T> several(Supplier<T> one) {
    List<T> several = new ArrayList<>();
    for (int left = random.nextInt(5); left > 0; left--) {
      several.add(one.get());
    }
    return several;
  }

  private List<Double> days(int count) {
    List<Double> days = new ArrayList<>();
    for (int day = 0; day < count; day++) {
      days.add(orNull());
    }
    return days;
  }

  /** Mostly loads a week may hold, as measures look no further than the first absurd day. */
  private List<Double> plain(int count) {
    List<Double> days = new ArrayList<>();
    for (int day = 0; day < count; day++) {
      days.add(random.nextInt(30) == 0 ? any() : 900 * random.nextDouble());
    }
    return days;
  }

  private double time() {
    return random.nextInt(3) == 0 ? any() : 60 + 1200 * random.nextDouble();
  }

  private Double orNull() {
    return random.nextInt(6) == 0 ? null : Double.valueOf(any());
  }

  private double any() {
    return random.nextInt(3) == 0
        ? Math.scalb(random.nextDouble() - 0.3, random.nextInt(20))
        : ODD[random.nextInt(ODD.length)];
  }
}
