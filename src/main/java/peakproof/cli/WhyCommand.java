package peakproof.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Auditor;
import peakproof.audit.Explainer;
import peakproof.audit.Explanation;
import peakproof.report.WhyText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

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

  @Mixin private DayOptions day = new DayOptions();
  @Mixin private OneRule rule = new OneRule();

  WhyCommand(Messages messages, Surroundings surroundings) {
    this.messages = messages;
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    Auditor.Options options = day.chosen(surroundings);
    return rule.say(
        options.house(),
        messages,
        surroundings,
        (inForce, slug, page) ->
            page.plan() == null
                ? WhyText.of(inForce.of(slug), page.width(), page.ink())
                : judged(slug, page, page.plan(), options));
  }

  private @Nullable String judged(
      String slug, OneRule.Page page, Path plan, Auditor.Options options) {
    Explanation.Outcome outcome = new Explainer(page.auditor(), slug).explain(plan, options);
    if (outcome instanceof Explanation.Outcome.Wrong wrong) {
      messages.tell(wrong.faults());
      return null;
    }
    return WhyText.of(
        ((Explanation.Outcome.Explained) outcome).explanation(), page.width(), page.ink());
  }
}
