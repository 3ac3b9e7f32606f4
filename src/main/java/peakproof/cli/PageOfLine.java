package peakproof.cli;

import java.util.List;
import peakproof.audit.Auditor.Outcome;
import peakproof.document.Fault;
import peakproof.document.Place;
import peakproof.report.Judged;
import peakproof.report.LinesReport;
import peakproof.report.Rank;
import peakproof.rule.Severity;

/** Lays out the audit of a plan that came in a line of a stream; each line in gives one out. */
record PageOfLine(LinesReport report, Severity failAt) implements AuditRun.Layout<InputLine, Rank> {
  @Override
  public Settled<Rank> of(InputLine line, Outcome outcome) {
    if (outcome instanceof Outcome.Wrong wrong) {
      return page(ExitCode.WRONG_DOCUMENT, report.page(wrong.faults(), line.number()));
    }
    if (outcome instanceof Outcome.Stopped stopped) {
      String page = report.page(List.of(stopped.rule()), line.number());
      return new Settled<>(ExitCode.WRONG_RULE, null, List.of(page), List.of(stopped.rule()), null);
    }
    Outcome.Judged done = (Outcome.Judged) outcome;
    return page(
        PageOfPlan.code(done, Rank.of(done.audit()).reaches(failAt)),
        report.page(new Judged(done.audit(), done.complete()), line.number()));
  }

  private static Settled<Rank> page(ExitCode code, String page) {
    return new Settled<>(code, null, List.of(page), List.of(), null);
  }

  @Override
  public String failed(InputLine line) {
    Fault fault =
        new Fault(
            new Place(InputLine.NAME, 1, 1),
            "the program failed over this line",
            "expected an audit",
            "see standard error for what to report");
    return report.page(List.of(fault), line.number());
  }
}
