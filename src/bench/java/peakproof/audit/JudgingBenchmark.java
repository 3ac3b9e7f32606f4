package peakproof.audit;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import peakproof.bench.ManyPlans;
import peakproof.bench.Temporary;
import peakproof.document.Documents;
import peakproof.document.Dossier;
import peakproof.rule.RuleFolder;
import peakproof.rule.ShippedRules;

/**
 * Twenty rules over the facts of one plan after the other, by the engine and by hand: judging
 * alone, without reading the plan or laying out its facts. Each judging gets facts of its own,
 * since facts remember what was counted before; a judging takes a good part of a millisecond,
 * beside which the clock of a single call weighs little.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class JudgingBenchmark {
  private static final Path RULES = Path.of("rules");
  private static final int GENERATED = 40;

  private final List<Dossier> dossiers = new ArrayList<>();
  private TwentyRules rules;
  private TwentyRules.Ready ready;
  private int next;

  /** Reads demo plans and made-up ones, and makes sure that both ways find the same in each. */
  @Setup
  public void read() throws IOException {
    try (Temporary temporary = Temporary.folder()) {
      rules =
          TwentyRules.alone(
              RuleFolder.toJudge(List.of(RULES), ShippedRules.ofThisProgram()),
              RULES,
              Files.createDirectory(temporary.path().resolve("rules")));
      Path plans = temporary.path().resolve("plans");
      ManyPlans.write(GENERATED, plans, RULES.resolve("base"), 1);
      add(Documents.plansUnder(plans));
      add(Documents.plansUnder(Path.of("plans")));
    }
  }

  private void add(List<Path> plans) {
    for (Path plan : plans) {
      Dossier dossier = Objects.requireNonNull(Documents.read(plan, null).dossier());
      dossiers.add(dossier);
      Map<String, List<String>> byEngine = rules.found(rules.ready(dossier, null));
      Map<String, List<String>> byHand = TwentyRules.foundByHand(rules.ready(dossier, null));
      if (!byHand.equals(byEngine)) {
        throw new IllegalStateException(
            plan + ": " + byEngine + " by the engine but " + byHand + " by hand");
      }
    }
  }

  /** Lays out the next plan, which is not timed. */
  @Setup(Level.Invocation)
  public void lay() {
    ready = rules.ready(dossiers.get(next), null);
    next = (next + 1) % dossiers.size();
  }

  /** Gathering the facts, which both others begin with. */
  @Benchmark
  public Object gathering() {
    return ready.facts().all();
  }

  /** The engine. */
  @Benchmark
  public Object byEngine() {
    return rules.judge(ready);
  }

  /** Plain Java. */
  @Benchmark
  public Object byHand() {
    return TwentyRules.byHand(ready);
  }
}
