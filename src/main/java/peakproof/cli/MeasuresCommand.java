package peakproof.cli;

import java.util.concurrent.Callable;
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

  @Option(names = "--all", description = "Days and sessions too; JSON and CSV always have them.")
  private boolean all;

  @Option(
      names = "--format",
      paramLabel = "text|json|csv",
      description = "What to write. Default: text.")
  private Format format = Format.TEXT;

  MeasuresCommand(Messages messages, Surroundings surroundings) {
    this.messages = messages;
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    return plan.write(
        (workup, width) ->
            switch (format) {
              case TEXT -> MeasuresText.of(workup, all, width);
              case JSON -> MeasuresJson.of(workup);
              case CSV -> MeasuresCsv.of(workup);
            },
        messages,
        surroundings);
  }
}
