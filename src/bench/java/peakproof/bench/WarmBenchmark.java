package peakproof.bench;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import peakproof.audit.Auditor;
import peakproof.document.Documents;
import peakproof.document.Reading;
import peakproof.rule.ShippedRules;

/** One plan with its log in a Java that has done it often, by all shipped rules, on one thread. */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
public class WarmBenchmark {
  private static final Path PLAN = Path.of("plans/tove/plan.yaml");

  private Auditor auditor;
  private Reading reading;

  /** Loads the rules and reads the plan once. */
  @Setup
  public void load() {
    auditor = Auditor.load(List.of(Path.of("rules")), ShippedRules::ofThisProgram);
    reading = Documents.read(PLAN, null);
    if (!(auditor.audit(reading, null) instanceof Auditor.Outcome.Judged judged)
        || !judged.complete()) {
      throw new IllegalStateException("the plan is not judged completely");
    }
  }

  /** Reads the plan's files. */
  @Benchmark
  public Reading read() {
    return Documents.read(PLAN, null);
  }

  /** Audits the plan read before. */
  @Benchmark
  public Auditor.Outcome auditOfAPlanRead() {
    return auditor.audit(reading, null);
  }

  /** Reads the plan's files and audits it. */
  @Benchmark
  public Auditor.Outcome readAndAudit() {
    return auditor.audit(PLAN, new Auditor.Options(null, null));
  }
}
