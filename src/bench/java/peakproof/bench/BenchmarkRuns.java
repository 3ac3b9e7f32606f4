package peakproof.bench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.Options;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import peakproof.audit.JudgingBenchmark;

/** Runs what is measured in a warm Java, on one thread, and tells it as lines of tables. */
final class BenchmarkRuns {
  private static final String SAID = "target/jmh.txt";

  private final Size size;

  BenchmarkRuns(Size size) {
    this.size = size;
  }

  /** The median of a benchmark's spans over all forks, by its method. */
  private Map<String, Double> medians(Class<?> benchmark) throws RunnerException {
    Options options =
        new OptionsBuilder()
            .include(benchmark.getName())
            .forks(size.forks())
            .warmupIterations(size.warmUps())
            .warmupTime(TimeValue.milliseconds(size.milliseconds()))
            .measurementIterations(size.spans())
            .measurementTime(TimeValue.milliseconds(size.milliseconds()))
            .shouldFailOnError(true)
            .output(SAID)
            .build();
    Map<String, Double> medians = new LinkedHashMap<>();
    for (RunResult result : new Runner(options).run()) {
      List<Double> spans =
          result.getBenchmarkResults().stream()
              .flatMap(fork -> fork.getIterationResults().stream())
              .map(span -> span.getPrimaryResult().getScore())
              .toList();
      medians.put(result.getPrimaryResult().getLabel(), Turns.median(spans));
    }
    return medians;
  }

  /** Reading and auditing one plan, in plans a second. */
  List<String> plan() throws RunnerException {
    Map<String, Double> medians = medians(WarmBenchmark.class);
    double read = medians.get("read");
    Table table = Table.of("one plan with its log, one thread", "a second", "time, reading = 1");
    plan(table, "reading its files alone", read, read);
    plan(table, "audit of it once read", medians.get("auditOfAPlanRead"), read);
    plan(table, "reading and audit", medians.get("readAndAudit"), read);
    return table.lines();
  }

  private static void plan(Table table, String what, double perSecond, double read) {
    table.row(what, Table.number("%.0f", perSecond), Table.number("%.2f", read / perSecond));
  }

  /** Twenty rules by the engine and by hand. */
  List<String> judging() throws RunnerException {
    Map<String, Double> medians = medians(JudgingBenchmark.class);
    double gathering = medians.get("gathering");
    double byHand = medians.get("byHand");
    double byEngine = medians.get("byEngine");
    Table table =
        Table.of("judging twenty rules, one thread", "a plan", "ratio", "without the first");
    table.row("gathering the facts, with which both begin", micros(gathering), "", "");
    table.row("written by hand in Java", micros(byHand), "1.0", "1.0");
    table.row(
        "by the rules",
        micros(byEngine),
        Table.number("%.1f", byEngine / byHand),
        Table.number("%.1f", (byEngine - gathering) / (byHand - gathering)));
    return table.lines();
  }

  private static String micros(double value) {
    return Table.number("%.0f µs", value);
  }
}
