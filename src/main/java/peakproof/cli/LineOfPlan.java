package peakproof.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Audit;
import peakproof.audit.Auditor.Outcome;
import peakproof.document.Fault;
import peakproof.report.HtmlReport;
import peakproof.report.Judged;
import peakproof.report.Roster;

/**
 * Makes a line of a roster of a plan's audit, and with it the athlete's page where one is wanted.
 *
 * @param since the day to compare with, or null
 * @param asOfSince judges a plan as of that day
 * @param withPage true when the page is to be written too
 */
record LineOfPlan(@Nullable LocalDate since, Function<Path, Outcome> asOfSince, boolean withPage)
    implements AuditRun.Layout<Path, Roster.Entry> {
  @Override
  public Settled<Roster.Entry> of(Path plan, Outcome outcome) {
    Settled<Roster.Entry> none = Settled.unlessJudged(outcome);
    if (none != null) {
      return none;
    }
    Outcome.Judged done = (Outcome.Judged) outcome;
    Judged judged = new Judged(done.audit(), done.complete(), done.background());
    ExitCode code = done.complete() ? ExitCode.FINE : ExitCode.WRONG_RULE;
    List<Fault> faults = new ArrayList<>();
    Audit then = null;
    if (since != null && done.audit().asOf().isAfter(since)) {
      Outcome earlier = asOfSince.apply(plan);
      Settled<Roster.Entry> unknown = Settled.unlessJudged(earlier);
      if (unknown == null) {
        then = ((Outcome.Judged) earlier).audit();
      } else {
        code = code.or(unknown.code());
        faults.addAll(unknown.faults());
      }
    }
    return new Settled<>(
        code,
        Roster.Entry.of(judged, since, then),
        withPage ? List.of(HtmlReport.of(judged)) : List.of(),
        faults,
        null);
  }

  @Override
  public @Nullable String failed(Path plan) {
    return null;
  }
}
