package peakproof.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import peakproof.audit.Auditor;
import peakproof.document.Nearest;
import peakproof.rule.NewRule;
import peakproof.rule.Ruleset;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Starts a rule of the club's own with three files that work, to be changed. */
@Command(
    name = "new",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    description =
        "Starts a rule of the club's own: three files that work, to be changed into yours.",
    footer = {
      "",
      "Example: a rule on swimming in the folder our-rules",
      "  peakproof rules new lake-swims --theme swim"
    })
final class RulesNewCommand implements Callable<Integer> {
  private final Messages messages;
  private final Surroundings surroundings;

  @Spec private CommandSpec command;

  @Parameters(
      paramLabel = "NAME",
      description = "The rule's name: small letters, digits and hyphens, such as lake-swims.")
  private String name = "";

  @Option(
      names = "--theme",
      paramLabel = "THEME",
      required = true,
      description = "What it is about, such as swim or health; a folder of that name.")
  private String theme = "";

  @Option(
      names = "--dir",
      paramLabel = "DIR",
      description = "The folder of the club's own rules. Default: our-rules.")
  private Path folder = Path.of("our-rules");

  @Mixin private RuleFolders rules = new RuleFolders();

  RulesNewCommand(Messages messages, Surroundings surroundings) {
    this.messages = messages;
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    named("rule", name);
    named("theme", theme);
    Ruleset known = known();
    String taken = NewRule.taken(known, name);
    if (taken != null) {
      throw wrong(taken + "; take another name");
    }
    NewFiles files = new NewFiles(NewRule.files(folder, name, theme));
    if (!files.existing().isEmpty()) {
      throw wrong("there is a file '" + files.existing().get(0) + "' already; take another name");
    }
    ExitCode written = files.write(folder, "--dir", messages);
    if (written != ExitCode.FINE) {
      return written.number();
    }
    adviseOnTheme(known);
    command.commandLine().getOut().print(next());
    return ExitCode.FINE.number();
  }

  private void named(String what, String given) {
    if (!NewRule.isName(given)) {
      throw wrong(
          "'"
              + given
              + "' is no name for a "
              + what
              + "; write up to 60 small letters, digits and hyphens, a letter first, such as "
              + (what.equals("rule") ? "lake-swims" : "swim"));
    }
  }

  /** The shipped rules with those already in the folder, sound or not. */
  private Ruleset known() {
    Path there = Files.isDirectory(folder) ? folder : null;
    return Auditor.load(rules.all(surroundings, there)).rules();
  }

  /** A theme of the club's own is welcome, a mistyped one is not meant. */
  private void adviseOnTheme(Ruleset known) {
    List<String> themes =
        known.cards().values().stream().map(card -> card.theme()).distinct().sorted().toList();
    if (!themes.contains(theme)) {
      String near = Nearest.among(theme, themes);
      messages.tell(
          "'"
              + theme
              + "' is a new theme; "
              + (near == null
                  ? "the others are " + String.join(", ", themes)
                  : "if you meant '" + near + "', rename the folder and the package in the .drl"));
    }
  }

  private String next() {
    String stem = folder.resolve(theme).resolve(name).toString();
    return "Wrote a small rule that works, on too many swims in a week:\n"
        + row(stem + ".yaml", "every word and number: start here")
        + row(stem + ".drl", "what it looks for; docs/facts.md lists what it may name")
        + row(stem + ".cases.yaml", "plans it must find, let pass, or leave open")
        + "Next: change the three into your rule, then\n"
        + row("peakproof rules check " + folder, "says what is wrong, with file and line")
        + row("peakproof rules try " + folder, "runs the cases")
        + row("peakproof audit PLANS --rules " + folder, "judges your plans with it")
        + "To have it count in every audit, write into house.yaml: own-rules: ["
        + folder
        + "]\n";
  }

  private static String row(String left, String right) {
    return String.format(Locale.ROOT, "  %-40s  %s%n", left, right).replace("\r", "");
  }

  private ParameterException wrong(String message) {
    return new ParameterException(command.commandLine(), message);
  }
}
