package peakproof.cli;

import java.util.concurrent.Callable;
import peakproof.audit.Workup;
import peakproof.report.MeasuresCsv;
import peakproof.report.MeasuresJson;
import peakproof.report.MeasuresText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Shows every number that is computed of a plan, and which entries it comes from. */
@Command(
    name = "measures",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    description = "Shows every computed number by day, week and sport.",
    footer = {
      "",
      "Examples: the weeks of a plan; everything, for a spreadsheet",
      "  peakproof measures plans/runa/plan.yaml",
      "  peakproof measures plans/runa/plan.yaml --format csv --output runa.csv"
    })
final class MeasuresCommand implements Callable<Integer> {
  /** What the numbers are written in. */
  enum Format {
    TEXT,
    JSON,
    CSV
  }

  private final Messages messages;
  private final Surroundings surroundings;

  @Mixin private OnePlan plan = new OnePlan();
  @Mixin private DayOptions day = new DayOptions();

  @Option(names = "--all", description = "Days and sessions too; JSON and CSV always have them.")
  private boolean all;

  @Option(
      names = "--format",
      paramLabel = "text|json|csv",
      description = "What to write. Default: text.")
  private Format format = Format.TEXT;

  @Mixin private OutputOptions output = new OutputOptions();
  @Mixin private PageOptions page = new PageOptions();

  MeasuresCommand(Messages messages, Surroundings surroundings) {
    this.messages = messages;
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    int width = page.width(surroundings, output.toFile());
    Workup workup = plan.workUp(day, messages, surroundings);
    if (workup == null) {
      return ExitCode.WRONG_DOCUMENT.number();
    }
    String text =
        switch (format) {
          case TEXT -> MeasuresText.of(workup, all, width);
          case JSON -> MeasuresJson.of(workup);
          case CSV -> MeasuresCsv.of(workup);
        };
    return output.write(text, messages).number();
  }
}
