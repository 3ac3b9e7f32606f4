package peakproof.report;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Workup;
import peakproof.document.Place;
import peakproof.fact.Measured;

/** Every computed number as a table for a spreadsheet, RFC 4180. */
public final class MeasuresCsv {
  private static final List<String> SCOPES = List.of("week", "day", "sport", "leg", "session");

  /** A cell that begins so would be run as a formula. */
  private static final String FORMULA = "=+-@\t\r";

  private MeasuresCsv() {}

  /** The whole table with a line of names above it. */
  public static String of(Workup workup) {
    StringWriter text = new StringWriter();
    try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text)) {
      csv.writeRecord(
          "name",
          "week",
          "day",
          "sport",
          "leg",
          "session",
          "value",
          "unit",
          "coverage",
          "from",
          "unknown");
      for (Measured value : workup.values()) {
        csv.writeRecord(row(value, workup));
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return text.toString();
  }

  private static List<String> row(Measured value, Workup workup) {
    List<String> row = new ArrayList<>(List.of(value.name()));
    SCOPES.forEach(scope -> row.add(harmless(value.scope().getOrDefault(scope, ""))));
    row.add(number(value.value()));
    row.add(value.unit());
    row.add(number(value.coverage()));
    row.add(harmless(from(value, workup)));
    row.add(harmless(value.unknown() == null ? "" : value.unknown()));
    return row;
  }

  private static String from(Measured value, Workup workup) {
    return value.from().stream()
        .map(workup.positions()::of)
        .map(MeasuresCsv::place)
        .distinct()
        .collect(Collectors.joining(" "));
  }

  private static String place(Place place) {
    return place.file() + ":" + place.line();
  }

  private static String number(@Nullable Double value) {
    return value == null ? "" : Json.plain(value);
  }

  private static String harmless(String cell) {
    return !cell.isEmpty() && FORMULA.indexOf(cell.charAt(0)) >= 0 ? "'" + cell : cell;
  }
}
