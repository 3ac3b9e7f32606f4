package peakproof.report;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import peakproof.audit.Audit;
import peakproof.audit.Audit.Silenced;
import peakproof.rule.Resolution;

/** The lines above the findings: whose plan, when, from which files, and what to beware of. */
final class Heading {
  /** A log that ends longer ago than this is old news for the plan's next days. */
  private static final int STALE_DAYS = 2;

  private Heading() {}

  /** The first line names the athlete and the race. */
  static List<String> of(Report report, Places places, int width) {
    List<String> lines = new ArrayList<>();
    lines.add(Lines.dotted(List.of(report.audit().athlete(), race(report.audit()))));
    lines.addAll(below(report, places));
    return lines.stream().flatMap(line -> Lines.wrapped("", 2, line, width).stream()).toList();
  }

  /** {@code Saltmarsh Long Course, Sun 4 Jul 2027 · 35 days to go}. */
  static String race(Audit audit) {
    return Lines.dotted(
        List.of(
            audit.event() + ", " + Lines.bound(Dates.full(audit.raceDate())),
            Lines.bound(daysToGo(audit.daysToGo()))));
  }

  /** Lines of any length on what it rests on and what to beware of. */
  static List<String> below(Report report, Places places) {
    Audit audit = report.audit();
    List<String> lines = new ArrayList<>();
    List<String> basis = new ArrayList<>();
    basis.add(audit.plan() + log(audit, places));
    if (!audit.shape().isBlank()) {
      basis.add(Lines.bound(audit.shape()));
    }
    basis.add(Lines.bound("as of " + Dates.full(audit.asOf())));
    lines.add(Lines.dotted(basis));
    if (!report.complete()) {
      lines.add("Incomplete: a broken rule could not run, so it may have missed more.");
    }
    for (Silenced rule : audit.silenced()) {
      if (rule.hold()) {
        lines.add("HOLD rule silenced by the house: " + told(rule));
      }
    }
    for (Resolution.Changed change : audit.settings()) {
      if (change.lowersHold()) {
        lines.add("HOLD rule lowered by the house: " + change.rule() + " " + change.change());
      }
    }
    return lines;
  }

  static String told(Silenced rule) {
    return rule.rule() + " (" + rule.because() + ")";
  }

  private static String log(Audit audit, Places places) {
    if (audit.log() == null) {
      return ", no log";
    }
    String log = " with " + places.file(audit.log());
    LocalDate ends = audit.logEnds();
    if (ends == null) {
      return log + " (no entries)";
    }
    long age = ChronoUnit.DAYS.between(ends, audit.asOf());
    return age <= STALE_DAYS
        ? log
        : log
            + ", which ends "
            + Lines.bound(Dates.day(ends, audit.raceDate()))
            + ", "
            + Lines.bound(age + " days before");
  }

  static String daysToGo(long days) {
    if (days < 0) {
      return days == -1 ? "raced yesterday" : "raced " + -days + " days ago";
    }
    return days == 0 ? "race day" : days == 1 ? "1 day to go" : days + " days to go";
  }
}
