package peakproof.cli;

import java.util.concurrent.Callable;
import peakproof.report.ForecastJson;
import peakproof.report.ForecastText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Answers whether the training supports the goal, leg by leg and as ranges. */
@Command(
    name = "forecast",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    description = "Forecasts race day from tests and log, against the goal and the cut-offs.",
    footer = {"", "Example: one athlete's race day", "  peakproof forecast plans/runa/plan.yaml"})
final class ForecastCommand implements Callable<Integer> {
  /** What a forecast is written in. */
  enum Format {
    TEXT,
    JSON
  }

  private final Messages messages;
  private final Surroundings surroundings;

  @Mixin private OnePlan plan = new OnePlan();

  @Option(
      names = "--format",
      paramLabel = "text|json",
      description = "What to write. Default: text.")
  private Format format = Format.TEXT;

  ForecastCommand(Messages messages, Surroundings surroundings) {
    this.messages = messages;
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    return plan.write(
        (workup, width) ->
            switch (format) {
              case TEXT -> ForecastText.of(workup, width);
              case JSON -> ForecastJson.of(workup, Version.PROGRAM);
            },
        messages,
        surroundings);
  }
}
