package peakproof.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Audit;
import peakproof.audit.Finding;
import peakproof.audit.Finding.Location;
import peakproof.audit.Finding.Value;
import peakproof.report.Report.Judgement;
import peakproof.rule.Severity;

/**
 * The report for programs: every finding, whatever the reader chose to see. Names and shape are a
 * promise, to which later versions only add.
 */
public final class JsonReport {
  private static final int FORMAT = 1;

  private final JsonGenerator json;

  private JsonReport(JsonGenerator json) {
    this.json = json;
  }

  /** The whole report, the same bytes for the same audits. */
  public static String of(Report report, String program) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.setPrettyPrinter(layout());
      new JsonReport(json).write(report, program);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return text.append('\n').toString();
  }

  private static DefaultPrettyPrinter layout() {
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    return new DefaultPrettyPrinter(
            Separators.createDefaultInstance()
                .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
                .withObjectEmptySeparator("")
                .withArrayEmptySeparator(""))
        .withObjectIndenter(indenter)
        .withArrayIndenter(indenter);
  }

  private void write(Report report, String program) throws IOException {
    json.writeStartObject();
    json.writeNumberField("format", FORMAT);
    text("program", program);
    each("audits", report.judgements(), this::write);
    json.writeEndObject();
  }

  private void write(Judgement judgement) throws IOException {
    Audit audit = judgement.audit();
    text("plan", audit.plan());
    text("log", audit.log());
    date("asOf", audit.asOf());
    text("athlete", audit.athlete());
    text("event", audit.event());
    date("raceDate", audit.raceDate());
    json.writeNumberField("daysToGo", audit.daysToGo());
    date("logEnds", audit.logEnds());
    json.writeBooleanField("complete", judgement.complete());
    each("findings", judgement.ranked(), one -> write(one.finding(), one.order()));
    writeOutcomes(audit);
    texts(
        "settings",
        audit.settings().stream()
            .map(change -> change.by() + ": " + change.rule() + " " + change.change())
            .toList());
    texts("notDeclared", audit.notDeclared());
    texts("remarks", audit.remarks());
    write(judgement.tally());
  }

  /** An accepted finding has no rank, so no {@code order}. */
  private void write(Finding finding, @Nullable Integer order) throws IOException {
    text("rule", finding.rule());
    text("severity", finding.severity().name());
    text("hold", finding.hold() == null ? null : finding.hold().word());
    if (order != null) {
      json.writeNumberField("order", order);
    }
    text("theme", finding.theme());
    text("title", finding.title());
    text("why", finding.why());
    text("do", finding.remedy());
    text("care", finding.care());
    json.writeObjectFieldStart("evidence");
    text("grade", finding.grade());
    text("source", finding.sources().isEmpty() ? null : String.join("; ", finding.sources()));
    json.writeEndObject();
    json.writeObjectFieldStart("values");
    for (Map.Entry<String, Value> value : new TreeMap<>(finding.values()).entrySet()) {
      write(value.getKey(), value.getValue());
    }
    json.writeEndObject();
    each("where", finding.where(), this::write);
    text("fingerprint", finding.fingerprint());
  }

  private void write(String name, Value value) throws IOException {
    json.writeObjectFieldStart(name);
    Double number = value.number();
    if (number == null || !Double.isFinite(number)) {
      text("value", value.text());
    } else {
      json.writeFieldName("value");
      json.writeNumber(plain(number));
    }
    text("unit", value.unit());
    json.writeEndObject();
  }

  /** The shortest decimal that reads back as the same number, without an exponent. */
  private static String plain(double number) {
    return number == 0
        ? "0"
        : new BigDecimal(Double.toString(number)).stripTrailingZeros().toPlainString();
  }

  private void write(Location location) throws IOException {
    text("file", location.place().file());
    json.writeNumberField("line", location.place().line());
    json.writeNumberField("column", location.place().column());
    date("date", location.date());
    date("week", location.week());
  }

  private void writeOutcomes(Audit audit) throws IOException {
    each(
        "notJudged",
        audit.notJudged(),
        rule -> {
          text("rule", rule.rule());
          texts("missing", rule.missing());
          json.writeBooleanField("canHold", rule.canHold());
        });
    each(
        "accepted",
        audit.accepted(),
        accepted -> {
          write(accepted.finding(), null);
          text("because", accepted.because());
          text("by", accepted.by());
          date("until", accepted.until());
        });
    each(
        "silenced",
        audit.silenced(),
        rule -> {
          text("rule", rule.rule());
          text("because", rule.because());
          json.writeBooleanField("canHold", rule.hold());
        });
    each(
        "notForThisPlan",
        audit.notForThisPlan(),
        rule -> {
          text("rule", rule.rule());
          text("because", rule.because());
        });
    texts("clear", audit.clear());
  }

  private void write(Tally tally) throws IOException {
    json.writeObjectFieldStart("summary");
    json.writeNumberField("rules", tally.rules());
    for (Severity severity : Severity.values()) {
      json.writeNumberField(severity.name().toLowerCase(Locale.ROOT), tally.found(severity));
    }
    json.writeNumberField("clear", tally.clear());
    json.writeNumberField("notJudged", tally.notJudged());
    json.writeNumberField("notForThisPlan", tally.notForThisPlan());
    json.writeNumberField("silenced", tally.silenced());
    json.writeNumberField("accepted", tally.accepted());
    json.writeEndObject();
  }

  /** Writes what is inside one object of an array. */
  @FunctionalInterface
  private interface Inside<T> {
    void write(T value) throws IOException;
  }

  private <T> void each(String name, List<T> values, Inside<T> inside) throws IOException {
    json.writeArrayFieldStart(name);
    for (T value : values) {
      json.writeStartObject();
      inside.write(value);
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void text(String name, @Nullable String value) throws IOException {
    if (value == null) {
      json.writeNullField(name);
    } else {
      json.writeStringField(name, value);
    }
  }

  private void date(String name, @Nullable LocalDate value) throws IOException {
    text(name, value == null ? null : value.toString());
  }

  private void texts(String name, List<String> values) throws IOException {
    json.writeArrayFieldStart(name);
    for (String value : values) {
      json.writeString(value);
    }
    json.writeEndArray();
  }
}
