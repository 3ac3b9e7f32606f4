package peakproof.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import peakproof.document.Fault;
import peakproof.document.Place;
import peakproof.document.Quantity;
import peakproof.document.Splice;
import peakproof.document.YamlTree;
import peakproof.intake.Decision;
import peakproof.intake.Incoming;
import peakproof.intake.LogBook;
import peakproof.intake.LogMerge;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Adds one session to a log. */
@Command(
    name = "add",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    description = "Adds one session to a log, in the log's own words.",
    footer = {
      "",
      "Examples: a run; a swim in sets",
      "  peakproof log add plans/runa/log.yaml --date 2027-05-30 --run 49min --distance 8.9km"
          + " --rpe 5",
      "  peakproof log add plans/runa/log.yaml --date 2027-05-31 --swim \"400 easy, 8x100 hard r20s\""
          + " --time 34min --where pool"
    })
final class LogAddCommand implements Callable<Integer> {
  private final Messages messages;

  @Spec private CommandSpec command;

  @Parameters(
      paramLabel = "LOG",
      description = "The log, or the folder that has it as log.yaml; begun when there is none.")
  private Path log = Path.of("");

  @Option(
      names = "--date",
      required = true,
      paramLabel = "DATE",
      description = "The day, 2027-05-30.")
  private String date = "";

  @Mixin private SessionOptions session = new SessionOptions();

  @Option(names = "--another", description = "Add it though the log has one like it.")
  private boolean another;

  @Option(names = "--dry-run", description = "Say what would be added, and write nothing.")
  private boolean dryRun;

  @Mixin private HouseOption house = new HouseOption();

  LogAddCommand(Messages messages) {
    this.messages = messages;
  }

  @Override
  public Integer call() {
    Quantity<LocalDate> day = Quantity.date(date);
    if (day instanceof Quantity.NotThat<LocalDate> not) {
      throw wrong("Invalid value for option '--date': " + said(not.at(new Place("", 1, 1))));
    }
    LogFile target = LogFile.open(log, house.named());
    if (!target.faults().isEmpty()) {
      messages.tell(target.faults());
      return ExitCode.WRONG_DOCUMENT.number();
    }
    Incoming incoming =
        new Incoming(
            new Place("", 1, 1),
            ((Quantity.Of<LocalDate>) day).value(),
            session.sport(),
            session.keys());
    refuse(incoming, target);
    LogMerge merge = target.merge();
    Decision decision = merge.decide(List.of(incoming)).get(0);
    boolean rest = merge.saysRest(incoming.date());
    LogBook book = target.book();
    String words = IntakePage.day(incoming.date()) + "  " + IntakePage.words(incoming);
    if (!decision.taken() && (rest || !another)) {
      print(
          words
              + "  skipped: "
              + decision.why()
              + (rest ? "; take that out first" : "; --another adds it all the same"));
      return ExitCode.FINE.number();
    }
    String left = book.add(decision).left();
    if (!left.isEmpty()) {
      throw wrong(
          date
              + " is on one line in this log, which has no room for "
              + left
              + "; write the day with keys of its own first, or leave "
              + (left.contains(",") ? "them" : "it")
              + " out");
    }
    return target
        .finish(book, 1, dryRun, messages, done -> print(words + "  added. " + done))
        .number();
  }

  /** Tells what is wrong with the session as if it stood in a log by itself. */
  private void refuse(Incoming session, LogFile target) {
    LogBook alone = LogBook.begun();
    alone.add(Decision.of(session));
    byte[] text = Splice.begun(alone.content()).getBytes(StandardCharsets.UTF_8);
    YamlTree.Parsed parsed = YamlTree.read("", text);
    List<Fault> faults = parsed.tree() == null ? parsed.faults() : target.wrong(parsed.tree());
    if (!faults.isEmpty()) {
      throw wrong(said(faults.get(0)));
    }
  }

  private static String said(Fault fault) {
    return fault.what() + "; " + fault.expected() + "; " + fault.instead();
  }

  private void print(String line) {
    command.commandLine().getOut().print(line + "\n");
  }

  private ParameterException wrong(String message) {
    return new ParameterException(command.commandLine(), message);
  }
}
