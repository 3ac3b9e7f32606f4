package peakproof.cli;

import picocli.CommandLine.Command;

/** The program's name, under which the commands stand. */
@Command(
    name = "peakproof",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = "Audits a triathlete's plan and log before a race by rules the club owns.",
    synopsisSubcommandLabel = "COMMAND",
    footer = {
      "",
      "Example: audit every plan of a folder",
      "  peakproof audit plans",
      "",
      "Not medical advice; race rules, local law and licensed practitioners come first."
    })
final class PeakproofCommand {}
