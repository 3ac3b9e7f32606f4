package peakproof.cli;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import peakproof.audit.Auditor;
import peakproof.cli.Checkup.Found;
import peakproof.cli.Checkup.State;
import peakproof.document.Fault;
import peakproof.report.Printable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Says what this program finds around it, what is wrong with that and what to do. */
@Command(
    name = "doctor",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    description = {
      "Looks at Java, rules, cache, archive, text, git and house: for each, whether it is fine or",
      "what to do. Exits with 4 when a rule is wrong or none is found, else with 0."
    },
    footer = {"", "Example: what to send with a question", "  peakproof doctor"})
final class DoctorCommand implements Callable<Integer> {
  private final Messages messages;
  private final Surroundings surroundings;

  @Spec private CommandSpec command;

  @Mixin private RuleFolders rules = new RuleFolders();
  @Mixin private PageOptions page = new PageOptions();

  DoctorCommand(Messages messages, Surroundings surroundings) {
    this.messages = messages;
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    Checkup checkup = new Checkup(surroundings);
    Found judging = rules();
    PrintWriter out = command.commandLine().getOut();
    out.print(Version.PROGRAM + "\n");
    tell(
        List.of(
            checkup.java(),
            judging,
            checkup.cache(),
            checkup.archive(),
            checkup.text(page.width(surroundings, false)),
            checkup.git(),
            checkup.house()),
        out);
    return (judging.state() == State.WRONG ? ExitCode.WRONG_RULE : ExitCode.FINE).number();
  }

  private Found rules() {
    Path shipped = surroundings.home().resolve("rules");
    if (!Files.isDirectory(shipped)) {
      return new Found(
          "rules",
          State.WRONG,
          "none at " + shipped,
          "start the program by the launcher 'peakproof' that lies beside them");
    }
    Auditor auditor = rules.auditor(surroundings);
    List<Fault> faults = auditor.ruleFaults();
    messages.tell(faults);
    int sound = auditor.rules().cards().size();
    return faults.isEmpty()
        ? Found.fine("rules", sound + " in " + shipped + ", all sound")
        : new Found(
            "rules",
            State.WRONG,
            sound + " in " + shipped + ", and faults in others",
            "mend what 'peakproof rules check' lists; the sound ones judge all the same");
  }

  private static void tell(List<Found> all, PrintWriter out) {
    for (Found found : all) {
      String state = found.state().name().toLowerCase(Locale.ROOT);
      out.printf(Locale.ROOT, "%-6s %-8s %s\n", state, found.thing(), Printable.of(found.what()));
      if (found.advice() != null) {
        out.printf(Locale.ROOT, "%-15s %s\n", "", found.advice());
      }
    }
  }
}
