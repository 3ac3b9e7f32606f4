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
 * What a run shows. It is chosen here, once: no renderer leaves anything out by itself.
 *
 * @param judgements the audited plans, worst first
 * @param plans how many plans were found, audited or not
 * @param all true when the reader asked for everything
 */
public record Report(List<Judgement> judgements, int plans, boolean all) {

  /**
   * What the reader asked to see besides every HOLD.
   *
   * @param all everything, down to the notes
   * @param top how many of the rest when not all
   */
  public record Choice(boolean all, int top) {}

  /**
   * An audit on its way into a report.
   *
   * @param complete false when a broken rule could not run
   */
  public record Judged(Audit audit, boolean complete) {}

  /** A finding with its rank in its audit, counted from 1. */
  record Ranked(int order, Finding finding) {}

  /** An entry that would settle some rules, with how many. */
  record Missing(String entry, int rules) {}

  /**
   * One audit as shown.
   *
   * @param ranked every finding with its rank
   * @param shown the ones a reader gets
   * @param missing entries worth answering, those that settle most rules first
   * @param holdsNotJudged rules that could have held the plan and were not judged
   */
  record Judgement(
      Audit audit,
      boolean complete,
      List<Ranked> ranked,
      List<Ranked> shown,
      Tally tally,
      List<Missing> missing,
      List<String> holdsNotJudged) {

    /** How many findings the reader does not get. */
    int hidden() {
      return ranked.size() - shown.size();
    }
  }

  private static final Comparator<Audit> WORST_FIRST =
      Comparator.<Audit>comparingLong(audit -> -audit.count(Severity.HOLD))
          .thenComparingLong(audit -> -audit.count(Severity.FIX))
          .thenComparingLong(audit -> -audit.count(Severity.ASK))
          .thenComparingLong(audit -> -audit.count(Severity.NOTE))
          .thenComparing(Audit::plan);

  /** Chooses what to show of some audits out of {@code plans} that were found. */
  public static Report of(List<Judged> judged, int plans, Choice choice) {
    List<Judgement> judgements =
        judged.stream()
            .sorted(Comparator.comparing(Judged::audit, WORST_FIRST))
            .map(one -> judgement(one, choice))
            .toList();
    return new Report(judgements, plans, choice.all());
  }

  /** True when any finding weighs at least {@code bar}; accepted findings do not count. */
  public boolean reaches(Severity bar) {
    return judgements.stream()
        .flatMap(judgement -> judgement.audit().findings().stream())
        .anyMatch(finding -> finding.severity().atLeast(bar));
  }

  private static Judgement judgement(Judged judged, Choice choice) {
    Audit audit = judged.audit();
    List<Ranked> ranked = new ArrayList<>();
    audit.findings().forEach(finding -> ranked.add(new Ranked(ranked.size() + 1, finding)));
    return new Judgement(
        audit,
        judged.complete(),
        List.copyOf(ranked),
        shown(ranked, choice),
        Tally.of(audit),
        missing(audit.notJudged()),
        audit.notJudged().stream().filter(NotJudged::canHold).map(NotJudged::rule).toList());
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
