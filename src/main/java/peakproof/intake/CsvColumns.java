package peakproof.intake;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import peakproof.document.ColumnMapping;
import peakproof.document.ColumnMapping.Field;
import peakproof.document.Fault;
import peakproof.document.Nearest;
import peakproof.document.Place;
import peakproof.document.Quantity;

/** Finds a table's columns by its heading, and reads their cells; what is wrong is collected. */
final class CsvColumns {
  private final CsvTable table;
  private final ColumnMapping mapping;
  private final int width;
  private final Map<Field, Integer> columns = new EnumMap<>(Field.class);
  private final List<Fault> faults = new ArrayList<>();

  /**
   * @param heading the table's first row
   */
  CsvColumns(CsvTable table, ColumnMapping mapping, CsvTable.Row heading) {
    this.table = table;
    this.mapping = mapping;
    this.width = heading.cells().size();
    find(heading);
  }

  private void find(CsvTable.Row heading) {
    List<String> names = heading.cells().stream().map(String::strip).toList();
    mapping
        .columns()
        .forEach(
            (field, column) -> {
              int index = names.indexOf(column.name().strip());
              if (index >= 0) {
                columns.put(field, index);
                if (names.lastIndexOf(column.name().strip()) != index) {
                  twice(heading, names, column);
                }
              } else if (column.place() != null) {
                missing(names, field, column);
              }
            });
  }

  private void missing(List<String> names, Field field, ColumnMapping.Column column) {
    faults.add(
        new Fault(
            Objects.requireNonNull(column.place()),
            "the table has no column '" + column.name() + "' for " + field.word(),
            "expected one of: " + shortened(String.join(", ", names)),
            Nearest.advice(
                column.name(),
                names,
                "write its name as in the table's first line; is the delimiter right?")));
  }

  private void twice(CsvTable.Row heading, List<String> names, ColumnMapping.Column column) {
    faults.add(
        new Fault(
            table.place(heading, names.lastIndexOf(column.name().strip())),
            "a second column '" + column.name() + "'",
            "expected each name once",
            "rename one of the two"));
  }

  /** Tells a fault when the table does not say the day, or not the sport. */
  void demand(boolean sportKnown, String expected, CsvTable.Row heading) {
    boolean dated = columns.containsKey(Field.DATE);
    if (faults.isEmpty() && !(dated && (sportKnown || columns.containsKey(Field.SPORT)))) {
      faults.add(
          new Fault(
              table.place(heading, 0),
              "no column is named '" + (dated ? "sport" : "date") + "'",
              "expected the columns " + expected,
              mapping.written()
                  ? "name it below 'columns:' of the mapping, or give --sport"
                  : "say with --mapping FILE which column is which"));
    }
  }

  /** False, and a fault told, when a row has more cells than there are columns. */
  boolean fits(CsvTable.Row row) {
    int cells = row.cells().size();
    List<String> beyond = row.cells().subList(Math.min(width, cells), cells);
    boolean fits = beyond.stream().allMatch(String::isBlank);
    if (!fits) {
      faults.add(
          new Fault(
              table.place(row, width),
              "this row has " + cells + " cells, the heading " + width,
              "expected a cell for each column",
              "put a cell that holds a '" + mapping.delimiter() + "' in double quotes"));
    }
    return fits;
  }

  List<Fault> faults() {
    return faults;
  }

  void tell(CsvTable.Row row, Field field, String what, String expected, String instead) {
    faults.add(new Fault(place(row, field), what, expected, instead));
  }

  /** What a cell reads as; null when it is empty, or a fault was told. */
  <T> @Nullable T read(CsvTable.Row row, Field field, Function<String, Quantity<T>> read) {
    String text = text(row, field);
    return text.isEmpty() ? null : check(row, field, read.apply(text));
  }

  /** The value; null, and a fault told at the cell, when it is none. */
  <T> @Nullable T check(CsvTable.Row row, Field field, Quantity<T> quantity) {
    if (quantity instanceof Quantity.NotThat<T> not) {
      faults.add(not.at(place(row, field)));
    }
    return quantity.orNull();
  }

  /** A cell's text; empty when there is no such cell. */
  String text(CsvTable.Row row, Field field) {
    Integer column = columns.get(field);
    return column == null || column >= row.cells().size() ? "" : row.cells().get(column).strip();
  }

  Place place(CsvTable.Row row, Field field) {
    return table.place(row, columns.getOrDefault(field, 0));
  }

  private static String shortened(String text) {
    return text.length() <= 200 ? text : text.substring(0, 200) + " …";
  }
}
