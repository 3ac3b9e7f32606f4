package peakproof.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import peakproof.audit.Auditor.Outcome;
import peakproof.document.Documents;
import peakproof.report.Report;
import peakproof.report.Report.Judged;

/** Audits plan after plan. One that fails stops no other; the worst code is remembered. */
final class AuditRun {
  /** A run that takes longer shows how far it is. */
  private static final Duration PATIENCE = Duration.ofSeconds(1);

  private final Function<Path, Outcome> auditing;
  private final Messages messages;
  private final Clock clock;
  private final Instant began;
  private final List<Judged> judged = new ArrayList<>();
  private int plans;
  private ExitCode worst = ExitCode.FINE;

  /**
   * Begins a run.
   *
   * @param auditing judges the plan at a path
   */
  AuditRun(Function<Path, Outcome> auditing, Messages messages, Clock clock) {
    this.auditing = auditing;
    this.messages = messages;
    this.clock = clock;
    this.began = clock.instant();
  }

  /** Audits the plans at some paths and in some folders, each once however many ways lead to it. */
  void auditAll(List<Path> paths) {
    Map<Path, Path> found = new LinkedHashMap<>();
    for (Path path : paths) {
      plansAt(path).forEach(plan -> found.putIfAbsent(plan.toAbsolutePath().normalize(), plan));
    }
    Collection<Path> all = found.values();
    for (Path plan : all) {
      if (Duration.between(began, clock.instant()).compareTo(PATIENCE) > 0) {
        messages.show("auditing " + (plans + 1) + " of " + all.size() + " ...");
      }
      audit(plan);
    }
  }

  /** A path without any plan may be a typing mistake, so it must not pass for a sound one. */
  private List<Path> plansAt(Path path) {
    boolean exists = Files.exists(path);
    List<Path> found = exists ? Documents.plansUnder(path) : List.of();
    if (found.isEmpty()) {
      messages.tell(
          path
              + (exists
                  ? ": no plan found; a plan is a YAML file that begins with 'plan:'"
                  : ": no such file or folder"));
      note(ExitCode.WRONG_DOCUMENT);
    }
    return found;
  }

  private void audit(Path plan) {
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
    } else if (outcome instanceof Outcome.Stopped stopped) {
      messages.tell(List.of(stopped.rule()));
      note(ExitCode.WRONG_RULE);
    } else if (outcome instanceof Outcome.Judged done) {
      judged.add(new Judged(done.audit(), done.complete()));
      note(done.complete() ? ExitCode.FINE : ExitCode.WRONG_RULE);
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
