package peakproof.fact;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import peakproof.measure.Constant;
import peakproof.measure.ShippedConstants;

/** A plan of one week from Monday, 31 May, and logs of the days before. */
class SpanTest {
  private static final String WEEK =
      """
      weeks:
        - starts: 2027-05-31
          days:
            mon: [{swim: 2000 easy}, {strength: 20min}]
            wed: [{run: 40min easy}]
            sat: [{bike: 3h, then: {run: 20min easy}}, {other: 40min walk}]
            sun: [{bike: 1h, then: {run: 10min easy}}]
      """;
  private static final String LATELY = "{name: Lena Brandl, lately: {longest-ride: 2h}}";

  @Test
  void sortsItsSessionsBySport() {
    Span span = planned("2027-05-31", "2027-06-06");
    assertThat(span.sessions).hasSize(8);
    assertThat(span.swims).extracting(Session::label).containsExactly("swim 2000 easy");
    assertThat(span.rides).extracting(Session::minutes).containsExactly(180.0, 60.0);
    assertThat(span.longRides).extracting(Session::minutes).containsExactly(180.0);
    assertThat(span.runs).extracting(Session::minutes).containsExactly(40.0, 20.0, 10.0);
  }

  @Test
  void takesBothItsEnds() {
    Span span = planned("2027-06-02", "2027-06-05");
    assertThat(span.days).hasSize(4);
    assertThat(span.sessions).extracting(Session::date).startsWith(LocalDate.parse("2027-06-02"));
    assertThat(span.sessions).extracting(Session::date).endsWith(LocalDate.parse("2027-06-05"));
  }

  @Test
  void holdsTheDatesFromItsFirstToItsLastDay() {
    Span span = planned("2027-06-02", "2027-06-05");
    assertThat(span.holds(LocalDate.parse("2027-06-01"))).isFalse();
    assertThat(span.holds(LocalDate.parse("2027-06-02"))).isTrue();
    assertThat(span.holds(LocalDate.parse("2027-06-05"))).isTrue();
    assertThat(span.holds(LocalDate.parse("2027-06-06"))).isFalse();
  }

  @Test
  void holdsNothingWhenItEndsBeforeItBegins() {
    Span span = planned("2027-06-05", "2027-06-02");
    assertThat(span.days).isEmpty();
    assertThat(span.sessions).isEmpty();
    assertThat(span.bricks()).isEmpty();
    assertThat(span.thin()).isFalse();
    assertThat(span.unlogged()).isFalse();
  }

  @Test
  void hasTheBricksOfItsDaysAndNoOthers() {
    assertThat(planned("2027-05-31", "2027-06-05").bricks())
        .extracting(Brick::date)
        .containsExactly(LocalDate.parse("2027-06-05"));
    assertThat(planned("2027-05-31", "2027-06-06").bricks()).hasSize(2);
    assertThat(planned("2027-05-31", "2027-06-04").bricks()).isEmpty();
  }

  @Test
  void endsAtTheEveOfTheRace() {
    Span span = planned("2027-07-10", "2027-07-20");
    assertThat(span.days).extracting(Day::date).containsExactly(LocalDate.parse("2027-07-10"));
  }

  @Test
  void namesEachWeekThatIsNotWrittenOnce() {
    assertThat(planned("2027-06-04", "2027-06-15").notWritten())
        .containsExactly("the week of 7 Jun is not written", "the week of 14 Jun is not written");
  }

  @Test
  void namesNoWeekThatIsWrittenOrOver() {
    assertThat(planned("2027-05-01", "2027-06-06").notWritten()).isEmpty();
  }

  @Test
  void isUnloggedWhenNoneOfItsPastDaysIsKnown() {
    assertThat(planned("2027-05-20", "2027-06-06").unlogged()).isTrue();
  }

  @Test
  void isNotUnloggedWithASingleDayOfTheLog() {
    assertThat(logged("2027-05-25: rest", "2027-05-20", "2027-06-06").unlogged()).isFalse();
    assertThat(logged("2027-05-25: rest", "2027-05-26", "2027-06-06").unlogged()).isTrue();
  }

  @Test
  void isNotUnloggedWhileNoneOfItIsOver() {
    // the as-of date is not over
    assertThat(planned("2027-05-30", "2027-06-06").unlogged()).isFalse();
    assertThat(planned("2027-05-31", "2027-06-06").unlogged()).isFalse();
  }

  @Test
  void daysBeforeTheFirstEntryAreUnknown() {
    Span span = planned("2027-01-01", "2027-01-03");
    assertThat(span.days).hasSize(3).allMatch(day -> day.known() == Known.UNKNOWN);
    assertThat(span.hasUnknown()).isTrue();
  }

  @Test
  void plannedAndUnwrittenDaysAreNotUnknown() {
    assertThat(planned("2027-05-31", "2027-06-15").hasUnknown()).isFalse();
    assertThat(planned("2027-05-30", "2027-06-15").hasUnknown()).isTrue();
  }

  @Test
  void isThinWhenTooFewOfItsDaysAreKnown() {
    // three quarters of eight days are six
    assertThat(unknownOfEight("2027-05-29", 0.75).thin()).isFalse();
    assertThat(unknownOfEight("2027-05-28", 0.75).thin()).isTrue();
  }

  @Test
  void isNotThinExactlyAtAShareThatDoublesCannotHold() {
    // 10 * (1 - 0.9) is a little less than 1
    Timeline timeline =
        Timelines.of(
            Timelines.plan(WEEK),
            null,
            "2027-05-30",
            ShippedConstants.with(Constant.COVERAGE_LEAST, 0.9));
    assertThat(Timelines.span(timeline, "2027-05-30", "2027-06-06").thin()).isTrue();
    assertThat(Timelines.span(timeline, "2027-05-30", "2027-06-08").thin()).isFalse();
  }

  @Test
  void isThinByTheShippedShareToo() {
    // seven of ten, then six
    assertThat(planned("2027-05-28", "2027-06-06").thin()).isFalse();
    assertThat(planned("2027-05-27", "2027-06-05").thin()).isTrue();
  }

  @Test
  void theStatementStandsInForDaysBeforeTheAsOfDate() {
    Timeline timeline = Timelines.of(Timelines.plan(LATELY, WEEK), null, "2027-05-30");
    assertThat(Timelines.span(timeline, "2027-05-29", "2027-06-06").statesLately()).isTrue();
    assertThat(Timelines.span(timeline, "2027-05-30", "2027-06-06").statesLately()).isFalse();
  }

  @Test
  void withoutAStatementNothingStandsIn() {
    assertThat(planned("2027-05-01", "2027-06-06").statesLately()).isFalse();
  }

  @Test
  void asksForALogFromItsFirstDay() {
    assertThat(planned("2027-05-20", "2027-06-06").logOfAllDays())
        .isEqualTo("a log of all days since 20 May");
  }

  @Test
  void tellsSinceWhenTheLogLags() {
    String days = "2027-05-25: rest";
    assertThat(logged(days, "2027-05-20", "2027-06-06").unloggedSince()).isEqualTo("2027-05-26");
    assertThat(logged(days, "2027-05-27", "2027-06-06").unloggedSince()).isEqualTo("2027-05-27");
    assertThat(logged(days, "2027-05-20", "2027-05-27").unloggedSince()).isNull();
    assertThat(logged(days, "2027-05-28", "2027-06-06").unloggedSince()).isNull();
  }

  private static Span unknownOfEight(String first, double coverage) {
    Timeline timeline =
        Timelines.of(
            Timelines.plan(WEEK),
            null,
            "2027-05-30",
            ShippedConstants.with(Constant.COVERAGE_LEAST, coverage));
    return new Span(timeline, LocalDate.parse(first), LocalDate.parse(first).plusDays(7));
  }

  private static Span planned(String first, String last) {
    return Timelines.span(Timelines.of(Timelines.plan(WEEK), null, "2027-05-30"), first, last);
  }

  private static Span logged(String days, String first, String last) {
    return Timelines.span(
        Timelines.of(Timelines.plan(WEEK), Timelines.log(days + "\n"), "2027-05-30"), first, last);
  }
}
