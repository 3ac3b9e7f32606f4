package peakproof.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import peakproof.document.Fault;
import peakproof.document.Place;
import peakproof.document.Quantity;
import peakproof.document.Splice;
import peakproof.document.Sport;
import peakproof.document.YamlTree;
import peakproof.document.YamlValue;
import peakproof.intake.Decision;
import peakproof.intake.Incoming;
import peakproof.intake.LogBook;
import peakproof.intake.LogMerge;
import picocli.CommandLine.ArgGroup;
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

  @Option(names = "--date", required = true, paramLabel = "DATE", description = "The day, 2027-05-30.")
  private String date = "";

  @ArgGroup(exclusive = true, multiplicity = "1")
  private Work work = new Work();

  /** What was done: a duration, a distance or a set line. */
  static final class Work {
    @Option(names = "--swim", paramLabel = "AMOUNT", description = "A duration, distance or set line: 49min, 2.4km.")
    private @Nullable String swim;

    @Option(names = "--bike", paramLabel = "AMOUNT", description = "The same of a ride.")
    private @Nullable String bike;

    @Option(names = "--run", paramLabel = "AMOUNT", description = "The same of a run.")
    private @Nullable String run;

    @Option(names = "--strength", paramLabel = "DURATION", description = "Strength work: 30min.")
    private @Nullable String strength;

    @Option(names = "--other", paramLabel = "DURATION", description = "Anything else: \"40min walk\".")
    private @Nullable String other;

    private Sport sport() {
      return swim != null
          ? Sport.SWIM
          : bike != null
              ? Sport.BIKE
              : run != null ? Sport.RUN : strength != null ? Sport.STRENGTH : Sport.OTHER;
    }

    private String amount() {
      return Stream.of(swim, bike, run, strength, other)
          .filter(amount -> amount != null)
          .findFirst()
          .orElse("");
    }
  }

  @Option(names = "--time", paramLabel = "DURATION", description = "How long a set line took: 34min.")
  private @Nullable String time;

  @Option(names = "--distance", paramLabel = "DISTANCE", description = "How far: 8.9km.")
  private @Nullable String distance;

  @Option(names = "--rpe", paramLabel = "RATING", description = "How hard, 0 to 10.")
  private @Nullable String rpe;

  @Option(names = "--heart-rate", paramLabel = "RATE", description = "The mean: 142bpm.")
  private @Nullable String heartRate;

  @Option(names = "--power", paramLabel = "POWER", description = "The mean: 148W.")
  private @Nullable String power;

  @Option(names = "--held", paramLabel = "PACE", description = "What a set was held at: 1:51/100m.")
  private @Nullable String held;

  @Option(names = "--at", paramLabel = "TIME", description = "When it began: 06:30, am, noon or pm.")
  private @Nullable String at;

  @Option(names = "--where", paramLabel = "PLACE", description = "pool, open-water, road, trainer ...")
  private @Nullable String where;

  @Option(names = "--company", paramLabel = "WORD", description = "alone, group or supervised.")
  private @Nullable String company;

  @Option(names = "--climb", paramLabel = "LENGTH", description = "Metres up: 340m.")
  private @Nullable String climb;

  @Option(names = "--kit", paramLabel = "WORD", split = ",", description = "wetsuit,race-bike ...")
  private List<String> kit = List.of();

  @Option(
      names = "--practise",
      paramLabel = "WORD",
      split = ",",
      description = "Skills practised: sighting,fast-start ...")
  private List<String> practise = List.of();

  @Option(names = "--aero", paramLabel = "DURATION", description = "Time in race position: 2h10.")
  private @Nullable String aero;

  @Option(names = "--note", paramLabel = "TEXT", description = "Shown, never judged.")
  private @Nullable String note;

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
    Incoming session =
        new Incoming(
            new Place("", 1, 1), ((Quantity.Of<LocalDate>) day).value(), work.sport(), keys());
    refuse(session, target);
    LogMerge merge = target.merge();
    Decision decision = merge.decide(List.of(session)).get(0);
    boolean rest = merge.saysRest(session.date());
    LogBook book = target.book();
    String words = IntakePage.day(session.date()) + "  " + IntakePage.words(session);
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

  private YamlValue.Keys keys() {
    Map<String, @Nullable String> texts = new LinkedHashMap<>();
    texts.put(work.sport().word(), work.amount());
    texts.put("time", time);
    texts.put("distance", distance);
    texts.put("rpe", rpe);
    texts.put("heart-rate", heartRate);
    texts.put("power", power);
    texts.put("held", held);
    texts.put("at", at);
    texts.put("where", where);
    texts.put("company", company);
    texts.put("climb", climb);
    texts.put("aero", aero);
    texts.put("note", note);
    YamlValue.Keys keys = YamlValue.Keys.NONE;
    for (Map.Entry<String, @Nullable String> text : texts.entrySet()) {
      String value = text.getValue();
      keys = value == null ? keys : keys.with(text.getKey(), value.strip());
    }
    keys = kit.isEmpty() ? keys : keys.with("kit", words(kit));
    return practise.isEmpty() ? keys : keys.with("practise", words(practise));
  }

  private static YamlValue words(List<String> words) {
    return YamlValue.items(words.stream().map(String::strip).map(YamlValue.Text::new).toList());
  }

  private void print(String line) {
    command.commandLine().getOut().print(line + "\n");
  }

  private ParameterException wrong(String message) {
    return new ParameterException(command.commandLine(), message);
  }
}
