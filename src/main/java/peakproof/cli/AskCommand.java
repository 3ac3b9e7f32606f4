package peakproof.cli;

import java.util.concurrent.Callable;
import peakproof.report.AskPage;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Turns what is missing for the judgement of a plan into a message to the athlete. */
@Command(
    name = "ask",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    description = "Writes a short message to the athlete that asks for what is missing.",
    footer = {
      "",
      "Examples: the five answers worth most; every question, as Markdown",
      "  peakproof ask plans/runa/plan.yaml",
      "  peakproof ask plans/runa/plan.yaml --all --format markdown --output questions.md"
    })
final class AskCommand implements Callable<Integer> {
  private static final int USUAL_TOP = 5;

  /** What the message is written in. */
  enum Format {
    TEXT,
    MARKDOWN
  }

  private final Messages messages;
  private final Surroundings surroundings;

  @Spec private CommandSpec command;

  @Mixin private OnePlan plan = new OnePlan();

  @ArgGroup private Amount amount = new Amount();

  /** How many questions; the two options exclude each other. */
  static final class Amount {
    @Option(names = "--all", description = "Every question.")
    private boolean all;

    @Option(
        names = "--top",
        paramLabel = "N",
        description = "How many questions at most. Default: 5.")
    private int top = USUAL_TOP;
  }

  @Option(
      names = "--format",
      paramLabel = "text|markdown",
      description = "What to write. Default: text.")
  private Format format = Format.TEXT;

  AskCommand(Messages messages, Surroundings surroundings) {
    this.messages = messages;
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    if (amount.top < 1) {
      throw new ParameterException(
          command.commandLine(), "Invalid value for option '--top': expected 1 or more");
    }
    int top = amount.all ? Integer.MAX_VALUE : amount.top;
    return plan.judge(
        (audit, rules, width) ->
            switch (format) {
              case TEXT -> AskPage.text(audit, rules, top, width);
              case MARKDOWN -> AskPage.markdown(audit, rules, top);
            },
        messages,
        surroundings);
  }
}
