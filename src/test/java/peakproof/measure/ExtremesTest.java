package peakproof.measure;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import peakproof.document.Event;
import peakproof.document.Session;
import peakproof.document.Sport;
import peakproof.measure.Athletes.Dated;

/** Whatever a document can hold and more, no measure is ever NaN or infinite. */
class ExtremesTest {
  private static final Constants CONSTANTS = ShippedConstants.constants();
  private static final double[] AMOUNTS = {1e-6, 0.01, 1, 60, 3600, 42_195, 1e7, 1e9};
  private static final double[] ODD = {
    0,
    -1,
    Double.MIN_VALUE,
    Double.MAX_VALUE,
    -Double.MAX_VALUE,
    Double.NaN,
    Double.POSITIVE_INFINITY,
    Double.NEGATIVE_INFINITY
  };

  @Test
  void setLinesOfAnyAthlete() throws ReflectiveOperationException {
    Random random = new Random(1);
    for (int run = 0; run < 1500; run++) {
      Calibration athlete = athlete(random).calibration();
      Finite.check(athlete);
      Sport sport = Sport.values()[random.nextInt(5)];
      Finite.check(SetBreakdown.of(RandomLines.line(random), sport, athlete, CONSTANTS));
    }
  }

  @Test
  void projectionsOfAnyAthlete() throws ReflectiveOperationException {
    Random random = new Random(2);
    for (int run = 0; run < 1500; run++) {
      Athletes.Draft draft = athlete(random);
      var log =
          Athletes.log(
              new Dated("2027-05-01", logged(random)),
              new Dated("2027-05-02", logged(random)),
              new Dated("2027-05-03", logged(random)));
      Calibration athlete = draft.calibration(log);
      Finite.check(athlete);
      Finite.check(RaceProjection.of(draft.plan(), log, Athletes.AS_OF, athlete, CONSTANTS));
    }
  }

  @Test
  void weeksTapersSpikesGapsSharesAndAdherence() throws ReflectiveOperationException {
    Random random = new Random(3);
    LocalDate day = LocalDate.of(2027, 5, 30);
    for (int run = 0; run < 1500; run++) {
      List<WeekVolume> weeks = new ArrayList<>();
      List<Double> days = new ArrayList<>();
      List<RunSpike.Run> runs = new ArrayList<>();
      List<Matching.Entry> planned = new ArrayList<>();
      List<Matching.Entry> done = new ArrayList<>();
      for (int i = 0; i < 6; i++) {
        weeks.add(new WeekVolume(orZero(random), random.nextInt(4) == 0));
        days.add(orZero(random));
        runs.add(new RunSpike.Run(day.minusDays(random.nextInt(40)), orZero(random)));
        planned.add(new Matching.Entry("", day.plusDays(i), Sport.RUN, orZero(random)));
        done.add(new Matching.Entry("", day.plusDays(2 * i), Sport.RUN, orZero(random)));
      }
      Finite.check(WeekChange.of(orZero(random), weeks, 0, CONSTANTS));
      Finite.check(TaperReduction.of(days, weeks, CONSTANTS));
      Finite.check(RunSpike.of(day, amount(random), runs, CONSTANTS));
      Finite.check(Adherence.of(Matching.of(planned, done, CONSTANTS)));
      Finite.check(Detraining.of(amount(random), random.nextBoolean(), CONSTANTS));
      Finite.check(
          DomainShares.of(
              new DomainMinutes(orZero(random), orZero(random), orZero(random), orZero(random)),
              CONSTANTS));
      Finite.check(
          CriticalSwimSpeed.of(
              List.of(
                  new CriticalSwimSpeed.Trial(amount(random), amount(random)),
                  new CriticalSwimSpeed.Trial(amount(random), amount(random))),
              CONSTANTS));
    }
  }

  private static Athletes.Draft athlete(Random random) {
    Athletes.Draft draft =
        Athletes.tove()
            .withLegs(new Event.Legs(orNull(random), orNull(random), orNull(random)), null)
            .withFigures(orNull(random), orNull(random), orNull(random));
    if (random.nextBoolean()) {
      draft =
          draft.withTests(
              Athletes.swim("2027-05-08", amount(random), amount(random)),
              Athletes.swim("2027-05-08", amount(random), amount(random)),
              Athletes.run("2027-05-08", amount(random), amount(random)));
    }
    return random.nextBoolean()
        ? draft
        : draft.withGoal(
            Athletes.goal(orNull(random), orNull(random), orNull(random), orNull(random), null));
  }

  private static Session logged(Random random) {
    return Athletes.session(
        random.nextBoolean() ? Sport.BIKE : Sport.SWIM,
        random.nextBoolean() ? RandomLines.line(random) : null,
        new Session.Recorded(
            orNull(random),
            orNull(random),
            5.0,
            orNull(random),
            orNull(random),
            orNull(random),
            null),
        null,
        null);
  }

  private static double amount(Random random) {
    return random.nextInt(20) == 0
        ? ODD[random.nextInt(ODD.length)]
        : AMOUNTS[random.nextInt(AMOUNTS.length)];
  }

  private static Double orNull(Random random) {
    return random.nextInt(4) == 0 ? null : Double.valueOf(amount(random));
  }

  private static Double orZero(Random random) {
    return random.nextInt(4) == 0 ? Double.valueOf(0) : orNull(random);
  }
}
