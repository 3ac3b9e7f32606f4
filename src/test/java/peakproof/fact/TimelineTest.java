package peakproof.fact;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** Logs whose first entry is of Wednesday, 12 May 2027. */
class TimelineTest {
  private static final String ENTRIES = "2027-05-12: run 5km\n2027-05-16: run 5km\n";

  @Test
  void aLogThatIsNotSaidToBeCompleteBeginsInTheWeekOfItsFirstEntry() {
    Timeline timeline = logged(Timelines.log(ENTRIES));
    assertThat(timeline.diary().first()).isEqualTo("2027-05-10");
    assertThat(known(timeline, "2027-05-11")).isEqualTo(Known.UNKNOWN);
  }

  @Test
  void daysOfACompleteLogBeforeItsFirstEntryAreRestDays() {
    Timeline timeline = logged(Timelines.log("2027-04-07", ENTRIES));
    assertThat(timeline.diary().first()).isEqualTo("2027-04-05");
    assertThat(known(timeline, "2027-04-06")).isEqualTo(Known.UNKNOWN);
    assertThat(known(timeline, "2027-04-07")).isEqualTo(Known.DONE);
    assertThat(timeline.weeks().all()).element(1).extracting(Week::restDays).isEqualTo(7.0);
  }

  @Test
  void aLogCompleteSinceALaterDayLosesNoEntry() {
    Timeline timeline = logged(Timelines.log("2027-05-14", ENTRIES));
    assertThat(timeline.diary().first()).isEqualTo("2027-05-10");
    assertThat(known(timeline, "2027-05-13")).isEqualTo(Known.UNKNOWN);
    assertThat(known(timeline, "2027-05-14")).isEqualTo(Known.DONE);
  }

  @Test
  void nothingIsLaidOutOverAYearBeforeTheFirstEntry() {
    Timeline timeline = logged(Timelines.log("1900-01-01", ENTRIES));
    assertThat(timeline.diary().first()).isEqualTo("2026-05-11");
  }

  private static Timeline logged(String log) {
    return Timelines.of(Timelines.plan("weeks: []"), log, "2027-05-17");
  }

  private static Known known(Timeline timeline, String date) {
    return timeline.between(LocalDate.parse(date), LocalDate.parse(date)).get(0).known();
  }
}
