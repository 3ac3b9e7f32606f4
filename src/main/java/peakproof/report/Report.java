package peakproof.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import peakproof.audit.Audit;
import peakproof.audit.Audit.NotJudged;
import peakproof.audit.Finding;
import peakproof.rule.Severity;

/**
 * What a reader gets of one audit. It is chosen here, once: no renderer leaves anything out by
 * itself.
 *
 * @param complete false when a broken rule could not run
 * @param all true when the reader asked for everything
 * @param ranked every finding with its rank
 * @param shown the ones a reader gets
 * @param missing entries worth answering, those that settle most rules first
 * @param holdsNotJudged rules that could have held the plan and were not judged
 */
record Report(
    Audit audit,
    boolean complete,
    boolean all,
    List<Ranked> ranked,
    List<Ranked> shown,
    Tally tally,
    List<Missing> missing,
    List<String> holdsNotJudged) {

  /** A finding with its rank in its audit, counted from 1. */
  record Ranked(int order, Finding finding) {}

  /** An entry that would settle some rules, with how many. */
  record Missing(String entry, int rules) {}

  /** Chooses what to show of an audit. */
  static Report of(Judged judged, Choice choice) {
    Audit audit = judged.audit();
    List<Ranked> ranked = new ArrayList<>();
    audit.findings().forEach(finding -> ranked.add(new Ranked(ranked.size() + 1, finding)));
    return new Report(
        audit,
        judged.complete(),
        choice.all(),
        List.copyOf(ranked),
        shown(ranked, choice),
        Tally.of(audit),
        missing(audit.notJudged()),
        audit.notJudged().stream().filter(NotJudged::canHold).map(NotJudged::rule).toList());
  }

  /** How many findings the reader does not get. */
  int hidden() {
    return ranked.size() - shown.size();
  }

  private static List<Ranked> shown(List<Ranked> ranked, Choice choice) {
    List<Ranked> shown = new ArrayList<>();
    int rest = 0;
    for (Ranked one : ranked) {
      Severity severity = one.finding().severity();
      if (choice.all()
          || severity == Severity.HOLD
          || (severity != Severity.NOTE && rest++ < choice.top())) {
        shown.add(one);
      }
    }
    return shown;
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
