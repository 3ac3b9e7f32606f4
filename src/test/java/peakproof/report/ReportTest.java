package peakproof.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import peakproof.audit.Audit;
import peakproof.audit.Audit.AcceptedFinding;
import peakproof.audit.Finding;
import peakproof.report.Report.Missing;
import peakproof.report.Report.Ranked;
import peakproof.rule.Severity;

class ReportTest {
  private static final List<Finding> NINE =
      Stream.of(
              Severity.HOLD,
              Severity.HOLD,
              Severity.FIX,
              Severity.FIX,
              Severity.ASK,
              Severity.ASK,
              Severity.ASK,
              Severity.NOTE,
              Severity.NOTE)
          .map(severity -> Sample.finding("rule-of-" + severity, severity))
          .toList();

  @Test
  void showsEveryHoldAndThreeOfTheRest() {
    assertThat(shown(new Choice(false, 3))).containsExactly(1, 2, 3, 4, 5);
  }

  @Test
  void showsOnlyTheHoldsWhenAskedForNoneOfTheRest() {
    assertThat(shown(new Choice(false, 0))).containsExactly(1, 2);
  }

  @Test
  void leavesNotesOutHoweverManyAreWanted() {
    assertThat(shown(new Choice(false, 99))).containsExactly(1, 2, 3, 4, 5, 6, 7);
  }

  @Test
  void showsNotesWhenAskedForEverything() {
    assertThat(shown(new Choice(true, 3))).hasSize(9);
  }

  @Test
  void putsTheWorstPlanFirst() {
    Audit calm = Sample.audit("Ask", null, List.of());
    Audit toFix = Sample.audit("Bo", null, List.of(Sample.finding("brick-none", Severity.FIX)));
    Audit twoHolds = Sample.audit("Cato", null, NINE);
    assertThat(athletes(calm, toFix, twoHolds)).containsExactly("Cato", "Bo", "Ask");
  }

  @Test
  void ordersEquallyBadPlansByPath() {
    assertThat(athletes(Sample.audit("Cato", null, NINE), Sample.audit("Bo", null, NINE)))
        .containsExactly("Bo", "Cato");
  }

  @Test
  void reachesABarFromItsOwnSeverityOn() {
    Rank rank =
        Rank.of(Sample.audit("Bo", null, List.of(Sample.finding("brick-none", Severity.ASK))));
    assertThat(rank.reaches(Severity.HOLD)).isFalse();
    assertThat(rank.reaches(Severity.FIX)).isFalse();
    assertThat(rank.reaches(Severity.ASK)).isTrue();
    assertThat(rank.reaches(Severity.NOTE)).isTrue();
  }

  @Test
  void namesFirstTheEntryThatSettlesMostRules() {
    Report report = Report.of(new Judged(Sample.runa(), true), new Choice(false, 3));
    assertThat(report.missing())
        .containsExactly(
            new Missing("athlete.heart-rate.max", 2),
            new Missing("goal.run", 1),
            new Missing("race-day.fuel", 1));
    assertThat(report.holdsNotJudged()).containsExactly("fluid-overplan");
  }

  @Test
  void countsEachRuleOnceSoThatTheCountsSum() {
    Finding knee = Sample.finding("run-pain-rule", Severity.ASK);
    Finding achilles = Sample.pain();
    Audit audit =
        withAccepted(
            Sample.audit("Bo", null, List.of(achilles, knee)),
            new AcceptedFinding(knee, "old", null, null),
            new AcceptedFinding(
                Sample.finding("strength-none", Severity.ASK), "x", "MK", LocalDate.MAX));
    Tally tally = Tally.of(audit);
    assertThat(tally.found(Severity.HOLD)).isEqualTo(1);
    assertThat(tally.found(Severity.ASK)).isZero();
    assertThat(tally.accepted()).isEqualTo(1);
    assertThat(tally.rules()).isEqualTo(1 + 2 + 1);
  }

  private static List<Integer> shown(Choice choice) {
    Report report = Report.of(new Judged(Sample.audit("Bo", null, NINE), true), choice);
    return report.shown().stream().map(Ranked::order).toList();
  }

  private static List<String> athletes(Audit... audits) {
    return Stream.of(audits).map(Rank::of).sorted().map(Rank::athlete).toList();
  }

  private static Audit withAccepted(Audit audit, AcceptedFinding... accepted) {
    return new Audit(
        audit.plan(),
        audit.log(),
        audit.athlete(),
        audit.event(),
        audit.raceDate(),
        audit.asOf(),
        audit.logEnds(),
        audit.shape(),
        audit.findings(),
        audit.clear(),
        audit.notJudged(),
        audit.notForThisPlan(),
        audit.silenced(),
        List.of(accepted),
        audit.preset(),
        audit.settings(),
        audit.notDeclared(),
        audit.remarks(),
        audit.ofHealth());
  }
}
