package peakproof.cli;

import java.io.Closeable;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Audit;
import peakproof.audit.Baseline;
import peakproof.audit.Comparison;
import peakproof.audit.Comparison.Since;
import peakproof.git.Snapshot;
import peakproof.report.Balance;
import peakproof.report.Rank;
import peakproof.rule.Severity;

/** What a run has to do with an earlier state of its plans: nothing, unless the user asks. */
final class Past implements Closeable {
  private final Map<String, Snapshot> snapshots = new HashMap<>();
  private final AtomicInteger fresh = new AtomicInteger();
  private final AtomicInteger known = new AtomicInteger();
  private final AtomicInteger gone = new AtomicInteger();
  private final boolean failOnNew;
  private Collection<Path> plans;
  private @Nullable String against;
  private @Nullable Baseline baseline;

  /** A run over these plans. */
  Past(Collection<Path> plans, boolean failOnNew) {
    this.plans = plans;
    this.failOnNew = failOnNew;
  }

  void keep(Collection<Path> changed) {
    plans = changed;
  }

  void compareWith(String what, Baseline earlier) {
    against = what;
    baseline = earlier;
  }

  void add(String revision, Snapshot snapshot) {
    snapshots.put(revision, snapshot);
  }

  @Nullable Snapshot snapshot(String revision) {
    return snapshots.get(revision);
  }

  /** The plans to report. */
  Collection<Path> plans() {
    return plans;
  }

  /** What is new in an audit; null when nothing is compared. Any thread may ask. */
  @Nullable Comparison of(Audit audit) {
    if (baseline == null) {
      return null;
    }
    Comparison comparison = baseline.compare(audit);
    fresh.addAndGet(comparison.count(Since.NEW));
    known.addAndGet(comparison.count(Since.KNOWN));
    gone.addAndGet(comparison.gone().size());
    return comparison;
  }

  /** True when what was found ends the run with a code. */
  boolean fails(Audit audit, @Nullable Comparison comparison, Severity failAt) {
    return failOnNew && comparison != null
        ? comparison.reaches(failAt, audit)
        : Rank.of(audit).reaches(failAt);
  }

  /** Over all plans, once they are compared; null when nothing is. */
  @Nullable Balance balance() {
    if (baseline == null || against == null) {
      return null;
    }
    List<Baseline.Left> left = new ArrayList<>(baseline.left());
    int ofLeft = left.stream().mapToInt(one -> one.findings().size()).sum();
    return new Balance(against, fresh.get(), known.get(), gone.get() + ofLeft, left);
  }

  @Override
  public void close() {
    snapshots.values().forEach(Snapshot::close);
  }
}
