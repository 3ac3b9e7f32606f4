package peakproof.intake;

import de.siegmar.fastcsv.reader.CloseableIterator;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Fault;
import peakproof.document.Place;

/** A table as RFC 4180 writes it, with the place of every cell. */
final class CsvTable {
  private static final int ROW_LIMIT = 20_000;
  private static final int COLUMN_LIMIT = 500;

  private final String file;
  private final char delimiter;
  private final String text;
  private final List<String> lines;
  private final List<Row> rows = new ArrayList<>();
  private @Nullable Fault fault;

  private CsvTable(String file, char delimiter, String text) {
    this.file = file;
    this.delimiter = delimiter;
    this.text = text;
    this.lines = text.lines().toList();
  }

  /** A row: the line it begins on, counted from 1, and its cells. */
  record Row(int line, List<String> cells) {}

  /** Reads a file's bytes; whatever is wrong with them is {@link #fault}. */
  static CsvTable read(String file, byte[] bytes, char delimiter) {
    PlainText text = PlainText.of(file, bytes);
    CsvTable table = new CsvTable(file, delimiter, text.text());
    table.fault = text.fault();
    if (table.fault == null) {
      table.parse();
    }
    return table;
  }

  @Nullable Fault fault() {
    return fault;
  }

  /** The rows that say anything, the heading first. */
  List<Row> rows() {
    return rows;
  }

  private void parse() {
    CsvReader.CsvReaderBuilder builder =
        CsvReader.builder()
            .fieldSeparator(delimiter)
            .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
            .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
            .skipEmptyLines(true);
    int line = 1;
    try (CloseableIterator<CsvRecord> records = builder.ofCsvRecord(text).iterator()) {
      while (records.hasNext() && fault == null) {
        CsvRecord record = records.next();
        line = (int) record.getStartingLineNumber();
        take(line, record.getFields());
      }
    } catch (CsvParseException broken) {
      fault =
          new Fault(
              new Place(file, line, 1),
              "the table cannot be read from here on",
              "expected a quote that opens a cell to close it too, and nothing after it",
              "mend the quotes in this line or the next, or save the table again");
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  private void take(int line, List<String> cells) {
    if (rows.size() > ROW_LIMIT || cells.size() > COLUMN_LIMIT) {
      fault =
          new Fault(
              new Place(file, line, 1),
              "this table has more than "
                  + (rows.size() > ROW_LIMIT ? "20,000 rows" : COLUMN_LIMIT + " columns"),
              "expected the sessions of one athlete",
              "split it, or check that it is the right file");
    } else if (cells.stream().anyMatch(cell -> !cell.isBlank())) {
      rows.add(new Row(line, cells));
    }
  }

  /** Where a cell begins; the row's end when the row has fewer. */
  Place place(Row row, int cell) {
    int line = row.line();
    int before = 0;
    boolean quoted = false;
    while (line <= lines.size()) {
      int[] points = lines.get(line - 1).codePoints().toArray();
      for (int at = 0; at <= points.length; at++) {
        if (before == cell && !quoted) {
          return new Place(file, line, at + 1);
        }
        if (at < points.length && points[at] == '"') {
          quoted = !quoted;
        }
        before += at < points.length && points[at] == delimiter && !quoted ? 1 : 0;
      }
      if (!quoted) {
        return new Place(file, line, points.length + 1);
      }
      line++;
    }
    return new Place(file, row.line(), 1);
  }
}
