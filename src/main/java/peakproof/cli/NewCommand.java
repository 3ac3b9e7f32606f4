package peakproof.cli;

import picocli.CommandLine.Command;

/** Starts the files a club keeps. */
@Command(
    name = "new",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = "Starts a plan, an event or a house file, by questions or by options.",
    synopsisSubcommandLabel = "COMMAND",
    footer = {
      "",
      "Example: first the race, then a plan for it",
      "  peakproof new event plans/events/saltmarsh.yaml",
      "  peakproof new plan plans/tove/plan.yaml"
    })
final class NewCommand {}
