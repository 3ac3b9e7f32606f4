package peakproof.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import peakproof.audit.Auditor.Outcome;
import peakproof.report.Report;
import peakproof.report.Report.Judged;

/** Audits plan after plan. One that fails stops no other; the worst code is remembered. */
final class AuditRun {
  private final Function<Path, Outcome> auditing;
  private final Messages messages;
  private final boolean rulesComplete;
  private final List<Judged> judged = new ArrayList<>();
  private int plans;
  private ExitCode worst;

  /**
   * @param auditing judges the plan at a path
   * @param rulesComplete false when a rule of the run is broken and judges nobody
   */
  AuditRun(Function<Path, Outcome> auditing, boolean rulesComplete, Messages messages) {
    this.auditing = auditing;
    this.messages = messages;
    this.rulesComplete = rulesComplete;
    this.worst = rulesComplete ? ExitCode.FINE : ExitCode.WRONG_RULE;
  }

  void audit(Path plan) {
    plans++;
    try {
      take(auditing.apply(plan));
    } catch (RuntimeException | StackOverflowError mistake) {
      messages.tellOurMistake(mistake, plan.toString());
      note(ExitCode.INTERNAL_ERROR);
    }
  }

  private void take(Outcome outcome) {
    if (outcome instanceof Outcome.Wrong wrong) {
      messages.tell(wrong.faults());
      note(ExitCode.WRONG_DOCUMENT);
    } else if (outcome instanceof Outcome.Judged done) {
      judged.add(new Judged(done.audit(), rulesComplete));
    }
  }

  /** Remembers a code, unless a worse one is known. */
  void note(ExitCode code) {
    worst = worst.or(code);
  }

  ExitCode worst() {
    return worst;
  }

  List<Judged> judged() {
    return judged;
  }

  Report report(Report.Choice choice) {
    return Report.of(judged, plans, choice);
  }
}
