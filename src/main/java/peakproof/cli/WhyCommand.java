package peakproof.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Auditor;
import peakproof.audit.Explainer;
import peakproof.audit.Explanation;
import peakproof.audit.InForce;
import peakproof.report.Ink;
import peakproof.report.WhyText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Explains a rule, and with a plan what it makes of it line by line. */
@Command(
    name = "why",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    description = "Tells what a rule asks and on what ground; with a plan, what it makes of it.",
    footer = {
      "",
      "Examples: what a rule asks; why it says what it says of a plan, or says nothing",
      "  peakproof why run-session-spike",
      "  peakproof why run-session-spike plans/runa/plan.yaml"
    })
final class WhyCommand implements Callable<Integer> {
  private final Messages messages;
  private final Surroundings surroundings;

  @Parameters(index = "0", paramLabel = "RULE", description = "The rule's name.")
  private String rule = "";

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "PLAN",
      description = "The plan to explain it on, or the folder it lies in.")
  private @Nullable Path plan;

  @Mixin private DayOptions day = new DayOptions();
  @Mixin private RulesInForce rules = new RulesInForce();
  @Mixin private OutputOptions output = new OutputOptions();
  @Mixin private PageOptions page = new PageOptions();

  WhyCommand(Messages messages, Surroundings surroundings) {
    this.messages = messages;
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    int width = page.width(surroundings, output.toFile());
    Ink ink = page.ink(surroundings, output.toFile());
    Auditor.Options options = day.chosen(surroundings);
    Auditor auditor = rules.load(messages, surroundings);
    InForce inForce = rules.of(auditor, plan, options.house(), messages, surroundings);
    if (inForce == null) {
      return ExitCode.WRONG_DOCUMENT.or(RulesInForce.code(auditor)).number();
    }
    String slug = rules.rule(rule, inForce.rules());
    String text =
        plan == null
            ? WhyText.of(inForce.of(slug), width, ink)
            : judged(auditor, slug, rules.one(plan), options, width, ink);
    ExitCode code = text == null ? ExitCode.WRONG_DOCUMENT : output.write(text, messages);
    return RulesInForce.code(auditor).or(code).number();
  }

  private @Nullable String judged(
      Auditor auditor, String slug, Path one, Auditor.Options options, int width, Ink ink) {
    Explanation.Outcome outcome = new Explainer(auditor, slug).explain(one, options);
    if (outcome instanceof Explanation.Outcome.Wrong wrong) {
      messages.tell(wrong.faults());
      return null;
    }
    return WhyText.of(((Explanation.Outcome.Explained) outcome).explanation(), width, ink);
  }
}
