package peakproof.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Auditor;
import peakproof.audit.InForce;
import peakproof.report.Ink;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** The one rule of a command that explains it, and the plan it may be explained on. */
final class OneRule {
  @Parameters(index = "0", paramLabel = "RULE", description = "The rule's name.")
  private String rule = "";

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "PLAN",
      description = "A plan to explain it on, or the folder it lies in.")
  private @Nullable Path plan;

  @Mixin private RulesInForce rules = new RulesInForce();
  @Mixin private OutputOptions output = new OutputOptions();
  @Mixin private PageOptions page = new PageOptions();

  /** What is to be said of it; null when faults were told instead. */
  @FunctionalInterface
  interface Saying {
    @Nullable String of(InForce inForce, String rule, Page page);
  }

  /**
   * What there is to say it with.
   *
   * @param plan null when the user names none
   */
  record Page(Auditor auditor, @Nullable Path plan, int width, Ink ink) {}

  /** Says it, and gives the exit code. */
  int say(@Nullable Path house, Messages messages, Surroundings surroundings, Saying saying) {
    int width = page.width(surroundings, output.toFile());
    return rules
        .tell(
            plan,
            house,
            messages,
            surroundings,
            output,
            (auditor, inForce) ->
                saying.of(
                    inForce,
                    rules.rule(rule, inForce.rules()),
                    new Page(
                        auditor,
                        plan == null ? null : rules.one(plan),
                        width,
                        page.ink(surroundings, output.toFile()))))
        .number();
  }
}
