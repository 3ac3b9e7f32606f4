import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.tools.ToolProvider;

/**
 * Times whole processes, turn and turn about, and prints medians and ratios as a Markdown table:
 * the audit of one plan with its log against a bare Java that reads the same two files with the
 * same library, flags and archive. Run it in the project's folder, on a quiet machine:
 *
 * <pre>
 * ./peakproof warm
 * java src/bench/ColdStart.java 15
 * </pre>
 */
public final class ColdStart {
  private static final String PLAN = "plans/tove/plan.yaml";
  private static final String BARE =
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

  private ColdStart() {}

  /** Runs each command as often as the first argument says; 7 times without one. */
  public static void main(String[] arguments) throws Exception {
    int runs = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 7;
    Path jar = Path.of("target/peakproof.jar").toAbsolutePath();
    Path extra = Files.createTempDirectory("bench");
    Path source = Files.writeString(extra.resolve("Bare.java"), BARE);
    int compiled =
        ToolProvider.getSystemJavaCompiler()
            .run(null, null, null, "-proc:none", "-cp", jar.toString(), source.toString());
    if (compiled != 0) {
      throw new IllegalStateException("Bare does not compile");
    }
    Map<String, List<String>> commands = new LinkedHashMap<>();
    commands.put("bare Java, both files read", java(jar, extra, "Bare", PLAN));
    commands.put("audit, shipped rules", java(jar, extra, "peakproof.Main", "audit", PLAN));
    commands.put("audit, through the launcher", List.of("./peakproof", "audit", PLAN));
    commands.put(
        "audit, a club rule kept from before",
        List.of("./peakproof", "audit", PLAN, "--rules", club(extra).toString()));
    Map<String, List<Double>> seconds = new LinkedHashMap<>();
    for (int i = 0; i <= runs; i++) {
      for (Map.Entry<String, List<String>> command : commands.entrySet()) {
        double took = seconds(command.getValue());
        if (i > 0) {
          seconds.computeIfAbsent(command.getKey(), name -> new ArrayList<>()).add(took);
        }
      }
    }
    System.out.println("| what | median, s | least, s | ratio of medians |\n|---|---|---|---|");
    double bare = median(seconds.get("bare Java, both files read"));
    seconds.forEach(
        (what, all) ->
            System.out.printf(
                Locale.ROOT,
                "| %s | %.2f | %.2f | %.2f |%n",
                what,
                median(all),
                all.stream().min(Double::compare).orElseThrow(),
                median(all) / bare));
  }

  /** The launcher's own flags. */
  private static List<String> java(Path jar, Path extra, String... rest) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(
        List.of(
            "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Xmn96m", "-Xmx512m", "-Xlog:disable"));
    try (var files = Files.list(jar.getParent())) {
      files
          .filter(file -> file.toString().contains(System.getProperty("java.runtime.version")))
          .findFirst()
          .ifPresent(
              archive ->
                  command.add(
                      (archive.toString().endsWith(".aot") ? "-XX:AOTCache=" : "-XX:SharedArchiveFile=")
                          + archive));
    }
    command.add("-Dpeakproof.home=" + Path.of("").toAbsolutePath());
    command.addAll(List.of("-cp", jar + java.io.File.pathSeparator + extra));
    command.addAll(List.of(rest));
    return command;
  }

  private static Path club(Path folder) throws Exception {
    Path rules = folder.resolve("our-rules");
    seconds(
        List.of("./peakproof", "rules", "new", "bench-rule", "--theme", "swim", "--dir", rules.toString()));
    return rules;
  }

  private static double seconds(List<String> command) throws IOException, InterruptedException {
    long began = System.nanoTime();
    new ProcessBuilder(command)
        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
        .redirectError(ProcessBuilder.Redirect.DISCARD)
        .start()
        .waitFor();
    return (System.nanoTime() - began) / 1e9;
  }

  private static double median(List<Double> all) {
    List<Double> sorted = all.stream().sorted().toList();
    return sorted.get(sorted.size() / 2);
  }
}
