package peakproof.cli;

import java.util.List;
import java.util.concurrent.Callable;
import peakproof.report.RuleSheet;
import peakproof.report.RulesJson;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

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

  @Option(
      names = "--format",
      paramLabel = "text|json",
      description = "What to write. Default: text.")
  private ListFormat format = ListFormat.TEXT;

  @Mixin private HouseOption house = new HouseOption();
  @Mixin private OneRule rule = new OneRule();

  RulesShowCommand(Messages messages, Surroundings surroundings) {
    this.messages = messages;
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    return rule.say(
        house.named(),
        messages,
        surroundings,
        (inForce, slug, page) ->
            switch (format) {
              case TEXT -> RuleSheet.whole(inForce.of(slug), page.width(), page.ink());
              case JSON -> RulesJson.of(List.of(inForce.of(slug)), Version.PROGRAM);
            });
  }
}
