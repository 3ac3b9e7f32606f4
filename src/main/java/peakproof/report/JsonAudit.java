package peakproof.report;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Audit;
import peakproof.audit.Comparison.Since;
import peakproof.audit.Finding;
import peakproof.audit.Finding.Location;
import peakproof.audit.Finding.Value;
import peakproof.audit.Gone;
import peakproof.rule.Severity;

/** The names and values of one audit, the same in every report for programs. */
final class JsonAudit {
  private JsonAudit() {}

  static void write(Json json, Report report) throws IOException {
    Audit audit = report.audit();
    json.text("plan", audit.plan());
    json.text("log", audit.log());
    json.date("asOf", audit.asOf());
    json.text("athlete", audit.athlete());
    json.text("event", audit.event());
    json.date("raceDate", audit.raceDate());
    json.count("daysToGo", audit.daysToGo());
    json.date("logEnds", audit.logEnds());
    json.truth("complete", report.complete());
    json.each(
        "findings",
        report.ranked(),
        (inner, one) -> write(inner, one.finding(), one.order(), one.since()));
    if (report.compared()) {
      json.each("gone", report.gone(), JsonAudit::write);
    }
    writeOutcomes(json, audit);
    json.text("preset", audit.preset().preset().word());
    json.texts(
        "settings",
        audit.settings().stream()
            .map(change -> change.by() + ": " + change.rule() + " " + change.change())
            .toList());
    json.texts("notDeclared", audit.notDeclared());
    json.texts("remarks", audit.remarks());
    json.object(
        "summary",
        inner -> {
          write(inner, report.tally());
          if (report.compared()) {
            inner.count("new", report.count(Since.NEW));
            inner.count("known", report.count(Since.KNOWN));
            inner.count("gone", report.gone().size());
          }
        });
  }

  /** What was found earlier and is no more. */
  static void write(Json json, Gone gone) throws IOException {
    json.text("rule", gone.rule());
    json.text("severity", gone.severity().name());
    json.text("title", gone.title());
    json.text("now", gone.now());
    json.places("where", List.of(gone.place()));
    json.text("fingerprint", gone.fingerprint());
  }

  /** An accepted finding has no rank, so no {@code order}. */
  private static void write(
      Json json, Finding finding, @Nullable Integer order, @Nullable Since since)
      throws IOException {
    json.text("rule", finding.rule());
    json.text("severity", finding.severity().name());
    json.text("hold", finding.hold() == null ? null : finding.hold().word());
    if (order != null) {
      json.count("order", order);
    }
    if (since != null) {
      json.text("since", since.word());
    }
    json.text("theme", finding.theme());
    json.text("title", finding.title());
    json.text("why", finding.why());
    json.text("do", finding.remedy());
    json.text("care", finding.care());
    json.object(
        "evidence",
        evidence -> {
          evidence.text("grade", finding.grade());
          evidence.text(
              "source", finding.sources().isEmpty() ? null : String.join("; ", finding.sources()));
        });
    json.object(
        "values",
        values -> {
          for (Map.Entry<String, Value> value : new TreeMap<>(finding.values()).entrySet()) {
            values.object(value.getKey(), inner -> write(inner, value.getValue()));
          }
        });
    json.each("where", finding.where(), JsonAudit::write);
    json.text("fingerprint", finding.fingerprint());
  }

  private static void write(Json json, Value value) throws IOException {
    Double number = value.number();
    if (number == null || !Double.isFinite(number)) {
      json.text("value", value.text());
    } else {
      json.number("value", number);
    }
    json.text("unit", value.unit());
  }

  private static void write(Json json, Location location) throws IOException {
    json.text("file", location.place().file());
    json.count("line", location.place().line());
    json.count("column", location.place().column());
    json.date("date", location.date());
    json.date("week", location.week());
  }

  private static void writeOutcomes(Json json, Audit audit) throws IOException {
    json.each(
        "notJudged",
        audit.notJudged(),
        (inner, rule) -> {
          inner.text("rule", rule.rule());
          inner.texts("missing", rule.missing());
          inner.truth("canHold", rule.canHold());
        });
    json.each(
        "accepted",
        audit.accepted(),
        (inner, accepted) -> {
          write(inner, accepted.finding(), null, null);
          inner.text("because", accepted.because());
          inner.text("by", accepted.by());
          inner.date("until", accepted.until());
        });
    json.each(
        "silenced",
        audit.silenced(),
        (inner, rule) -> {
          inner.text("rule", rule.rule());
          inner.text("because", rule.because());
          inner.truth("canHold", rule.hold());
        });
    json.each(
        "notForThisPlan",
        audit.notForThisPlan(),
        (inner, rule) -> {
          inner.text("rule", rule.rule());
          inner.text("because", rule.because());
        });
    json.texts("clear", audit.clear());
  }

  private static void write(Json json, Tally tally) throws IOException {
    json.count("rules", tally.rules());
    for (Severity severity : Severity.values()) {
      json.count(severity.name().toLowerCase(Locale.ROOT), tally.found(severity));
    }
    json.count("clear", tally.clear());
    json.count("notJudged", tally.notJudged());
    json.count("notForThisPlan", tally.notForThisPlan());
    json.count("silenced", tally.silenced());
    json.count("accepted", tally.accepted());
  }
}
