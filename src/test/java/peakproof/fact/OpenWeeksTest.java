package peakproof.fact;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Six weeks to a race on Sunday, 11 July: from 31 May and, as a rule, all written. */
class OpenWeeksTest {
  private static final Set<Phase> NO_PHASE = Set.of();
  private static final String BLOCK = "block: {peak-weeks: 2, taper-weeks: 2}\n";
  private static final String FOUR_WEEKS =
      """
      weeks:
        - {starts: 2027-05-31}
        - {starts: 2027-06-07}
        - {starts: 2027-06-14}
        - {starts: 2027-06-21}
      """;
  private static final String SIX_WEEKS =
      FOUR_WEEKS + "  - {starts: 2027-06-28}\n  - {starts: 2027-07-05}\n";

  @Test
  void aPhaseIsOverWhenNoneOfItsWeeksIsOpen() {
    OpenWeeks weeks = weeks(BLOCK + SIX_WEEKS, "rest", "2027-06-13");
    assertThat(weeks.over(EnumSet.of(Phase.BUILD))).isTrue();
    assertThat(weeks.over(EnumSet.of(Phase.PEAK))).isFalse();
    assertThat(weeks.over(EnumSet.of(Phase.TAPER))).isFalse();
  }

  @Test
  void severalPhasesAreOverWhenAllOfThemAre() {
    OpenWeeks weeks = weeks(BLOCK + SIX_WEEKS, "rest", "2027-06-13");
    assertThat(weeks.over(EnumSet.of(Phase.BUILD, Phase.LIGHTER))).isTrue();
    assertThat(weeks.over(EnumSet.of(Phase.BUILD, Phase.PEAK))).isFalse();
  }

  @Test
  void aPhaseIsNotOverWhileADayOfItCanBeChanged() {
    // without an entry the as-of date itself is still to come
    assertThat(weeks(BLOCK + SIX_WEEKS, null, "2027-06-13").over(EnumSet.of(Phase.BUILD)))
        .isFalse();
    assertThat(weeks(BLOCK + SIX_WEEKS, null, "2027-06-14").over(EnumSet.of(Phase.BUILD))).isTrue();
  }

  @Test
  void aPhaseIsNotOverWhileAWeekOfItIsStillToBeWritten() {
    String twoWeeks = "weeks:\n  - {starts: 2027-05-31}\n  - {starts: 2027-06-07}\n";
    OpenWeeks weeks = weeks(BLOCK + twoWeeks, null, "2027-06-14");
    assertThat(weeks.over(EnumSet.of(Phase.BUILD))).isTrue();
    assertThat(weeks.over(EnumSet.of(Phase.PEAK))).isFalse();
  }

  @ParameterizedTest
  @EnumSource(Phase.class)
  void noPhaseIsOverWhileAWeekWithoutOneIsOpen(Phase phase) {
    OpenWeeks weeks = weeks(SIX_WEEKS, "rest", "2027-06-13");
    assertThat(weeks.over(EnumSet.of(phase))).isFalse();
  }

  @Test
  void weeksWithoutAPhaseDoNotMatterOnceTheyAreOver() {
    // the only week of a known phase is race week
    OpenWeeks weeks = weeks(SIX_WEEKS, "rest", "2027-07-04");
    assertThat(weeks.over(EnumSet.of(Phase.PEAK))).isTrue();
    assertThat(weeks.over(EnumSet.of(Phase.TAPER))).isFalse();
  }

  @Test
  void weeksWithoutAPhaseKeepAPhaseOpenThatAnotherWeekHas() {
    String focus = SIX_WEEKS.replace("2027-05-31", "2027-05-31, focus: build");
    OpenWeeks weeks = weeks(focus, "rest", "2027-06-13");
    assertThat(weeks.over(EnumSet.of(Phase.BUILD))).isFalse();
  }

  @Test
  void noPhaseIsOverWhereNoWeekHasOne() {
    // a race on a Monday has no race week, which would always be a taper
    String event = "{name: Reedmere Half, date: 2027-07-05, legs: {bike: 90km}}";
    String plan = Timelines.plan("{name: Lena Brandl}", event, FOUR_WEEKS);
    List<Week> weeks = Timelines.of(plan, null, "2027-07-05").weeks().all();
    assertThat(weeks).hasSize(5).allMatch(week -> week.phase() == null && !week.open());
    assertThat(new OpenWeeks(weeks).over(EnumSet.of(Phase.BUILD))).isFalse();
  }

  @Test
  void noPhaseIsOverWithoutWeeks() {
    OpenWeeks none = new OpenWeeks(List.of());
    assertThat(none.over(EnumSet.of(Phase.BUILD))).isFalse();
    assertThat(none.notWritten(NO_PHASE)).isEmpty();
  }

  @Test
  void namesTheWeeksThatAreNotWritten() {
    assertThat(weeks(BLOCK + FOUR_WEEKS, null, "2027-05-30").notWritten(NO_PHASE))
        .containsExactly("the week of 28 Jun is not written", "the week of 5 Jul is not written");
  }

  @Test
  void namesNoWeekOnceAllAreWritten() {
    OpenWeeks weeks = weeks(BLOCK + SIX_WEEKS, null, "2027-05-30");
    assertThat(weeks.notWritten(NO_PHASE)).isEmpty();
    assertThat(weeks.notWritten(EnumSet.allOf(Phase.class))).isEmpty();
  }

  @Test
  void namesTheWeeksOfThePhasesAskedForAlone() {
    String block = "block: {peak-weeks: 2, taper-weeks: 1}\n";
    OpenWeeks weeks = weeks(block + FOUR_WEEKS, null, "2027-05-30");
    assertThat(weeks.notWritten(EnumSet.of(Phase.PEAK)))
        .containsExactly("the week of 28 Jun is not written");
    assertThat(weeks.notWritten(EnumSet.of(Phase.PEAK, Phase.TAPER))).hasSize(2);
    assertThat(weeks.notWritten(EnumSet.of(Phase.BUILD))).isEmpty();
  }

  @Test
  void namesAWeekWithoutAPhaseOnlyWhenAllAreAskedFor() {
    OpenWeeks weeks = weeks(FOUR_WEEKS, null, "2027-05-30");
    assertThat(weeks.notWritten(NO_PHASE)).contains("the week of 28 Jun is not written");
    assertThat(weeks.notWritten(EnumSet.allOf(Phase.class)))
        .containsExactly("the week of 5 Jul is not written");
  }

  @Test
  void namesNoWeekThatIsOver() {
    assertThat(weeks(BLOCK + FOUR_WEEKS, null, "2027-07-05").notWritten(NO_PHASE))
        .containsExactly("the week of 5 Jul is not written");
  }

  private static OpenWeeks weeks(String lines, String asOfDay, String asOf) {
    String log = asOfDay == null ? null : Timelines.log(asOf + ": " + asOfDay + "\n");
    return Timelines.facts(Timelines.plan(lines), log, asOf).openWeeks();
  }
}
