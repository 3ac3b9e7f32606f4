package peakproof.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import peakproof.begin.NewPlan;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Starts a plan. */
@Command(
    name = "plan",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    description = {
      "Starts a plan: weeks with sessions, from what the athlete did lately to the race, by",
      "the club's numbers. It is a skeleton, which a coach adapts; docs/new.md explains it."
    },
    footer = {
      "",
      "Examples: by questions; by options",
      "  peakproof new plan plans/tove/plan.yaml",
      "  peakproof new plan plans/tove/plan.yaml --name \"Tove Lindqvist\" --profile experienced \\",
      "    --event plans/events/saltmarsh.yaml --goal 1:10:00/6:00:00/3:50:00 \\",
      "    --weekly-hours 11h --longest-ride 4h --longest-run 1h40"
    })
final class NewPlanCommand implements Callable<Integer> {
  private final Begun begun;
  private final Surroundings surroundings;

  @Spec private CommandSpec command;

  @Parameters(
      paramLabel = "FILE",
      arity = "0..1",
      description = "The file to write. Default: plan.yaml.")
  private Path file = Path.of("plan.yaml");

  @Mixin private HouseOption house = new HouseOption();
  @Mixin private RuleFolders rules = new RuleFolders();

  NewPlanCommand(Begun begun, Surroundings surroundings) {
    this.begun = begun;
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    return begun
        .begin(command, new NewPlan(file, house.named(), () -> rules.auditor(surroundings)), file)
        .number();
  }
}
