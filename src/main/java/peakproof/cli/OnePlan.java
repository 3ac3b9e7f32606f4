package peakproof.cli;

import java.nio.file.Path;
import peakproof.audit.Audit;
import peakproof.audit.Auditor;
import peakproof.audit.Workup;
import peakproof.rule.Ruleset;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** The one plan of a command, and where what is said of it goes. */
final class OnePlan {
  @Parameters(paramLabel = "PLAN", description = "A plan, or the folder it lies in.")
  private Path path = Path.of("");

  @Mixin private DayOptions day = new DayOptions();
  @Mixin private RulesInForce rules = new RulesInForce();
  @Mixin private OutputOptions output = new OutputOptions();
  @Mixin private PageOptions page = new PageOptions();

  /** Lays out what was worked out, in lines of a width. */
  @FunctionalInterface
  interface Layout {
    String of(Workup workup, int width);
  }

  /** Writes the plan worked out, or tells what is wrong with a document of it. */
  int write(Layout layout, Messages messages, Surroundings surroundings) {
    int width = page.width(surroundings, output.toFile());
    Auditor.Options options = day.chosen(surroundings);
    Auditor auditor = rules.loadQuietly(surroundings);
    Workup.Outcome outcome = auditor.workUp(rules.one(path), options);
    if (outcome instanceof Workup.Outcome.Wrong wrong) {
      messages.tell(wrong.faults());
      return ExitCode.WRONG_DOCUMENT.number();
    }
    Workup workup = ((Workup.Outcome.Done) outcome).workup();
    return output.write(layout.of(workup, width), messages).number();
  }

  /** Lays out what was judged, in lines of a width. */
  @FunctionalInterface
  interface JudgedLayout {
    String of(Audit audit, Ruleset rules, int width);
  }

  /** Writes the plan judged, or tells what is wrong with a document or a rule of it. */
  int judge(JudgedLayout layout, Messages messages, Surroundings surroundings) {
    int width = page.width(surroundings, output.toFile());
    Auditor.Options options = day.chosen(surroundings);
    Auditor auditor = rules.loadQuietly(surroundings);
    Auditor.Outcome outcome = auditor.audit(rules.one(path), options);
    Settled<Audit> none = Settled.unlessJudged(outcome);
    if (none != null) {
      messages.tell(none.faults());
      return none.code().number();
    }
    Auditor.Outcome.Judged judged = (Auditor.Outcome.Judged) outcome;
    ExitCode code = judged.complete() ? ExitCode.FINE : ExitCode.WRONG_RULE;
    String text = layout.of(judged.audit(), auditor.rules(), width);
    return code.or(output.write(text, messages)).number();
  }
}
