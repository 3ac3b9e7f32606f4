package peakproof.cli;

import java.nio.file.Path;
import peakproof.audit.Auditor;
import peakproof.audit.Workup;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** The one plan of a command that works a plan out without judging it, and where that goes. */
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
}
