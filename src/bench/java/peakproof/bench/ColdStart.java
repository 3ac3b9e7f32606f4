package peakproof.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.tools.ToolProvider;

/**
 * The audit of one plan with its log from a cold start, against a bare Java that reads the same two
 * files with the same libraries, flags and archive.
 */
final class ColdStart {
  private static final String PLAN = "plans/tove/plan.yaml";
  private static final String BARE = "bare Java, both files read";
  private static final String BARE_SOURCE =
      """
      import java.nio.file.Path;
      import java.util.concurrent.Callable;
      import peakproof.document.Documents;
      import picocli.CommandLine;
      import picocli.CommandLine.Command;
      import picocli.CommandLine.Parameters;

      @Command(name = "bare")
      public final class Bare implements Callable<Integer> {
        @Parameters private Path plan;

        public Integer call() {
          System.out.println(Documents.read(plan, null).faults().size());
          return 0;
        }

        public static void main(String[] arguments) {
          System.exit(new CommandLine(new Bare()).execute(arguments));
        }
      }
      """;

  private final Path extra;
  private final Path club;

  private ColdStart(Path folder) {
    this.extra = folder;
    this.club = folder.resolve("our-rules");
  }

  /** Takes turns, one Java after the other, and tells them as lines of a table. */
  static List<String> measure(List<Java> javas, Size size) throws IOException {
    try (Temporary temporary = Temporary.folder()) {
      ColdStart cold = new ColdStart(temporary.path());
      cold.prepare();
      return cold.table(javas, size).lines();
    }
  }

  private Table table(List<Java> javas, Size size) {
    Map<Java, Turns> turns = new LinkedHashMap<>();
    for (Java java : javas) {
      java.launcher("warm").run(false);
      turns.put(java, Turns.of(commands(java), 1, size.starts()));
    }
    Table table = Table.of("what");
    javas.forEach(java -> table.column("Java " + java.version() + ": median", "ratio"));
    for (String what : commands(javas.get(0)).keySet()) {
      table.row(what);
      for (Java java : javas) {
        double median = turns.get(java).median(what);
        table.cells(
            Table.number("%.2f s", median),
            Table.number("%.1f", median / turns.get(java).median(BARE)));
      }
    }
    return table;
  }

  private void prepare() throws IOException {
    Path source = Files.writeString(extra.resolve("Bare.java"), BARE_SOURCE);
    String[] arguments = {
      "-proc:none", "--release", "17", "-cp", Java.JAR.toString(), source.toString()
    };
    if (ToolProvider.getSystemJavaCompiler().run(null, null, null, arguments) != 0) {
      throw new IllegalStateException("Bare does not compile");
    }
    Java.running()
        .launcher("rules", "new", "bench-rule", "--theme", "swim", "--dir", club.toString())
        .run(false);
  }

  private Map<String, Command> commands(Java java) {
    List<String> flags =
        List.of(
            "-XX:+UseSerialGC",
            "-XX:TieredStopAtLevel=1",
            "-XX:CICompilerCount=1",
            "-Xmn96m",
            "-Xmx512m",
            "-Xlog:disable",
            java.archive(),
            "-Dpeakproof.home=" + Path.of("").toAbsolutePath());
    List<Path> classPath = List.of(Java.JAR, extra);
    Map<String, Command> commands = new LinkedHashMap<>();
    commands.put(BARE, java.run(flags, classPath, "Bare", PLAN));
    commands.put(
        "audit, shipped rules", java.run(flags, classPath, "peakproof.Main", "audit", PLAN));
    commands.put("audit, through the launcher", java.launcher("audit", PLAN));
    commands.put(
        "audit, a club rule kept from before",
        java.launcher("audit", PLAN, "--rules", club.toString()));
    return commands;
  }
}
