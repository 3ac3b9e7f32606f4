package peakproof.cli;

import picocli.CommandLine.Command;

/** The commands that bring into a log what was done. */
@Command(
    name = "log",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = "Brings training records into a log.",
    synopsisSubcommandLabel = "COMMAND",
    footer = {
      "",
      "Example: see what a recorded ride would add",
      "  peakproof log import plans/runa/log.yaml ride.gpx --zone Europe/Oslo --dry-run"
    })
final class LogCommand {}
