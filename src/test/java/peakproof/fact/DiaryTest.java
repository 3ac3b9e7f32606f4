package peakproof.fact;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import peakproof.measure.ShippedConstants;

/** Five days from Wednesday, 5 May: done, unknown, done, planned and not written. */
class DiaryTest {
  private static final LocalDate FIRST = LocalDate.parse("2027-05-05");
  private static final LocalDate LAST = FIRST.plusDays(4);
  private static final List<Day> DAYS =
      days(Known.DONE, Known.UNKNOWN, Known.DONE, Known.PLANNED, Known.UNWRITTEN);
  private static final Diary DIARY = new Diary(FIRST, DAYS);
  private static final Diary EMPTY = new Diary(FIRST, List.of());

  @Test
  void findsTheFirstAndTheLastDay() {
    assertThat(DIARY.at(FIRST)).isSameAs(DAYS.get(0));
    assertThat(DIARY.at(LAST)).isSameAs(DAYS.get(4));
  }

  @Test
  void hasNoDayBeforeTheFirst() {
    assertThat(DIARY.at(FIRST.minusDays(1))).isNull();
  }

  @Test
  void hasNoDayAfterTheLast() {
    assertThat(DIARY.at(LAST.plusDays(1))).isNull();
  }

  @Test
  void takesNoDayFarAwayForOneOfItsOwn() {
    // as many days away as an int has values, which would come round to the same number
    assertThat(DIARY.at(FIRST.plusDays(1L << 32))).isNull();
    assertThat(DIARY.until(FIRST.plusDays(1L << 32))).isEqualTo(5);
    assertThat(DIARY.until(FIRST.minusDays(1L << 32))).isZero();
  }

  @Test
  void takesBothEndsOfASpan() {
    assertThat(DIARY.between(FIRST.plusDays(1), FIRST.plusDays(3)))
        .containsExactly(DAYS.get(1), DAYS.get(2), DAYS.get(3));
  }

  @Test
  void takesOneDayForASpanOfOne() {
    assertThat(DIARY.between(FIRST, FIRST)).containsExactly(DAYS.get(0));
    assertThat(DIARY.between(LAST, LAST)).containsExactly(DAYS.get(4));
  }

  @Test
  void takesOnlyTheDaysThereAreOfALongerSpan() {
    assertThat(DIARY.between(FIRST.minusDays(9), LAST.plusDays(9))).isEqualTo(DAYS);
  }

  @Test
  void takesNoDayOfASpanBesideIt() {
    assertThat(DIARY.between(FIRST.minusDays(9), FIRST.minusDays(1))).isEmpty();
    assertThat(DIARY.between(LAST.plusDays(1), LAST.plusDays(9))).isEmpty();
  }

  @Test
  void takesNoDayOfASpanThatEndsBeforeItBegins() {
    assertThat(DIARY.between(LAST, FIRST)).isEmpty();
    assertThat(DIARY.between(FIRST.plusDays(2), FIRST.plusDays(1))).isEmpty();
  }

  @Test
  void countsDoneAndPlannedDaysAsKnownAndNoOthers() {
    assertThat(DIARY.known(FIRST, LAST)).isEqualTo(3);
    assertThat(DIARY.known(FIRST.plusDays(1), FIRST.plusDays(1))).isZero();
    assertThat(DIARY.known(LAST, LAST)).isZero();
  }

  @Test
  void countsKnownDaysWithBothEnds() {
    assertThat(DIARY.known(FIRST, FIRST)).isEqualTo(1);
    assertThat(DIARY.known(FIRST.plusDays(2), FIRST.plusDays(3))).isEqualTo(2);
  }

  @Test
  void countsKnownDaysOnlyAsFarAsItGoes() {
    assertThat(DIARY.known(FIRST.minusDays(9), LAST.plusDays(9))).isEqualTo(3);
    assertThat(DIARY.known(FIRST.minusDays(9), FIRST.minusDays(1))).isZero();
    assertThat(DIARY.known(LAST.plusDays(1), LAST.plusDays(9))).isZero();
  }

  @Test
  void knowsNoDayOfASpanThatEndsBeforeItBegins() {
    assertThat(DIARY.known(LAST, FIRST)).isZero();
  }

  @Test
  void countsTheDaysUntilADateWithThatOne() {
    assertThat(DIARY.until(FIRST.minusDays(1))).isZero();
    assertThat(DIARY.until(FIRST)).isEqualTo(1);
    assertThat(DIARY.until(LAST.minusDays(1))).isEqualTo(4);
    assertThat(DIARY.until(LAST)).isEqualTo(5);
    assertThat(DIARY.until(LAST.plusDays(1))).isEqualTo(5);
  }

  @Test
  void mayHaveNoDaysAtAll() {
    assertThat(EMPTY.at(FIRST)).isNull();
    assertThat(EMPTY.between(FIRST.minusDays(1), LAST)).isEmpty();
    assertThat(EMPTY.known(FIRST.minusDays(1), LAST)).isZero();
    assertThat(EMPTY.until(FIRST)).isZero();
    assertThat(EMPTY.sessions()).isEmpty();
  }

  @Test
  void keepsItsDaysWhateverBecomesOfTheListTheyCameIn() {
    List<Day> days = new ArrayList<>(DAYS);
    Diary diary = new Diary(FIRST, days);
    days.remove(0);
    assertThat(diary.days()).isEqualTo(DAYS);
    assertThat(diary.at(FIRST)).isSameAs(DAYS.get(0));
  }

  @Test
  void listsTheSessionsDayByDayAsTheyAreWritten() {
    String plan =
        Timelines.plan(
            """
            weeks:
              - starts: 2027-05-31
                days:
                  wed: [{run: 30min easy}]
                  mon: [{swim: 2000 easy}, {bike: 1h easy, then: {run: 20min easy}}]
            """);
    Diary diary = Timelines.of(plan, null, "2027-05-30").diary();
    assertThat(diary.sessions())
        .extracting(Session::toString)
        .containsExactly(
            "2027-05-31 swim 2000 easy",
            "2027-05-31 bike 1h easy",
            "2027-05-31 run 20min easy",
            "2027-06-02 run 30min easy");
  }

  private static List<Day> days(Known... known) {
    List<Day> days = new ArrayList<>();
    for (int i = 0; i < known.length; i++) {
      days.add(
          new Day(
              FIRST.plusDays(i), known[i], List.of(), null, null, ShippedConstants.constants()));
    }
    return List.copyOf(days);
  }
}
