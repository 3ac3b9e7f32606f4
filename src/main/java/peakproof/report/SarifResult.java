package peakproof.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Audit;
import peakproof.audit.Audit.AcceptedFinding;
import peakproof.audit.Comparison.Since;
import peakproof.audit.Finding;
import peakproof.audit.Finding.Location;
import peakproof.audit.Gone;
import peakproof.document.Place;
import peakproof.rule.Severity;

/** One finding as a SARIF result. */
final class SarifResult {
  /** The folder that relative files are named from. */
  static final String BASE = "%SRCROOT%";

  private static final String FINGERPRINT = "peakproof/v1";

  private final Audit audit;

  SarifResult(Audit audit) {
    this.audit = audit;
  }

  static String level(Severity severity) {
    return switch (severity) {
      case HOLD -> "error";
      case FIX, ASK -> "warning";
      case NOTE -> "note";
    };
  }

  /** A result of an earlier run that this one does not have. */
  static void writeAbsent(Json json, Gone gone) throws IOException {
    json.text("ruleId", gone.rule());
    json.text("level", level(gone.severity()));
    json.text("baselineState", "absent");
    SarifRules.message(
        json, "message", gone.severity() + ": " + gone.title() + ". Gone: " + gone.now() + ".");
    json.each("locations", List.of(gone.place()), SarifResult::writePlace);
    json.object("partialFingerprints", inner -> inner.text(FINGERPRINT, gone.fingerprint()));
  }

  void write(Json json, Finding finding, @Nullable Since since, @Nullable AcceptedFinding accepted)
      throws IOException {
    json.text("ruleId", finding.rule());
    if (since != null) {
      json.text("baselineState", since == Since.NEW ? "new" : "unchanged");
    }
    json.text("level", level(finding.severity()));
    SarifRules.message(json, "message", text(finding));
    List<Location> where = finding.where();
    json.each("locations", where.subList(0, 1), (inner, one) -> writePlace(inner, one.place()));
    if (where.size() > 1) {
      json.each(
          "relatedLocations",
          where.subList(1, where.size()),
          (inner, place) -> {
            writePlace(inner, place.place());
            SarifRules.message(inner, "message", time(place) + place(place));
          });
    }
    json.object("partialFingerprints", inner -> inner.text(FINGERPRINT, finding.fingerprint()));
    if (accepted != null) {
      json.each("suppressions", List.of(accepted), SarifResult::writeSuppression);
    }
    json.object(
        "properties",
        inner -> {
          inner.text("severity", finding.severity().name());
          inner.text("theme", finding.theme());
          inner.text("athlete", audit.athlete());
          inner.count("daysToGo", audit.daysToGo());
        });
  }

  private String text(Finding finding) {
    List<String> parts = new ArrayList<>();
    parts.add(finding.severity() + ": " + finding.title() + ".");
    parts.add(finding.why());
    parts.add("Do: " + finding.remedy());
    if (finding.care() != null) {
      parts.add("Care: " + finding.care());
    }
    return String.join("\n", parts);
  }

  /** The plan itself holds what its coach accepts. */
  private static void writeSuppression(Json json, AcceptedFinding accepted) throws IOException {
    json.text("kind", "inSource");
    json.text("status", "accepted");
    json.text(
        "justification",
        accepted.because()
            + (accepted.by() == null ? "" : ", by " + accepted.by())
            + (accepted.until() == null ? "" : ", until " + Dates.full(accepted.until())));
  }

  private static void writePlace(Json json, Place place) throws IOException {
    String file = place.file();
    json.object(
        "physicalLocation",
        physical -> {
          physical.object(
              "artifactLocation",
              artifact -> {
                artifact.text("uri", FileUri.of(file));
                if (!FileUri.isAbsolute(file)) {
                  artifact.text("uriBaseId", BASE);
                }
              });
          physical.object(
              "region",
              region -> {
                region.count("startLine", place.line());
                region.count("startColumn", place.column());
              });
        });
  }

  private String time(Location location) {
    if (location.date() != null) {
      return Dates.day(location.date(), audit.raceDate()) + ", ";
    }
    return location.week() == null ? "" : Dates.week(location.week(), audit.raceDate()) + ", ";
  }

  private static String place(Location location) {
    return location.place().file() + ":" + location.place().line();
  }
}
