package peakproof.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Auditor;
import peakproof.audit.InForce;
import peakproof.report.RuleSheet;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Shows one rule with every number as it counts and the file each comes from. */
@Command(
    name = "show",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    description = "Shows what a rule asks, and each of its numbers with the file it comes from.",
    footer = {
      "",
      "Examples: as the club has it; as it counts for one athlete",
      "  peakproof rules show swim-open-water-weekly",
      "  peakproof rules show swim-open-water-weekly plans/runa/plan.yaml"
    })
final class RulesShowCommand implements Callable<Integer> {
  private final Messages messages;
  private final Surroundings surroundings;

  @Parameters(index = "0", paramLabel = "RULE", description = "The rule's name.")
  private String rule = "";

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "PLAN",
      description = "A plan for which the rule is to be shown, or the folder it lies in.")
  private @Nullable Path plan;

  @Mixin private HouseOption house = new HouseOption();
  @Mixin private RulesInForce rules = new RulesInForce();
  @Mixin private OutputOptions output = new OutputOptions();
  @Mixin private PageOptions page = new PageOptions();

  RulesShowCommand(Messages messages, Surroundings surroundings) {
    this.messages = messages;
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    int width = page.width(surroundings, output.toFile());
    Path named = house.named();
    Auditor auditor = rules.load(messages, surroundings);
    InForce inForce = rules.of(auditor, plan, named, messages, surroundings);
    if (inForce == null) {
      return ExitCode.WRONG_DOCUMENT.or(RulesInForce.code(auditor)).number();
    }
    String slug = rules.rule(rule, inForce.rules());
    String text = RuleSheet.whole(inForce.of(slug), width, page.ink(surroundings, output.toFile()));
    return RulesInForce.code(auditor).or(output.write(text, messages)).number();
  }
}
