package peakproof.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import peakproof.audit.Audit;
import peakproof.audit.Audit.AcceptedFinding;
import peakproof.audit.Comparison.Since;
import peakproof.audit.Gone;
import peakproof.fact.Words;
import peakproof.report.Report.Missing;
import peakproof.rule.Severity;

/** The lines below the findings: how much was judged, what was not, and who decided what. */
final class Footer {
  /** Entries worth answering that a report names before it only counts them. */
  private static final int ENTRIES = 5;

  private final Report report;
  private final Audit audit;
  private final int width;
  private final List<String> lines = new ArrayList<>();

  private Footer(Report report, int width) {
    this.report = report;
    this.audit = report.audit();
    this.width = width;
  }

  static List<String> of(Report report, int width) {
    Footer footer = new Footer(report, width);
    footer.sayWhatIsHidden();
    footer.count();
    footer.compare();
    footer.sayWhatWasNotJudged();
    footer.sayWhatPeopleDecided();
    return footer.lines;
  }

  private void sayWhatIsHidden() {
    int hidden = report.hidden();
    if (!report.shown().isEmpty()) {
      if (hidden > 0) {
        add(hidden + " more: --all");
      }
      return;
    }
    String judged =
        plural(report.tally().judged(), "rule")
            + " judged "
            + (audit.log() == null ? "the plan" : "the plan and the log")
            + " as of "
            + Lines.bound(Dates.full(audit.asOf()));
    if (hidden == 0) {
      add("Nothing found: " + judged + ".");
    } else if (audit.count(Severity.NOTE) == hidden) {
      add("Nothing to hold, fix or ask: " + judged + "; " + plural(hidden, "note") + ": --all");
    } else {
      add("Nothing to hold: " + judged + "; " + hidden + " more: --all");
    }
  }

  private void count() {
    Tally tally = report.tally();
    List<String> found = new ArrayList<>();
    for (Severity severity : Severity.values()) {
      count(found, tally.found(severity), severity.name().toLowerCase(Locale.ROOT));
    }
    List<String> counts = new ArrayList<>();
    if (!found.isEmpty()) {
      counts.add(String.join(" ", found) + " found");
    }
    count(counts, tally.clear(), "clear");
    count(counts, tally.notJudged(), "not judged");
    count(counts, tally.notForThisPlan(), "not for this plan");
    count(counts, tally.silenced(), "silenced");
    count(counts, tally.accepted(), "accepted");
    add(
        plural(tally.rules(), "rule")
            + ": "
            + Lines.dotted(counts.stream().map(Lines::bound).toList()));
  }

  private void compare() {
    if (report.compared()) {
      list(
          "compared with before",
          List.of(
              Lines.bound(report.count(Since.NEW) + " new"),
              Lines.bound(report.count(Since.KNOWN) + " known"),
              Lines.bound(report.gone().size() + " gone")));
      list("gone", report.gone().stream().map(Footer::told).toList());
    }
  }

  /**
   * {@code FIX No open-water swim (swim-open-water-weekly)}, and what hides it when it is not
   * clear.
   */
  static String told(Gone gone) {
    String now = gone.now().equals(Gone.CLEAR) ? "" : ", " + gone.now();
    return gone.severity() + " " + gone.title() + " (" + gone.rule() + now + ")";
  }

  private static void count(List<String> counts, int count, String what) {
    if (count > 0) {
      counts.add(count + " " + what);
    }
  }

  private void sayWhatWasNotJudged() {
    List<String> entries = new ArrayList<>();
    for (Missing missing : report.missing()) {
      if (report.all() || entries.size() < ENTRIES) {
        String rules =
            entries.isEmpty() ? plural(missing.rules(), "rule") : String.valueOf(missing.rules());
        entries.add(Lines.bound(missing.entry() + " (" + rules + ")"));
      }
    }
    int left = report.missing().size() - entries.size();
    if (left > 0) {
      entries.add(Lines.bound(left + " more: --all"));
    }
    list("not judged, worth answering first", entries);
    list("HOLD rules not judged", report.holdsNotJudged());
    if (report.all()) {
      audit.notJudged().forEach(rule -> add("not judged: " + rule.rule() + reason(rule.missing())));
      audit
          .notForThisPlan()
          .forEach(rule -> add("not for this plan: " + rule.rule() + " (" + rule.because() + ")"));
    }
  }

  private static String reason(List<String> missing) {
    return missing.isEmpty() ? "" : " (" + Words.missing(missing) + ")";
  }

  private void sayWhatPeopleDecided() {
    list(
        "silenced by the house",
        audit.silenced().stream().filter(rule -> !rule.hold()).map(Heading::told).toList());
    audit.accepted().forEach(accepted -> add(told(accepted)));
    preset();
    list("changed by the house", changed("house"));
    list("changed by this plan", changed("plan"));
    list("not written, so read as none", audit.notDeclared());
    audit.remarks().forEach(this::add);
  }

  /** Whose numbers count, why, and which they are. */
  private void preset() {
    List<String> differences = changed("preset");
    if (differences.isEmpty()) {
      return;
    }
    String judged =
        "judged as " + audit.preset().preset().word() + " (" + audit.preset().because() + ")";
    if (report.all()) {
      list(judged, differences);
    } else {
      add(judged + ": " + plural(differences.size(), "setting") + " not as by default, --all");
    }
  }

  private List<String> changed(String by) {
    return audit.settings().stream()
        .filter(change -> change.by().equals(by) && !change.lowersHold())
        .map(change -> change.rule() + " " + change.change())
        .toList();
  }

  private String told(AcceptedFinding accepted) {
    LocalDate until = accepted.until();
    return "accepted "
        + accepted.finding().severity()
        + ": "
        + accepted.finding().rule()
        + (accepted.by() == null ? "" : " by " + accepted.by())
        + (until == null ? "" : " until " + Dates.day(until, audit.raceDate()))
        + " ("
        + accepted.because()
        + ")";
  }

  private void list(String label, List<String> items) {
    if (!items.isEmpty()) {
      add(label + ": " + Lines.dotted(items));
    }
  }

  private void add(String text) {
    lines.addAll(Lines.wrapped("", 2, text, width));
  }

  private static String plural(int count, String noun) {
    return count + " " + noun + (count == 1 ? "" : "s");
  }
}
