package peakproof.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Audit;
import peakproof.audit.Audit.NotJudged;
import peakproof.audit.Comparison;
import peakproof.audit.Comparison.Since;
import peakproof.audit.Finding;
import peakproof.audit.Gone;
import peakproof.rule.Severity;

/**
 * What a reader gets of one audit. It is chosen here, once: no renderer leaves anything out by
 * itself.
 *
 * @param complete false when a broken rule could not run
 * @param all true when the reader asked for everything
 * @param ranked every finding with its rank
 * @param shown the ones a reader gets
 * @param gone what an earlier audit found and this one does not
 * @param compared true when there is an earlier audit
 * @param missing entries worth answering, those that settle most rules first
 * @param holdsNotJudged rules that could have held the plan and were not judged
 */
record Report(
    Audit audit,
    boolean complete,
    boolean all,
    List<Ranked> ranked,
    List<Ranked> shown,
    List<Gone> gone,
    boolean compared,
    Tally tally,
    List<Missing> missing,
    List<String> holdsNotJudged) {

  /**
   * A finding with its rank in its audit, counted from 1.
   *
   * @param since new or known; null when nothing is compared
   */
  record Ranked(int order, Finding finding, @Nullable Since since) {
    boolean isNew() {
      return since == Since.NEW;
    }
  }

  /** An entry that would settle some rules, with how many. */
  record Missing(String entry, int rules) {}

  /** Chooses what to show of an audit. */
  static Report of(Judged judged, Choice choice) {
    Audit audit = judged.audit();
    Comparison compared = judged.comparison();
    List<Ranked> ranked = new ArrayList<>();
    for (Finding finding : audit.findings()) {
      Since since = compared == null ? null : compared.findings().get(ranked.size());
      ranked.add(new Ranked(ranked.size() + 1, finding, since));
    }
    return new Report(
        audit,
        judged.complete(),
        choice.all(),
        List.copyOf(ranked),
        shown(ranked, choice),
        compared == null ? List.of() : compared.gone(),
        compared != null,
        Tally.of(audit),
        missing(audit.notJudged()),
        audit.notJudged().stream().filter(NotJudged::canHold).map(NotJudged::rule).toList());
  }

  /** How many findings are new, or known. */
  long count(Since since) {
    return ranked.stream().filter(one -> one.since() == since).count();
  }

  /** How many findings the reader does not get. */
  int hidden() {
    return ranked.size() - shown.size();
  }

  /** In the order of their rank; but where not all fit, what is new comes before what is known. */
  private static List<Ranked> shown(List<Ranked> ranked, Choice choice) {
    Set<Ranked> shown = new HashSet<>();
    List<Ranked> rest = new ArrayList<>();
    for (Ranked one : ranked) {
      Severity severity = one.finding().severity();
      if (choice.all() || severity == Severity.HOLD) {
        shown.add(one);
      } else if (severity != Severity.NOTE) {
        rest.add(one);
      }
    }
    rest.stream()
        .sorted(Comparator.comparing(one -> one.isNew() ? 0 : 1))
        .limit(choice.top())
        .forEach(shown::add);
    return ranked.stream().filter(shown::contains).toList();
  }

  private static List<Missing> missing(List<NotJudged> notJudged) {
    Map<String, Integer> rules = new TreeMap<>();
    for (NotJudged rule : notJudged) {
      new TreeSet<>(rule.missing()).forEach(entry -> rules.merge(entry, 1, Integer::sum));
    }
    return rules.entrySet().stream()
        .map(entry -> new Missing(entry.getKey(), entry.getValue()))
        .sorted(Comparator.comparingInt(Missing::rules).reversed().thenComparing(Missing::entry))
        .toList();
  }
}
