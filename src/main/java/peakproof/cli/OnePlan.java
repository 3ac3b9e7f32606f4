package peakproof.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Auditor;
import peakproof.audit.Workup;
import peakproof.document.Documents;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The one plan of a command that works a plan out without judging it. */
final class OnePlan {
  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  @Parameters(paramLabel = "PLAN", description = "A plan, or the folder it lies in.")
  private Path path = Path.of("");

  @Mixin private RuleFolders rules = new RuleFolders();

  /** The plan worked out; null, with its faults told, when a document of it is wrong. */
  @Nullable Workup workUp(DayOptions day, Messages messages, Surroundings surroundings) {
    Auditor.Options options = day.chosen(surroundings);
    Auditor auditor = Auditor.load(rules.all(surroundings), rules.known(surroundings));
    Workup.Outcome outcome = auditor.workUp(plan(), options);
    if (outcome instanceof Workup.Outcome.Wrong wrong) {
      messages.tell(wrong.faults());
      return null;
    }
    return ((Workup.Outcome.Done) outcome).workup();
  }

  private Path plan() {
    List<Path> plans = Files.exists(path) ? Documents.plansUnder(path) : List.of();
    if (plans.size() != 1) {
      throw new ParameterException(
          command.commandLine(),
          plans.isEmpty()
              ? "no plan at '" + path + "'; a plan is a YAML file that begins with 'plan:'"
              : plans.size() + " plans at '" + path + "'; name one of them");
    }
    return plans.get(0);
  }
}
