package peakproof.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import peakproof.measure.Constants;
import peakproof.measure.Coverage;
import peakproof.measure.DailyEntry;
import peakproof.measure.DayCount;
import peakproof.measure.PositionShare;
import peakproof.measure.PositionShare.Ride;
import peakproof.measure.ShippedConstants;

/** Counts and means of daily entries over windows in common use; no source. */
class DailyEntryTest {
  private static final Constants CONSTANTS = ShippedConstants.constants();

  @Test
  void sleepIsTheMeanOfTheLastSevenNights() {
    DailyEntry sleep = sleep(3.0, 8.0, 7.0, 6.0, 8.0, 7.0, 7.0, 6.0);
    assertThat(sleep.value().value()).isCloseTo(7, within(1e-12));
    assertThat(sleep.coverage()).isEqualTo(new Coverage(7, 7));
  }

  @Test
  void sleepNeedsFiveOfSevenNights() {
    assertThat(sleep(8.0, null, 6.0, 8.0, null, 7.0, 6.0).value().value())
        .isCloseTo(7, within(1e-12));
    assertThat(sleep(8.0, null, 6.0, null, null, 7.0, 7.0).value().because())
        .contains("not enough recorded days");
    assertThat(sleep(8.0, 8.0).value().value()).isNull();
    assertThat(sleep(8.0, 8.0).coverage()).isEqualTo(new Coverage(2, 7));
    assertThat(sleep().value().value()).isNull();
    assertThat(sleep(8.0, 8.0, 8.0, 8.0, 8.0, 8.0, -8.0).value().value()).isNull();
  }

  @Test
  void restingHeartRateIsHeldAgainstTheMedianOfTheDaysBefore() {
    List<Double> days = new ArrayList<>(Collections.nCopies(27, 50.0));
    days.add(0, 90.0);
    days.add(0, 90.0);
    days.add(57.0);
    DailyEntry entry = DailyEntry.restingHeartRate(days, CONSTANTS);
    assertThat(entry.value().value()).isEqualTo(7);
    assertThat(entry.coverage()).isEqualTo(new Coverage(28, 28));
  }

  @Test
  void restingHeartRateNeedsTodayAndTwentyDaysBefore() {
    List<Double> days = new ArrayList<>(Collections.nCopies(20, 50.0));
    days.add(47.0);
    assertThat(DailyEntry.restingHeartRate(days, CONSTANTS).value().value()).isEqualTo(-3);
    assertThat(DailyEntry.restingHeartRate(days.subList(1, 21), CONSTANTS).value().value())
        .isNull();
    days.set(20, null);
    assertThat(DailyEntry.restingHeartRate(days, CONSTANTS).value().because()).contains("today");
    assertThat(DailyEntry.restingHeartRate(days, CONSTANTS).coverage().known()).isEqualTo(20);
    assertThat(DailyEntry.restingHeartRate(List.of(), CONSTANTS).value().value()).isNull();
    days.set(20, 0.0);
    assertThat(DailyEntry.restingHeartRate(days, CONSTANTS).value().value()).isNull();
  }

  @Test
  void coverageIsJudgedAt70And85PerCent() {
    assertThat(new Coverage(69, 100).judged(CONSTANTS)).isEqualTo(Coverage.Judgement.SUPPRESSED);
    assertThat(new Coverage(70, 100).judged(CONSTANTS)).isEqualTo(Coverage.Judgement.RESERVED);
    assertThat(new Coverage(84, 100).judged(CONSTANTS)).isEqualTo(Coverage.Judgement.RESERVED);
    assertThat(new Coverage(85, 100).judged(CONSTANTS)).isEqualTo(Coverage.Judgement.SHOWN);
    assertThat(new Coverage(0, 0).share()).isZero();
  }

  @Test
  void heatDaysOfTheLastFourteenAreASpanWhereDaysAreUnknown() {
    List<Boolean> days = new ArrayList<>(Collections.nCopies(14, false));
    days.set(0, true);
    days.set(13, true);
    assertThat(DayCount.heat(days, CONSTANTS)).isEqualTo(new DayCount(2, 2));
    days.add(null);
    assertThat(DayCount.heat(days, CONSTANTS)).isEqualTo(new DayCount(1, 2));
    assertThat(DayCount.heat(List.of(true), CONSTANTS)).isEqualTo(new DayCount(1, 14));
  }

  @Test
  void daysSinceTheLastRestDay() {
    assertThat(sinceRest(true, false, false)).isEqualTo(new DayCount(2, 2));
    assertThat(sinceRest(true, true)).isEqualTo(new DayCount(0, 0));
    assertThat(sinceRest(true, null, false)).isEqualTo(new DayCount(1, 2));
    assertThat(sinceRest(true, null, null)).isEqualTo(new DayCount(0, 2));
    assertThat(sinceRest(null, false, false)).isEqualTo(new DayCount(2, 3));
    assertThat(sinceRest(false, false)).isEqualTo(new DayCount(2, 2));
    assertThat(sinceRest()).isEqualTo(new DayCount(0, 0));
  }

  @Test
  void racePositionIsPooledOverRides() {
    assertThat(PositionShare.of(List.of(new Ride(180.0, 90.0), new Ride(60.0, 0.0))).value())
        .isCloseTo(0.375, within(1e-12));
    assertThat(PositionShare.of(List.of(new Ride(60.0, 60.0))).value()).isEqualTo(1);
    assertThat(PositionShare.of(List.of()).value()).isNull();
    assertThat(PositionShare.of(List.of(new Ride(60.0, null))).because()).contains("every ride");
    assertThat(PositionShare.of(List.of(new Ride(null, 10.0))).value()).isNull();
    assertThat(PositionShare.of(List.of(new Ride(60.0, 61.0))).value()).isNull();
    assertThat(PositionShare.of(List.of(new Ride(60.0, -1.0))).value()).isNull();
    assertThat(PositionShare.of(List.of(new Ride(0.0, 0.0))).value()).isNull();
  }

  private static DailyEntry sleep(Double... days) {
    return DailyEntry.sleep(Arrays.asList(days), CONSTANTS);
  }

  private static DayCount sinceRest(Boolean... days) {
    return DayCount.sinceRest(Arrays.asList(days));
  }
}
