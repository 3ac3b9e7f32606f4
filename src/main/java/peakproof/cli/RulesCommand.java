package peakproof.cli;

import picocli.CommandLine.Command;

/** The commands for those who keep a club's rules. */
@Command(
    name = "rules",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = "Works on the club's rules.",
    synopsisSubcommandLabel = "COMMAND",
    footer = {
      "",
      "Example: check the shipped rules and the club's own",
      "  peakproof rules check --rules our-rules"
    })
final class RulesCommand {}
