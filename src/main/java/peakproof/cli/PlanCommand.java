package peakproof.cli;

import picocli.CommandLine.Command;

/** The commands that write into a plan. */
@Command(
    name = "plan",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = "Brings sessions into a plan.",
    synopsisSubcommandLabel = "COMMAND",
    footer = {
      "",
      "Example: see what a table would add",
      "  peakproof plan import plans/runa/plan.yaml weeks.csv --dry-run"
    })
final class PlanCommand {}
