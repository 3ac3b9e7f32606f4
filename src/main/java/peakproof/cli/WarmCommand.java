package peakproof.cli;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Auditor;
import peakproof.document.Documents;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Does beforehand what would make the next audits slow. */
@Command(
    name = "warm",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    description = {
      "Makes the next audits start faster: an archive of the program's classes, and the club's own"
          + " rules compiled. What fails here costs speed only."
    },
    footer = {
      "",
      "Examples: after an update of Java; with the rules of a club",
      "  peakproof warm",
      "  peakproof warm plans"
    })
final class WarmCommand implements Callable<Integer> {
  private final Messages messages;
  private final Surroundings surroundings;

  @Spec private CommandSpec command;

  @Parameters(
      paramLabel = "PATH",
      arity = "0..*",
      description = "Plans, or folders of them, whose house has rules of its own.")
  private List<Path> paths = List.of();

  @Mixin private RuleFolders rules = new RuleFolders();

  WarmCommand(Messages messages, Surroundings surroundings) {
    this.messages = messages;
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    PrintWriter out = command.commandLine().getOut();
    out.print(archive() + "\n");
    out.flush();
    Auditor auditor = rules.auditor(surroundings);
    List<Path> plans =
        paths.stream()
            .filter(Files::exists)
            .flatMap(path -> Documents.plansUnder(path).stream())
            .toList();
    plans.forEach(plan -> auditor.audit(plan, new Auditor.Options(null, null)));
    messages.tell(auditor.rules().faults());
    messages.tell(auditor.houseRuleFaults());
    boolean sound = auditor.rules().faults().isEmpty() && auditor.houseRuleFaults().isEmpty();
    out.print(sound ? "Rules: ready\n" : "Rules: those without a fault are ready\n");
    return (sound ? ExitCode.FINE : ExitCode.WRONG_RULE).number();
  }

  private String archive() {
    Path program = surroundings.program();
    Path archive = path(surroundings.variable("PEAKPROOF_ARCHIVE"));
    if (program == null || archive == null) {
      return "Archive: none; it is made when the launcher 'peakproof' starts this";
    }
    String trouble = new StartArchive(surroundings.home(), program, archive).make();
    return trouble == null
        ? "Archive: " + archive
        : "Archive: none could be made (" + trouble + "); starts are slower, nothing else changes";
  }

  private static @Nullable Path path(@Nullable String name) {
    try {
      return name == null ? null : Path.of(name);
    } catch (InvalidPathException e) {
      return null;
    }
  }
}
