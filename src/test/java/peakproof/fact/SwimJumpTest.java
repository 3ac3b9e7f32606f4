package peakproof.fact;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import peakproof.document.Texts;
import peakproof.document.WaterTable;
import peakproof.measure.ShippedConstants;

/** Four weeks of swimming without a log: 2000, 2000, 2000 and 3000 m, a third with paddles. */
class SwimJumpTest {
  private static final String PLAN =
      """
      plan:
        format: 1
        athlete: {name: Lena Brandl}
        event:
          name: Saltmarsh Long Course
          date: 2027-07-11
          legs: {swim: 3.8km, bike: 180km, run: 42.2km}
        weeks:
          - {starts: 2027-05-31, days: {mon: [{swim: 2000 easy}]}}
          - {starts: 2027-06-07, days: {mon: [{swim: 2000 easy}]}}
          - {starts: 2027-06-14, days: {mon: [{swim: 2000 easy}]}}
          - {starts: 2027-06-21, days: {mon: [{swim: "2000 easy, 1000 easy paddles"}]}}
      """;

  @Test
  void saysHowMuchMoreAndHowMuchOfItWithPaddles() {
    assertThat(jump("2027-06-21"))
        .isEqualTo("50% more than the best of the three weeks before, 33% of it with paddles");
  }

  @Test
  void saysSoWhereNothingBeforeIsKnown() {
    assertThat(jump("2027-05-31"))
        .isEqualTo("which nobody can hold against the weeks before, 0% of it with paddles");
  }

  private static String jump(String monday) {
    Facts facts =
        Facts.of(
            Texts.dossier(PLAN, null, null, null),
            LocalDate.parse("2027-05-30"),
            ShippedConstants.constants(),
            new WaterTable(List.of()));
    return facts.weeks().stream()
        .filter(week -> week.starts().equals(LocalDate.parse(monday)))
        .findFirst()
        .orElseThrow()
        .swimJump();
  }
}
