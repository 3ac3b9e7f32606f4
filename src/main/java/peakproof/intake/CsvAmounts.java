package peakproof.intake;

import java.util.Locale;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import peakproof.document.ColumnMapping;
import peakproof.document.ColumnMapping.Field;
import peakproof.document.Quantity;
import peakproof.document.SetLines;
import peakproof.document.Sport;
import peakproof.document.YamlValue;

/** What a row says was done, or is planned, in the keys of a log or plan. */
final class CsvAmounts {
  private final CsvColumns columns;
  private final ColumnMapping mapping;
  private final Cells cells;
  private final boolean planned;

  CsvAmounts(CsvColumns columns, ColumnMapping mapping, Cells cells, boolean planned) {
    this.columns = columns;
    this.mapping = mapping;
    this.cells = cells;
    this.planned = planned;
  }

  /** The keys, the sport first; without it when the row has no amount. */
  YamlValue.Keys of(CsvTable.Row row, Sport sport) {
    return planned ? line(row, sport) : measured(row, amounts(row, sport));
  }

  /** The session's set line, or its duration or distance. */
  private YamlValue.Keys line(CsvTable.Row row, Sport sport) {
    String line = columns.text(row, Field.SESSION);
    if (line.isEmpty()) {
      return amounts(row, sport);
    }
    Quantity<?> read =
        sport.racing()
            ? SetLines.read(line, sport)
            : Quantity.amount(line.split("\\s+", 2)[0], sport, false);
    if (read instanceof Quantity.NotThat<?> not) {
      columns.check(row, Field.SESSION, not);
    }
    return YamlValue.Keys.NONE.with(sport.word(), line);
  }

  private YamlValue.Keys amounts(CsvTable.Row row, Sport sport) {
    ColumnMapping.Column duration = mapping.columns().get(Field.DURATION);
    Double seconds =
        duration == null
            ? null
            : columns.read(row, Field.DURATION, text -> cells.seconds(text, duration.unit()));
    String distance = united(row, Field.DISTANCE);
    boolean timed = false;
    YamlValue.Keys keys = YamlValue.Keys.NONE;
    if (seconds != null && Math.round(seconds) > 0) {
      timed = true;
      String words = sport == Sport.OTHER && !planned ? " " + otherWord(row) : "";
      keys = keys.with(sport.word(), (Amounts.duration(seconds) + words).strip());
    }
    if (distance != null && !(planned && timed) && (timed || sport.racing())) {
      columns.check(row, Field.DISTANCE, Quantity.distance(distance));
      keys = keys.with(timed ? "distance" : sport.word(), distance);
    }
    return keys;
  }

  /** What the table calls it, in letters a log can have after the duration. */
  private String otherWord(CsvTable.Row row) {
    String word = columns.text(row, Field.SPORT).toLowerCase(Locale.ROOT);
    return word.equals("other") || !word.matches("\\p{L}[\\p{L}\\p{N} -]{0,40}") ? "" : word;
  }

  private YamlValue.Keys measured(CsvTable.Row row, YamlValue.Keys amounts) {
    YamlValue.Keys keys = amounts;
    keys = measure(row, keys, Field.RPE, "", Quantity::rating);
    keys = measure(row, keys, Field.HEART_RATE, "bpm", Quantity::heartRate);
    keys = measure(row, keys, Field.POWER, "W", Quantity::power);
    String climb = united(row, Field.CLIMB);
    if (climb != null) {
      columns.check(row, Field.CLIMB, Quantity.length(climb));
      keys = keys.with("climb", climb);
    }
    return keys;
  }

  /** A mean; tables write 0 where nothing was measured or rated. */
  private YamlValue.Keys measure(
      CsvTable.Row row,
      YamlValue.Keys keys,
      Field field,
      String unit,
      Function<String, Quantity<Double>> read) {
    String text = columns.text(row, field);
    Double number = cells.number(text);
    if (text.isEmpty() || (number != null && number == 0)) {
      return keys;
    }
    String written = number == null ? text : Amounts.decimal(number, unit.isEmpty() ? 6 : 0) + unit;
    columns.check(row, field, read.apply(written));
    return keys.with(field.word(), written);
  }

  /** A number with the unit of its column; null when the cell is empty or 0. */
  private @Nullable String united(CsvTable.Row row, Field field) {
    ColumnMapping.Column column = mapping.columns().get(field);
    String text = columns.text(row, field);
    Double number = cells.number(text);
    if (column == null
        || text.isEmpty()
        || (number != null && number == 0 && field != Field.CLIMB)) {
      return null;
    }
    return number != null && column.unit() != null
        ? Amounts.decimal(number, 3) + column.unit()
        : cells.plain(text);
  }
}
