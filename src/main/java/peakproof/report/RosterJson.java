package peakproof.report;

import java.io.IOException;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import peakproof.fact.KeySession;
import peakproof.rule.Severity;

/** A roster for programs. Names and shape are a promise, to which later versions only add. */
public final class RosterJson {
  private RosterJson() {}

  /** The same bytes for the same audits. */
  public static String of(Roster roster, String program) {
    return Json.of(
        json -> {
          json.count("format", JsonReport.FORMAT);
          json.text("program", program);
          json.date("since", roster.since());
          json.count("plans", roster.plans());
          json.texts("notAudited", roster.notAudited());
          json.each("inCommon", roster.shared(), RosterJson::write);
          json.each("athletes", roster.rows(), RosterJson::write);
        });
  }

  private static void write(Json json, Shared shared) throws IOException {
    json.text("rule", shared.rule());
    json.text("theme", shared.theme());
    json.text("severity", shared.severity().name());
    json.text("title", shared.title());
    json.count("athletes", shared.athletes());
    json.count("of", shared.of());
    json.text("message", shared.message());
  }

  private static void write(Json json, Roster.Row row) throws IOException {
    RosterLine line = row.line();
    Severity worst = line.rank().heaviest();
    json.text("plan", line.plan());
    json.text("log", line.log());
    json.text("page", row.page());
    json.text("athlete", line.athlete());
    json.text("event", line.event());
    json.date("raceDate", line.raceDate());
    json.date("asOf", line.asOf());
    json.count("daysToGo", line.daysToGo());
    json.date("logEnds", line.logEnds());
    json.truth("complete", line.complete());
    json.text("worst", worst == null ? null : worst.name());
    writeFirst(json, line.first());
    json.object(
        "found",
        found -> {
          for (Severity severity : Severity.values()) {
            found.count(severity.name().toLowerCase(Locale.ROOT), line.found(severity));
          }
        });
    writeNext(json, line.next());
    writeSince(json, line.since());
  }

  private static void write(Json json, Headline headline) throws IOException {
    json.text("rule", headline.rule());
    json.text("theme", headline.theme());
    json.text("severity", headline.severity().name());
    json.text("hold", headline.hold() == null ? null : headline.hold().word());
    json.text("title", headline.title());
    json.text("fingerprint", headline.fingerprint());
  }

  private static void writeFirst(Json json, @Nullable Headline first) throws IOException {
    if (first == null) {
      json.text("first", null);
    } else {
      json.object("first", inner -> write(inner, first));
    }
  }

  private static void writeNext(Json json, @Nullable KeySession next) throws IOException {
    if (next == null) {
      json.text("nextKeySession", null);
      return;
    }
    json.object(
        "nextKeySession",
        inner -> {
          inner.date("date", next.date());
          inner.text("sport", next.sport().word());
          inner.text("kind", next.kind().word());
          inner.text("session", next.label());
          inner.number("minutes", next.minutes());
        });
  }

  /** Not compared: all three lists are null. */
  private static void writeSince(Json json, @Nullable SinceDay since) throws IOException {
    if (since == null || !since.compared()) {
      json.text("new", null);
      json.text("heavier", null);
      json.text("gone", null);
      return;
    }
    json.each("new", since.added(), RosterJson::write);
    json.each("heavier", since.heavier(), RosterJson::write);
    json.each("gone", since.gone(), RosterJson::write);
  }
}
