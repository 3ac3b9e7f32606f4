package peakproof.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Folders of made-up plans with logs of ten weeks: time on one core and on all, and memory. */
final class Folders {
  private static final String ALL = "all cores";
  private static final String ONE = "one core";
  private static final String READ = "read";

  /** As the launcher starts Java for a folder. */
  private static final List<String> FLAGS =
      List.of("-XX:TieredStopAtLevel=1", "-XX:+UseParallelGC", "-Xmx200m");

  private static final Path TESTS = Path.of("target/test-classes").toAbsolutePath();

  private final Path temporary;
  private final Java java = Java.running();

  private Folders(Path temporary) {
    this.temporary = temporary;
  }

  /** Measures and tells it as lines of a table. */
  static List<String> measure(Size size) throws IOException {
    try (Temporary temporary = Temporary.folder()) {
      return new Folders(temporary.path()).table(size);
    }
  }

  private List<String> table(Size size) throws IOException {
    Path folder = folder(size.plans());
    Map<String, Command> commands = new LinkedHashMap<>();
    commands.put(ALL, audit(folder));
    commands.put(ONE, onOneCore(audit(folder)));
    commands.put(
        READ,
        java.run(FLAGS, List.of(TESTS, Java.JAR), ReadAlone.class.getName(), folder.toString()));
    Turns turns = Turns.of(commands, 0, size.rounds());
    double all = turns.median(ALL);
    double one = turns.median(ONE);
    double read = turns.median(READ);
    int cores = Runtime.getRuntime().availableProcessors();
    Table table =
        Table.of("what", "measured", "aim")
            .row(
                plans(size.plans()) + " on " + cores + " cores",
                Table.number("%.1f s", all) + ", " + rate(size.plans(), all),
                "")
            .row(
                "the same on one core",
                Table.number("%.1f s", one) + Table.number(", %.1f times as long", one / all),
                "at least 1.7")
            .row(
                "reading the same YAML alone on " + cores + " cores",
                Table.number("%.1f s", read)
                    + Table.number("; the audit takes %.1f times as long", all / read),
                "at most 1.6");
    return memory(size, table).lines();
  }

  private Table memory(Size size, Table table) throws IOException {
    List<Double> peaks = new ArrayList<>();
    for (int count : size.memory()) {
      Command.Ran ran = audit(folder(count)).run(true);
      peaks.add(ran.peakMegabytes());
      double more = 100 * (ran.peakMegabytes() / peaks.get(0) - 1);
      table.row(
          "most memory, " + plans(count) + " (a single run)",
          Table.number("%.0f MB", ran.peakMegabytes())
              + (peaks.size() == 1 ? "" : Table.number(", %+.0f %%", more))
              + ", at "
              + rate(count, ran.seconds()),
          peaks.size() == 1 ? "under 419 MB (400 MiB)" : "at most 10 % more");
    }
    return table;
  }

  private static String plans(int count) {
    return Table.number("%,.0f plans", count);
  }

  private static String rate(int plans, double seconds) {
    return Table.number("%.0f plans a second", plans / seconds);
  }

  private Path folder(int plans) throws IOException {
    Path folder = temporary.resolve("plans-" + plans);
    if (!Files.exists(folder)) {
      ManyPlans.write(plans, folder, Path.of("rules/base"), ManyPlans.SEED);
    }
    return folder;
  }

  private Command audit(Path folder) {
    return java.launcher(
        "audit", folder.toString(), "--output", temporary.resolve("audit.txt").toString());
  }

  /** All of Java on it, with its compiler and its collector. */
  private static Command onOneCore(Command command) {
    List<String> words = new ArrayList<>(List.of("taskset", "-c", "0"));
    words.addAll(command.words());
    return new Command(words, command.environment());
  }
}
