package peakproof.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Audit;
import peakproof.audit.Audit.AcceptedFinding;
import peakproof.rule.Severity;

/**
 * How the rules ended, and what people decided about them.
 *
 * @param counts how many rules ended how; they sum to {@code rules}
 * @param presetBecause whose numbers count, and why
 * @param remarks other things said once
 */
record DecidedPart(
    int rules,
    List<Count> counts,
    List<Lived> accepted,
    List<Because> silenced,
    List<Because> changed,
    String presetBecause,
    List<String> notDeclared,
    List<String> remarks) {

  /** A way to end, with how many rules did. */
  record Count(String what, int rules, @Nullable Severity severity) {}

  /** A finding the coach lives with. */
  record Lived(Severity severity, String title, String rule, String who, String because) {}

  /** A rule with a word on it. */
  record Because(String rule, String because) {}

  static DecidedPart of(Report report) {
    Audit audit = report.audit();
    return new DecidedPart(
        report.tally().rules(),
        counts(report.tally()),
        audit.accepted().stream().map(one -> lived(one, audit.raceDate())).toList(),
        audit.silenced().stream().map(rule -> new Because(rule.rule(), rule.because())).toList(),
        audit.settings().stream()
            .map(change -> new Because(change.rule(), change.change() + " (" + by(change.by())))
            .toList(),
        audit.preset().preset().word() + " (" + audit.preset().because() + ")",
        audit.notDeclared(),
        audit.remarks());
  }

  private static String by(String who) {
    return (who.equals("plan") ? "this plan" : "the " + who) + ")";
  }

  private static List<Count> counts(Tally tally) {
    List<Count> counts = new ArrayList<>();
    for (Severity severity : Severity.values()) {
      counts.add(
          new Count(severity.name().toLowerCase(Locale.ROOT), tally.found(severity), severity));
    }
    counts.add(new Count("clear", tally.clear(), null));
    counts.add(new Count("not judged", tally.notJudged(), null));
    counts.add(new Count("not for this plan", tally.notForThisPlan(), null));
    counts.add(new Count("silenced", tally.silenced(), null));
    counts.add(new Count("accepted", tally.accepted(), null));
    return counts;
  }

  private static Lived lived(AcceptedFinding accepted, LocalDate race) {
    LocalDate until = accepted.until();
    String who =
        (accepted.by() == null ? "" : "by " + accepted.by())
            + (until == null ? "" : " until " + Dates.day(until, race));
    return new Lived(
        accepted.finding().severity(),
        accepted.finding().title(),
        accepted.finding().rule(),
        who.strip(),
        accepted.because());
  }
}
