package peakproof.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import peakproof.audit.Baseline.Earlier;
import peakproof.audit.Baseline.Who;
import peakproof.audit.Comparison.Since;
import peakproof.report.Sample;
import peakproof.rule.Severity;

class ComparisonTest {
  private static final Finding SPIKE = Sample.finding("run-session-spike", Severity.FIX);
  private static final Finding NONE = Sample.finding("strength-none", Severity.ASK);

  private final Map<String, Who> files = new HashMap<>();

  @Test
  void knowsAFindingAgainAndWhatIsGone() {
    Comparison comparison = compare(audit("Bo", SPIKE), Baseline.findings(audit("Bo", NONE)));
    assertThat(comparison.findings()).containsExactly(Since.NEW);
    assertThat(comparison.gone()).extracting(Gone::rule).containsExactly("strength-none");
    Comparison same = compare(audit("Bo", SPIKE), Baseline.findings(audit("Bo", SPIKE, NONE)));
    assertThat(same.findings()).containsExactly(Since.KNOWN);
    assertThat(same.reaches(Severity.NOTE, audit("Bo", SPIKE))).isFalse();
  }

  @Test
  void takesForNewWhatWeighsMoreThanItDid() {
    Finding heavier = Sample.finding("strength-none", Severity.FIX);
    Finding lighter = Sample.finding("strength-none", Severity.NOTE);
    List<Gone> before = Baseline.findings(audit("Bo", NONE));
    Comparison worse = compare(audit("Bo", heavier), before);
    assertThat(worse.findings()).containsExactly(Since.NEW);
    assertThat(worse.gone()).isEmpty();
    assertThat(worse.reaches(Severity.FIX, audit("Bo", heavier))).isTrue();
    assertThat(worse.reaches(Severity.HOLD, audit("Bo", heavier))).isFalse();
    assertThat(compare(audit("Bo", lighter), before).findings()).containsExactly(Since.KNOWN);
  }

  @Test
  void saysWhatHidesAFindingThatNobodyMended() {
    Finding unjudged = Sample.finding("fluid-overplan", Severity.FIX);
    Finding silenced = Sample.finding("swim-in-company", Severity.FIX);
    Finding cleared = Sample.finding("brick-none", Severity.FIX);
    Finding accepted = Sample.finding("strength-none", Severity.ASK);
    Finding unknown = Sample.finding("no-such-rule", Severity.FIX);
    List<Gone> before =
        Baseline.findings(audit("Bo", unjudged, silenced, cleared, accepted, unknown));
    assertThat(compare(Sample.runa(), before).gone())
        .extracting(Gone::now)
        .containsExactly("no longer judged", "silenced", "clear", "no longer a rule");
  }

  @Test
  void followsAPlanThatMovesButNotACopy() {
    Audit now = audit("Bo", SPIKE);
    List<Gone> before = Baseline.findings(now);
    Who bo = new Who("Bo", now.raceDate());
    Baseline moved = new Baseline(List.of(earlier("old.yaml", bo, before)), present());
    assertThat(moved.compare(now).findings()).containsExactly(Since.KNOWN);
    assertThat(moved.left()).isEmpty();
    files.put("old.yaml", bo);
    Baseline copied = new Baseline(List.of(earlier("old.yaml", bo, before)), present());
    assertThat(copied.compare(now).findings()).containsExactly(Since.NEW);
    assertThat(copied.left()).isEmpty();
  }

  @Test
  void tellsOfAPlanThatIsNoMoreWhenItWasAskedFor() {
    Who bo = new Who("Bo", audit("Bo").raceDate());
    List<Gone> before = Baseline.findings(audit("Bo", SPIKE));
    assertThat(new Baseline(List.of(earlier("old.yaml", bo, before)), present()).left())
        .containsExactly(new Baseline.Left("old.yaml", bo, before));
    assertThat(new Baseline(List.of(earlier("elsewhere.yaml", bo, before)), present()).left())
        .isEmpty();
    files.put("old.yaml", null);
    assertThat(new Baseline(List.of(earlier("old.yaml", bo, before)), present()).left()).isEmpty();
    files.put("old.yaml", new Who("Cy", bo.race()));
    assertThat(new Baseline(List.of(earlier("old.yaml", bo, before)), present()).left()).hasSize(1);
  }

  private static Audit audit(String athlete, Finding... findings) {
    return Sample.audit(athlete, null, List.of(findings));
  }

  /** With an earlier audit at the same path. */
  private Comparison compare(Audit audit, List<Gone> before) {
    Who who = new Who(audit.athlete(), audit.raceDate());
    return new Baseline(List.of(earlier(audit.plan(), who, before)), present()).compare(audit);
  }

  private static Earlier earlier(String plan, Who who, List<Gone> found) {
    return new Earlier() {
      @Override
      public String plan() {
        return plan;
      }

      @Override
      public Who who() {
        return who;
      }

      @Override
      public List<Gone> findings(@Nullable Audit now) {
        return found;
      }
    };
  }

  private Baseline.Present present() {
    return new Baseline.Present() {
      @Override
      public boolean exists(String plan) {
        return files.containsKey(plan);
      }

      @Override
      public @Nullable Who who(String plan) {
        return files.get(plan);
      }

      @Override
      public boolean asked(String plan) {
        return !plan.equals("elsewhere.yaml");
      }
    };
  }
}
