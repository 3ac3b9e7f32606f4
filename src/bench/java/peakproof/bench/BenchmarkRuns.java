package peakproof.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
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

  /** As the launcher starts Java. */
  private static final String COMPILER = "-XX:TieredStopAtLevel=1";

  private final Size size;

  BenchmarkRuns(Size size) {
    this.size = size;
  }

  /** The medians of spans over all forks by method; a fork of each method takes its turn. */
  private Map<String, Double> medians(Class<?> benchmark) throws RunnerException {
    Options options =
        new OptionsBuilder()
            .include(benchmark.getName())
            .forks(1)
            .jvmArgsAppend(COMPILER)
            .warmupIterations(size.warmUps())
            .warmupTime(TimeValue.milliseconds(size.milliseconds()))
            .measurementIterations(size.spans())
            .measurementTime(TimeValue.milliseconds(size.milliseconds()))
            .shouldFailOnError(true)
            .output(SAID)
            .build();
    Map<String, List<Double>> spans = new TreeMap<>();
    for (int fork = 0; fork < size.forks(); fork++) {
      for (RunResult result : new Runner(options).run()) {
        List<Double> its =
            spans.computeIfAbsent(
                result.getPrimaryResult().getLabel(), method -> new ArrayList<>());
        result.getBenchmarkResults().stream()
            .flatMap(done -> done.getIterationResults().stream())
            .forEach(span -> its.add(span.getPrimaryResult().getScore()));
      }
    }
    Map<String, Double> medians = new TreeMap<>();
    spans.forEach((method, its) -> medians.put(method, Turns.median(its)));
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
