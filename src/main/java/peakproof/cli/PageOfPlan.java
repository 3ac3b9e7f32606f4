package peakproof.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Audit;
import peakproof.audit.Auditor.Outcome;
import peakproof.audit.Comparison;
import peakproof.report.Judged;
import peakproof.report.Rank;
import peakproof.rule.Severity;

/**
 * Lays out the audit of a plan that lies in a file.
 *
 * @param pages lays an audit out, once for each report
 * @param past what the audit is compared with, if anything
 * @param remark what to tell besides of an audit; null for nothing
 */
record PageOfPlan(
    Function<Judged, List<String>> pages,
    Severity failAt,
    Past past,
    Function<Audit, @Nullable String> remark)
    implements AuditRun.Layout<Path, Rank> {
  @Override
  public Settled<Rank> of(Path plan, Outcome outcome) {
    Settled<Rank> none = Settled.unlessJudged(outcome);
    if (none != null) {
      return none;
    }
    Outcome.Judged done = (Outcome.Judged) outcome;
    Comparison comparison = past.of(done.audit());
    return new Settled<>(
        code(done, past.fails(done.audit(), comparison, failAt)),
        Rank.of(done.audit()),
        pages.apply(new Judged(done.audit(), done.complete(), comparison, done.background())),
        List.of(),
        remark.apply(done.audit()));
  }

  /** A broken rule weighs more than what the others found. */
  static ExitCode code(Outcome.Judged done, boolean fails) {
    ExitCode found = fails ? ExitCode.FOUND : ExitCode.FINE;
    return done.complete() ? found : ExitCode.WRONG_RULE;
  }

  @Override
  public @Nullable String failed(Path plan) {
    return null;
  }
}
