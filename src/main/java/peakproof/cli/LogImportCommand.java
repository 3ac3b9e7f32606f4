package peakproof.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import peakproof.document.Fault;
import peakproof.intake.Decision;
import peakproof.intake.LogBook;
import peakproof.intake.LogMerge;
import peakproof.intake.Received;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Brings tables and recorded tracks into a log. */
@Command(
    name = "import",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    description = {
      "Brings sessions from tables (CSV) and recorded tracks (GPX 1.1) into a log.",
      "What the log has already stays as it is, and is not added again."
    },
    footer = {
      "",
      "Examples: a table in the club's own form; a swim recorded in the lake, shown only",
      "  peakproof log import plans/runa/log.yaml spring.csv --mapping club.yaml",
      "  peakproof log import plans/runa/log.yaml lake.gpx --zone Europe/Oslo --sport swim"
          + " --where open-water --dry-run"
    })
final class LogImportCommand implements Callable<Integer> {
  private final Messages messages;
  private final Surroundings surroundings;

  @Spec private CommandSpec command;

  @Parameters(
      index = "0",
      paramLabel = "LOG",
      description = "The log, or the folder that has it as log.yaml; begun when there is none.")
  private Path log = Path.of("");

  @Parameters(
      index = "1..*",
      arity = "1..*",
      paramLabel = "FILE",
      description = "Tables (.csv) and tracks (.gpx).")
  private List<Path> files = List.of();

  @Mixin private IntakeOptions intake = new IntakeOptions();
  @Mixin private HouseOption house = new HouseOption();

  LogImportCommand(Messages messages, Surroundings surroundings) {
    this.messages = messages;
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    LogFile target = LogFile.open(log, house.named());
    List<Fault> faults = new ArrayList<>(target.faults());
    List<Received> all = intake.all(files, intake::done, faults);
    if (!faults.isEmpty()) {
      messages.tell(faults);
      return ExitCode.WRONG_DOCUMENT.number();
    }
    LogMerge merge = target.merge();
    LogBook book = target.book();
    IntakePage page = new IntakePage();
    for (Received received : all) {
      List<Decision> decisions = merge.decide(received.sessions());
      page.add(
          received,
          decisions.stream()
              .map(decision -> decision.taken() ? book.add(decision) : decision)
              .toList());
    }
    tellFuture(page);
    return target
        .finish(
            book,
            page.taken(),
            intake.dryRun(),
            messages,
            done -> command.commandLine().getOut().print(page.text(done)))
        .number();
  }

  /** A day that has not come is most likely one whose month was taken for its day. */
  private void tellFuture(IntakePage page) {
    LocalDate today = LocalDate.now(surroundings.clock());
    LocalDate last = page.last();
    if (last != null && last.isAfter(today.plusDays(1))) {
      messages.tell(
          "peakproof: "
              + last
              + " is after today, "
              + today
              + "; check the dates, and 'dates:' in the mapping");
    }
  }
}
