package peakproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Audit;
import peakproof.audit.Comparison.Since;
import peakproof.audit.Discreet;
import peakproof.audit.Finding;
import peakproof.audit.Finding.Location;
import peakproof.audit.Gone;
import peakproof.report.Report.Missing;
import peakproof.report.Report.Ranked;
import peakproof.rule.Severity;

/** One audit in Markdown. */
final class MarkdownPage {
  /** More than these tell a reader nothing new about where to start. */
  private static final int PLACES = 4;

  /** Entries worth answering before the others are only counted. */
  private static final int ENTRIES = 8;

  private final Report counted;
  private final Report shown;
  private final Audit audit;
  private final boolean withHealth;
  private final StringBuilder page = new StringBuilder();

  private MarkdownPage(Judged judged, Layout layout) {
    this.audit = layout.withHealth() ? judged.audit() : Discreet.of(judged.audit());
    this.counted = Report.of(judged, layout.choice());
    this.shown =
        Report.of(
            new Judged(audit, judged.complete(), judged.comparison(), judged.background()),
            layout.choice());
    this.withHealth = layout.withHealth();
  }

  static String of(Judged judged, Layout layout) {
    MarkdownPage page = new MarkdownPage(judged, layout);
    page.head();
    page.findings();
    page.gone();
    page.notJudged();
    page.decided();
    return page.page.toString();
  }

  private void head() {
    line(
        "## "
            + Markdown.name(audit.athlete())
            + " · "
            + Markdown.name(audit.event())
            + ", "
            + Dates.full(audit.raceDate()));
    line(
        count(audit.daysToGo(), "day")
            + " to go · "
            + Markdown.code(audit.plan())
            + " · as of "
            + Dates.full(audit.asOf())
            + " · "
            + found());
    if (!counted.complete()) {
      line("**Incomplete**: a broken rule could not run; what the others found is below.");
    }
  }

  private String found() {
    List<String> counts = new ArrayList<>();
    for (Severity severity : Severity.values()) {
      int found = counted.tally().found(severity);
      if (found > 0) {
        counts.add("**" + found + " " + severity + "**");
      }
    }
    String all =
        counts.isEmpty()
            ? "nothing found by " + count(counted.tally().judged(), "rule")
            : String.join(", ", counts);
    return counted.compared()
        ? all
            + ": "
            + counted.count(Since.NEW)
            + " new, "
            + counted.count(Since.KNOWN)
            + " known, "
            + counted.gone().size()
            + " gone"
        : all;
  }

  private void findings() {
    shown.shown().forEach(this::finding);
    List<Ranked> rest = new ArrayList<>(shown.ranked());
    rest.removeAll(shown.shown());
    if (!rest.isEmpty()) {
      open(count(rest.size(), "more finding", "more findings"));
      rest.forEach(this::finding);
      close();
    }
  }

  private void gone() {
    List<Gone> gone = shown.gone();
    if (!gone.isEmpty()) {
      open(count(gone.size(), "finding") + " gone");
      gone.forEach(one -> page.append("- ").append(gone(one, audit, withHealth)).append('\n'));
      page.append('\n');
      close();
    }
  }

  /** One line; of a health entry no more than that there was one. */
  static String gone(Gone gone, @Nullable Audit audit, boolean withHealth) {
    Gone told = withHealth ? gone : gone.discreet(audit == null ? Set.of() : audit.ofHealth());
    String rule = told.rule().equals(Discreet.RULE) ? "" : " · " + Markdown.code(told.rule());
    String now = told.now().equals(Gone.CLEAR) ? "" : " (" + told.now() + ")";
    return "**" + told.severity() + "** " + Markdown.text(told.title()) + rule + now;
  }

  private void finding(Ranked ranked) {
    Finding finding = ranked.finding();
    String hold = finding.hold() == null ? "" : " (" + TextPage.spoken(finding.hold()) + ")";
    String rule = finding.rule().equals(Discreet.RULE) ? "" : " · " + Markdown.code(finding.rule());
    String since = ranked.since() == null ? "" : " (" + ranked.since().word() + ")";
    line(
        "**"
            + finding.severity()
            + "**"
            + since
            + " "
            + Markdown.text(finding.title())
            + hold
            + rule);
    item("where", places(finding.where()));
    String ground = rule.isEmpty() ? "" : " (" + Markdown.text(Evidence.of(finding)) + ")";
    item("why", Markdown.text(finding.why()) + ground);
    item("do", Markdown.text(finding.remedy()));
    item("care", finding.care() == null ? null : Markdown.text(finding.care()));
    page.append('\n');
  }

  private String places(List<Location> where) {
    String named =
        where.stream()
            .limit(PLACES)
            .map(one -> time(one) + Markdown.code(one.place().file() + ":" + one.place().line()))
            .distinct()
            .collect(Collectors.joining(", "));
    int more = where.size() - PLACES;
    return more > 0 ? named + " and " + more + " more" : named;
  }

  private String time(Location location) {
    if (location.date() != null) {
      return Dates.day(location.date(), audit.raceDate()) + " ";
    }
    return location.week() == null ? "" : Dates.week(location.week(), audit.raceDate()) + " ";
  }

  private void notJudged() {
    int rules = counted.tally().notJudged();
    if (rules == 0) {
      return;
    }
    open(count(rules, "rule") + " not judged; worth answering first");
    for (Missing missing : counted.missing().stream().limit(ENTRIES).toList()) {
      page.append("- ")
          .append(count(missing.rules(), "rule"))
          .append(": ")
          .append(Markdown.text(missing.entry()))
          .append('\n');
    }
    int more = counted.missing().size() - ENTRIES;
    if (more > 0) {
      page.append("- and ").append(more).append(" more\n");
    }
    if (!counted.holdsNotJudged().isEmpty()) {
      page.append("- HOLD rules not judged: ")
          .append(
              counted.holdsNotJudged().stream()
                  .map(Markdown::code)
                  .collect(Collectors.joining(", ")))
          .append('\n');
    }
    page.append('\n');
    close();
  }

  private void decided() {
    audit.remarks().forEach(remark -> line(Markdown.text(remark)));
    if (audit.accepted().isEmpty() && audit.silenced().isEmpty()) {
      return;
    }
    open(audit.accepted().size() + " accepted, " + audit.silenced().size() + " silenced");
    audit
        .accepted()
        .forEach(
            one ->
                decision(
                    "accepted, "
                        + one.finding().severity()
                        + ": "
                        + Markdown.text(one.finding().title()),
                    one.because()
                        + (one.by() == null ? "" : ", by " + one.by())
                        + (one.until() == null ? "" : ", until " + Dates.full(one.until()))));
    audit
        .silenced()
        .forEach(
            one ->
                decision(
                    (one.hold() ? "silenced, could HOLD: " : "silenced: ")
                        + Markdown.code(one.rule()),
                    one.because()));
    page.append('\n');
    close();
  }

  private void decision(String what, String because) {
    page.append("- ").append(what).append(" (").append(Markdown.text(because)).append(")\n");
  }

  private void line(String line) {
    page.append(line).append("\n\n");
  }

  private void item(String label, @Nullable String text) {
    if (text != null) {
      page.append(String.format(Locale.ROOT, "- %s: ", label)).append(text).append('\n');
    }
  }

  private void open(String summary) {
    line("<details><summary>" + summary + "</summary>");
  }

  private void close() {
    line("</details>");
  }

  private static String count(long count, String one) {
    return count(count, one, one + "s");
  }

  private static String count(long count, String one, String many) {
    return count + " " + (count == 1 ? one : many);
  }
}
