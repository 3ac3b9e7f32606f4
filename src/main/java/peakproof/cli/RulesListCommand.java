package peakproof.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import peakproof.document.Nearest;
import peakproof.report.RulesJson;
import peakproof.report.RulesText;
import peakproof.rule.RuleInForce;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lists the rules by theme, and marks those that a house or plan changes. */
@Command(
    name = "list",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    description = "Lists the rules by theme; marks those that are off, silenced or changed.",
    footer = {
      "",
      "Examples: all of them; those on swimming, as they count for one athlete",
      "  peakproof rules list",
      "  peakproof rules list plans/runa/plan.yaml --theme swim"
    })
final class RulesListCommand implements Callable<Integer> {
  private final Messages messages;
  private final Surroundings surroundings;

  @Spec private CommandSpec command;

  @Parameters(
      arity = "0..1",
      paramLabel = "PLAN",
      description = "A plan whose house and settings are to count, or the folder it lies in.")
  private @Nullable Path plan;

  @Option(
      names = "--theme",
      paramLabel = "THEME",
      description = "Only the rules of this theme, such as swim or health; repeatable.")
  private List<String> themes = List.of();

  @Option(
      names = "--format",
      paramLabel = "text|json",
      description = "What to write. Default: text. JSON has every setting too.")
  private ListFormat format = ListFormat.TEXT;

  @Mixin private HouseOption house = new HouseOption();
  @Mixin private RulesInForce rules = new RulesInForce();
  @Mixin private OutputOptions output = new OutputOptions();
  @Mixin private PageOptions page = new PageOptions();

  RulesListCommand(Messages messages, Surroundings surroundings) {
    this.messages = messages;
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    int width = page.width(surroundings, output.toFile());
    return rules
        .tell(
            plan,
            house.named(),
            messages,
            surroundings,
            output,
            (auditor, inForce) -> {
              List<RuleInForce> listed = ofThemes(inForce.all());
              return switch (format) {
                case TEXT -> RulesText.of(listed, width, page.ink(surroundings, output.toFile()));
                case JSON -> RulesJson.of(listed, Version.PROGRAM);
              };
            })
        .number();
  }

  private List<RuleInForce> ofThemes(List<RuleInForce> all) {
    List<String> known = all.stream().map(rule -> rule.card().theme()).distinct().toList();
    for (String theme : themes) {
      if (!known.contains(theme)) {
        String otherwise = "the themes are " + String.join(", ", known);
        throw new ParameterException(
            command.commandLine(),
            "there is no theme '" + theme + "'; " + Nearest.advice(theme, known, otherwise));
      }
    }
    return themes.isEmpty()
        ? all
        : all.stream().filter(rule -> themes.contains(rule.card().theme())).toList();
  }
}
