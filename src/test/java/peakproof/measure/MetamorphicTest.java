package peakproof.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import peakproof.document.Athlete;
import peakproof.document.Effort;
import peakproof.document.SetLine;
import peakproof.document.Sport;

/** Changes of the input that must change nothing, or one thing in a known way. */
class MetamorphicTest {
  private static final Constants CONSTANTS = ShippedConstants.constants();
  private static final Offset<Double> EXACT = within(1e-9);

  @Test
  void doublingAllAmountsLeavesRatios() {
    Random random = new Random(8);
    for (int run = 0; run < 1000; run++) {
      List<WeekVolume> weeks = new ArrayList<>();
      List<WeekVolume> doubled = new ArrayList<>();
      for (int week = 0; week < 6; week++) {
        double amount = 100 + 900 * random.nextDouble();
        boolean lighter = week == 3;
        weeks.add(new WeekVolume(amount, lighter));
        doubled.add(new WeekVolume(2 * amount, lighter));
      }
      double now = 1000 * random.nextDouble();
      assertThat(WeekChange.of(2 * now, doubled, 0, CONSTANTS).change())
          .isCloseTo(WeekChange.of(now, weeks, 0, CONSTANTS).change(), EXACT);
      assertThat(TaperReduction.of(List.of(2 * now, now), doubled, CONSTANTS).reduction())
          .isCloseTo(TaperReduction.of(List.of(now, now / 2), weeks, CONSTANTS).reduction(), EXACT);
    }
  }

  @Test
  void splittingASessionAtEqualRatingChangesNoLoad() {
    Random random = new Random(16);
    Calibration athlete = Athletes.tove().calibration();
    for (int run = 0; run < 200; run++) {
      double minutes = 20 + 200 * random.nextDouble();
      double first = minutes * random.nextDouble();
      for (Effort effort : Effort.values()) {
        SetLine whole = Lines.line(Lines.part(Lines.minutes(minutes), effort));
        SetLine split =
            Lines.line(
                Lines.part(Lines.minutes(first), effort),
                Lines.part(Lines.minutes(minutes - first), effort));
        for (Sport sport : Sport.values()) {
          double load = SetBreakdown.of(whole, sport, athlete, CONSTANTS).load();
          assertThat(SetBreakdown.of(split, sport, athlete, CONSTANTS).load())
              .isCloseTo(load, within(1e-7));
        }
      }
      double rating = 10 * random.nextDouble();
      assertThat(SessionLoad.of(first, rating) + SessionLoad.of(minutes - first, rating))
          .isCloseTo(SessionLoad.of(minutes, rating), EXACT);
    }
  }

  @Test
  void shiftingAllDatesChangesNothing() {
    Random random = new Random(32);
    for (int run = 0; run < 100; run++) {
      LocalDate asOf = LocalDate.of(2027, 5, 30);
      List<Athlete.Test> tests = new ArrayList<>();
      List<Athlete.Test> shifted = new ArrayList<>();
      for (int i = 0; i < 6; i++) {
        int before = random.nextInt(150) - 5;
        double metres = random.nextBoolean() ? 400 : 200;
        double seconds = metres + 10 * random.nextDouble() - (metres == 200 ? 15 : 0);
        String day = asOf.minusDays(before).toString();
        String later = asOf.minusDays(before).plusWeeks(1).toString();
        tests.add(Athletes.swim(day, metres, seconds));
        tests.add(Athletes.run(day, 25 * metres, 30 * seconds));
        shifted.add(Athletes.swim(later, metres, seconds));
        shifted.add(Athletes.run(later, 25 * metres, 30 * seconds));
      }
      Calibration now = calibration(tests, asOf);
      Calibration then = calibration(shifted, asOf.plusWeeks(1));
      assertThat(then.thresholdSwimPace().value()).isEqualTo(now.thresholdSwimPace().value());
      assertThat(then.openMarathonPace().value()).isEqualTo(now.openMarathonPace().value());
    }
  }

  @Test
  void shiftingTrialsAndTapersMovesOnlyTheOnset() {
    Random random = new Random(128);
    for (int run = 0; run < 300; run++) {
      List<CriticalRate.Trial> trials = new ArrayList<>();
      List<CriticalRate.Trial> shifted = new ArrayList<>();
      List<TaperLength.Week> taper = new ArrayList<>();
      List<TaperLength.Week> later = new ArrayList<>();
      LocalDate monday = LocalDate.of(2027, 5, 31);
      for (int i = 0; i < 3; i++) {
        double rate = 250 + 15_000 / (150.0 + 300 * i) + random.nextGaussian();
        LocalDate day = monday.plusDays(random.nextInt(40));
        trials.add(new CriticalRate.Trial(day, rate, 150 + 300 * i));
        shifted.add(new CriticalRate.Trial(day.plusWeeks(1), rate, 150 + 300 * i));
        double volume = 120 * random.nextDouble();
        taper.add(new TaperLength.Week(monday.plusWeeks(i), volume));
        later.add(new TaperLength.Week(monday.plusWeeks(i + 1), volume));
      }
      assertThat(CriticalRate.of(shifted, CONSTANTS)).isEqualTo(CriticalRate.of(trials, CONSTANTS));
      List<WeekVolume> before = java.util.Collections.nCopies(4, new WeekVolume(100.0, false));
      TaperLength now = TaperLength.of(taper, before, monday.plusDays(20), CONSTANTS);
      TaperLength then = TaperLength.of(later, before, monday.plusDays(27), CONSTANTS);
      assertThat(then.days()).isEqualTo(now.days());
      assertThat(then.onset()).isEqualTo(now.onset() == null ? null : now.onset().plusWeeks(1));
    }
  }

  @Test
  void doublingMinutesDoublesLoadsAndScalingSpeedScalesTimes() {
    Random random = new Random(256);
    for (int run = 0; run < 1000; run++) {
      List<Double> minutes = random.doubles(5, 0, 90).boxed().toList();
      List<Double> doubled = minutes.stream().map(each -> 2 * each).toList();
      assertThat(ZoneLoad.fiveZones(doubled).value())
          .isCloseTo(2 * ZoneLoad.fiveZones(minutes).value(), EXACT);
      double reserve = random.nextDouble();
      Trimp.Coefficients men = Trimp.Coefficients.MEN;
      Double once = Trimp.of(List.of(new Trimp.Stretch(60, reserve)), men, CONSTANTS).value();
      Double twice = Trimp.of(List.of(new Trimp.Stretch(120, reserve)), men, CONSTANTS).value();
      assertThat(twice).isCloseTo(2 * once, EXACT);
      double time = 1000 + 9000 * random.nextDouble();
      assertThat(EnduranceTime.scaled(10_000, 2 * time, 42_195, 1.06).value())
          .isCloseTo(2 * EnduranceTime.scaled(10_000, time, 42_195, 1.06).value(), within(1e-6));
      double there = EnduranceTime.scaled(10_000, time, 42_195, 1.06).value();
      assertThat(EnduranceTime.scaled(42_195, there, 10_000, 1.06).value())
          .isCloseTo(time, within(1e-6));
    }
  }

  @Test
  void swappingYardsForMetresIsSeen() {
    Random random = new Random(512);
    for (int run = 0; run < 1000; run++) {
      double metres = 100 + 3900 * random.nextDouble();
      double seconds = 2 * metres * random.nextDouble() + 1;
      assertThat(Pace.per100yd(metres, seconds).value())
          .isCloseTo(Pace.per100m(metres / Pace.YARD, seconds).value(), within(1e-9));
      assertThat(Pace.perMile(metres, seconds).value())
          .isCloseTo(Pace.perKm(metres, seconds).value() * Pace.MILE / 1000, within(1e-9));
    }
  }

  @Test
  void orderOfTestsChangesNothing() {
    List<Athlete.Test> tests = Athletes.tove().tests();
    List<Athlete.Test> backwards = new ArrayList<>(tests);
    java.util.Collections.reverse(backwards);
    assertThat(calibration(backwards, Athletes.AS_OF).criticalSwimSpeed().value())
        .isEqualTo(calibration(tests, Athletes.AS_OF).criticalSwimSpeed().value());
  }

  @Test
  void aSetOfPartsAddsUpToTheirSum() {
    Calibration athlete = Athletes.tove().calibration();
    Random random = new Random(64);
    for (int run = 0; run < 300; run++) {
      SetLine line = RandomLines.line(random);
      SetBreakdown whole = SetBreakdown.of(line, Sport.SWIM, athlete, CONSTANTS);
      DomainMinutes in = whole.domains();
      assertThat(in.moderate() + in.heavy() + in.severe() + in.unclassified() + whole.restMinutes())
          .isCloseTo(whole.minutes(), within(1e-6));
      assertThat(whole.raceMetres()).isLessThanOrEqualTo(whole.metres() + 1e-6);
      assertThat(whole.longestContinuous()).isBetween(0.0, whole.metres() + 1e-6);
      assertThat(whole.longestRepetition()).isLessThanOrEqualTo(whole.longestContinuous() + 1e-6);
    }
  }

  private static Calibration calibration(List<Athlete.Test> tests, LocalDate asOf) {
    return Calibration.of(
        Athletes.tove().withTests(tests.toArray(new Athlete.Test[0])).plan(),
        null,
        asOf,
        CONSTANTS);
  }
}
