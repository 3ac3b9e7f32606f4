package peakproof.document;

import java.nio.file.Path;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * How a table of sessions is written: which column says what, in which unit and order.
 *
 * @param decimalComma true where 8,9 is eight and nine tenths
 * @param zone where an instant's local day is taken; null when the table has no instants
 * @param columns by what they say
 * @param sports what words for sports mean, in small letters
 * @param places what words for places to train mean, in small letters
 * @param written false when nobody wrote it and every column has the name of what it says
 */
public record ColumnMapping(
    char delimiter,
    boolean decimalComma,
    DateOrder dates,
    @Nullable ZoneId zone,
    Map<Field, Column> columns,
    Map<String, SportWord> sports,
    Map<String, String> places,
    boolean written) {

  /** The order of a date's parts; stated, since 03/04 can be either. */
  public enum DateOrder {
    YEAR_MONTH_DAY,
    DAY_MONTH_YEAR,
    MONTH_DAY_YEAR;

    /** The word in a mapping: {@code day-month-year}. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  /**
   * What a column can say; the word is that of a log, and of the column when there is no mapping.
   */
  public enum Field {
    DATE,
    AT,
    SPORT,
    SESSION,
    DURATION,
    DISTANCE,
    RPE,
    HEART_RATE,
    POWER,
    CLIMB,
    WHERE,
    NOTE;

    /** The word: {@code heart-rate}. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The units a column of bare numbers can have; none where there is no choice. */
    List<String> units() {
      return switch (this) {
        case DURATION -> List.of("s", "min", "h", "mm:ss", "h:mm", "h:mm:ss");
        case DISTANCE -> List.of("m", "km", "mi", "yd");
        case CLIMB -> List.of("m", "ft");
        default -> List.of();
      };
    }
  }

  /**
   * A column.
   *
   * @param name as it stands in the table's first line
   * @param unit of its numbers; null when each says its own, as in a log
   */
  public record Column(String name, @Nullable String unit, @Nullable Place place) {}

  /**
   * What a word for a sport means.
   *
   * @param sport null for what is to be left out
   * @param where the place to train that the word says too; null for none
   */
  public record SportWord(@Nullable Sport sport, @Nullable String where) {}

  /** A mapping that was read; null beside its faults. */
  public record Read(@Nullable ColumnMapping mapping, List<Fault> faults) {}

  /** The one for a table that is written in a log's own words. */
  public static ColumnMapping plain() {
    Map<Field, Column> columns = new EnumMap<>(Field.class);
    Arrays.stream(Field.values())
        .forEach(field -> columns.put(field, new Column(field.word(), null, null)));
    return new ColumnMapping(
        ',', false, DateOrder.YEAR_MONTH_DAY, null, columns, Map.of(), Map.of(), false);
  }

  /** Reads a mapping file. */
  public static Read read(Path file) {
    return ColumnMappingReader.read(file);
  }
}
