package peakproof.intake;

import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import peakproof.document.ColumnMapping;
import peakproof.document.ColumnMapping.Field;
import peakproof.document.Fault;
import peakproof.document.Nearest;
import peakproof.document.Place;
import peakproof.document.Quantity;
import peakproof.document.Sport;
import peakproof.document.YamlValue;

/** Makes sessions of a table's rows. Every cell that cannot be read is told, in one go. */
public final class CsvSessions {
  private static final int NOTE_LENGTH = 500;

  private final ColumnMapping mapping;
  private final Defaults defaults;
  private final boolean planned;
  private final Cells cells;
  private final CsvTable table;
  private final Map<Field, Integer> columns = new EnumMap<>(Field.class);
  private int width;
  private final List<Incoming> sessions = new ArrayList<>();
  private final List<Received.Passed> passed = new ArrayList<>();
  private final List<Fault> faults = new ArrayList<>();

  /**
   * What holds for every row that does not say it.
   *
   * @param zone where the athlete was; wins over the mapping's
   */
  public record Defaults(@Nullable ZoneId zone, @Nullable Sport sport, @Nullable String where) {}

  private CsvSessions(
      CsvTable table, ColumnMapping mapping, Defaults defaults, boolean planned) {
    this.table = table;
    this.mapping = mapping;
    this.defaults = defaults;
    this.planned = planned;
    this.cells = new Cells(mapping, defaults.zone() == null ? mapping.zone() : defaults.zone());
  }

  /** Reads what was done, for a log. */
  public static Received done(
      String file, byte[] bytes, ColumnMapping mapping, Defaults defaults) {
    return read(file, bytes, mapping, defaults, false);
  }

  /** Reads what is planned, for a plan: a set line or a duration, and nothing measured. */
  public static Received planned(
      String file, byte[] bytes, ColumnMapping mapping, Defaults defaults) {
    return read(file, bytes, mapping, defaults, true);
  }

  private static Received read(
      String file, byte[] bytes, ColumnMapping mapping, Defaults defaults, boolean planned) {
    CsvTable table = CsvTable.read(file, bytes, mapping.delimiter());
    if (table.fault() != null) {
      return Received.wrong(List.of(table.fault()));
    }
    CsvSessions reader = new CsvSessions(table, mapping, defaults, planned);
    if (table.rows().isEmpty()) {
      return Received.wrong(
          List.of(
              new Fault(
                  new Place(file, 1, 1),
                  "this table is empty",
                  "expected a line with the names of the columns and one for each session",
                  "export it again")));
    }
    reader.heading(table.rows().get(0));
    if (reader.faults.isEmpty()) {
      table.rows().stream().skip(1).forEach(reader::row);
    }
    return reader.faults.isEmpty()
        ? new Received(reader.sessions, reader.passed, List.of())
        : Received.wrong(reader.faults.stream().sorted().toList());
  }

  private void heading(CsvTable.Row heading) {
    List<String> names = heading.cells().stream().map(String::strip).toList();
    width = names.size();
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
    boolean sport = columns.containsKey(Field.SPORT) || defaults.sport() != null;
    if (faults.isEmpty() && (!columns.containsKey(Field.DATE) || !sport)) {
      faults.add(
          new Fault(
              table.place(heading, 0),
              "no column is named '" + (columns.containsKey(Field.DATE) ? "sport" : "date") + "'",
              "expected the columns "
                  + (planned ? "date, sport and session" : "date, sport and duration or distance"),
              mapping.written()
                  ? "name it below 'columns:' of the mapping, or give --sport"
                  : "say with --mapping FILE which column is which"));
    }
  }

  private void missing(List<String> names, Field field, ColumnMapping.Column column) {
    faults.add(
        new Fault(
            java.util.Objects.requireNonNull(column.place()),
            "the table has no column '" + column.name() + "' for " + field.word(),
            "expected one of: " + shortened(String.join(", ", names)),
            Nearest.advice(
                column.name(), names, "write its name as in the table's first line; is the delimiter right?")));
  }

  private void twice(CsvTable.Row heading, List<String> names, ColumnMapping.Column column) {
    faults.add(
        new Fault(
            table.place(heading, names.lastIndexOf(column.name().strip())),
            "a second column '" + column.name() + "'",
            "expected each name once",
            "rename one of the two"));
  }

  private void row(CsvTable.Row row) {
    int before = faults.size();
    List<String> beyond = row.cells().subList(Math.min(width, row.cells().size()), row.cells().size());
    if (beyond.stream().anyMatch(cell -> !cell.isBlank())) {
      faults.add(
          new Fault(
              table.place(row, width),
              "this row has " + row.cells().size() + " cells, the heading " + width,
              "expected a cell for each column",
              "put a cell that holds a '" + mapping.delimiter() + "' in double quotes"));
      return;
    }
    ColumnMapping.SportWord word = sport(row);
    Sport sport = word == null ? null : word.sport();
    if (word != null && sport == null) {
      pass(row, text(row, Field.SPORT), "the mapping skips it");
      return;
    }
    Cells.Moment moment = moment(row);
    LocalTime at = cell(row, Field.AT, cells::timeOfDay);
    if (sport == null || moment == null) {
      return;
    }
    YamlValue.Keys keys = planned ? line(row, sport) : amounts(row, sport);
    keys = planned ? keys : measured(row, keys);
    String where = place(row, word);
    keys = where == null ? keys : keys.with("where", where);
    LocalTime start = at == null ? moment.time() : at;
    boolean known = start != null && !(at == null && start.equals(LocalTime.MIDNIGHT));
    keys = known ? keys.with("at", start.withSecond(0).withNano(0).toString()) : keys;
    String note = note(text(row, Field.NOTE));
    keys = note.isEmpty() ? keys : keys.with("note", note);
    if (faults.size() > before) {
      return;
    }
    if (keys.get(sport.word()) == null) {
      pass(row, sport.word(), planned ? "neither a set line nor a duration" : sport.racing() ? "neither duration nor distance" : "no duration");
    } else {
      sessions.add(new Incoming(place(row), moment.date(), sport, keys));
    }
  }

  private Cells.@Nullable Moment moment(CsvTable.Row row) {
    if (text(row, Field.DATE).isEmpty()) {
      faults.add(
          new Fault(
              place(row, Field.DATE),
              "this row has no date",
              "expected the day of the session",
              "write it, or delete the row"));
      return null;
    }
    return cell(row, Field.DATE, cells::moment);
  }

  private ColumnMapping.@Nullable SportWord sport(CsvTable.Row row) {
    String text = text(row, Field.SPORT);
    ColumnMapping.SportWord mapped = mapping.sports().get(text.toLowerCase(Locale.ROOT));
    if (mapped != null) {
      return mapped;
    }
    for (Sport sport : Sport.values()) {
      if (sport.word().equals(text.toLowerCase(Locale.ROOT))) {
        return new ColumnMapping.SportWord(sport, null);
      }
    }
    if (text.isEmpty() && defaults.sport() != null) {
      return new ColumnMapping.SportWord(defaults.sport(), null);
    }
    faults.add(
        new Fault(
            place(row, Field.SPORT),
            text.isEmpty() ? "this row has no sport" : "'" + text + "' is no sport that is known here",
            "expected swim, bike, run, strength or other, or a word of the mapping",
            text.isEmpty()
                ? "write it, or give --sport"
                : "add '" + text + ": run' (or another, or skip) below 'sports:' of the mapping"));
    return null;
  }

  /** The session's set line, or its duration or distance. */
  private YamlValue.Keys line(CsvTable.Row row, Sport sport) {
    String line = text(row, Field.SESSION);
    if (line.isEmpty()) {
      return amounts(row, sport);
    }
    Quantity<?> read =
        sport.racing()
            ? peakproof.document.SetLines.read(line, sport)
            : Quantity.amount(line.split("\\s+", 2)[0], sport, false);
    if (read instanceof Quantity.NotThat<?> not) {
      faults.add(not.at(place(row, Field.SESSION)));
    }
    return YamlValue.Keys.NONE.with(sport.word(), line);
  }

  private YamlValue.Keys amounts(CsvTable.Row row, Sport sport) {
    ColumnMapping.Column duration = mapping.columns().get(Field.DURATION);
    Double seconds =
        duration == null
            ? null
            : cell(row, Field.DURATION, text -> cells.seconds(text, duration.unit()));
    String distance = united(row, Field.DISTANCE);
    boolean timed = seconds != null && Math.round(seconds) > 0;
    YamlValue.Keys keys = YamlValue.Keys.NONE;
    if (timed) {
      String words = sport == Sport.OTHER && !planned ? " " + otherWord(row) : "";
      keys = keys.with(sport.word(), (Amounts.duration(seconds) + words).strip());
    }
    if (distance != null && !(planned && timed) && (timed || sport.racing())) {
      check(row, Field.DISTANCE, Quantity.distance(distance));
      keys = keys.with(timed ? "distance" : sport.word(), distance);
    }
    return keys;
  }

  /** What the table calls it, in letters a log can have after the duration. */
  private String otherWord(CsvTable.Row row) {
    String word = text(row, Field.SPORT).toLowerCase(Locale.ROOT);
    return word.equals("other") || !word.matches("\\p{L}[\\p{L}\\p{N} -]{0,40}") ? "" : word;
  }

  private YamlValue.Keys measured(CsvTable.Row row, YamlValue.Keys amounts) {
    YamlValue.Keys keys = amounts;
    keys = measure(row, keys, Field.RPE, "", Quantity::rating);
    keys = measure(row, keys, Field.HEART_RATE, "bpm", Quantity::heartRate);
    keys = measure(row, keys, Field.POWER, "W", Quantity::power);
    String climb = united(row, Field.CLIMB);
    if (climb != null) {
      check(row, Field.CLIMB, Quantity.length(climb));
      keys = keys.with("climb", climb);
    }
    return keys;
  }

  /** A mean; tables write 0 where nothing was measured or rated. */
  private YamlValue.Keys measure(
      CsvTable.Row row, YamlValue.Keys keys, Field field, String unit, Function<Double> read) {
    String text = text(row, field);
    Double number = cells.number(text);
    if (text.isEmpty() || (number != null && number == 0)) {
      return keys;
    }
    String written =
        number == null ? text : Amounts.decimal(number, unit.isEmpty() ? 6 : 0) + unit;
    check(row, field, read.of(written));
    return keys.with(field.word(), written);
  }

  /** A number with the unit of its column; null when the cell is empty or 0. */
  private @Nullable String united(CsvTable.Row row, Field field) {
    ColumnMapping.Column column = mapping.columns().get(field);
    String text = text(row, field);
    Double number = cells.number(text);
    if (column == null || text.isEmpty() || (number != null && number == 0 && field != Field.CLIMB)) {
      return null;
    }
    boolean bare = number != null && column.unit() != null;
    return bare ? Amounts.decimal(number, 3) + column.unit() : cells.plain(text);
  }

  private @Nullable String place(CsvTable.Row row, ColumnMapping.SportWord word) {
    String text = text(row, Field.WHERE);
    String mapped = mapping.places().get(text.toLowerCase(Locale.ROOT));
    if (mapped != null || text.isEmpty()) {
      return mapped != null ? mapped : word.where() != null ? word.where() : defaults.where();
    }
    Quantity<String> place = Quantity.whereabouts(text);
    if (place instanceof Quantity.NotThat<String> not) {
      faults.add(
          new Fault(
              place(row, Field.WHERE),
              not.what(),
              not.expected(),
              "add '" + text + ": pool' (or another) below 'places:' of the mapping"));
    }
    return place.orNull();
  }

  private static String note(String text) {
    StringBuilder note = new StringBuilder();
    text.codePoints()
        .map(c -> Character.isWhitespace(c) || Character.isISOControl(c) ? ' ' : c)
        .filter(c -> Character.isDefined(c) && Character.getType(c) != Character.SURROGATE && Character.getType(c) != Character.FORMAT && Character.getType(c) != Character.PRIVATE_USE)
        .limit(NOTE_LENGTH)
        .forEach(note::appendCodePoint);
    return note.toString().replaceAll(" +", " ").strip();
  }

  /** How a text is read. */
  @FunctionalInterface
  private interface Function<T> {
    Quantity<T> of(String text);
  }

  private <T> @Nullable T cell(CsvTable.Row row, Field field, Function<T> read) {
    String text = text(row, field);
    return text.isEmpty() ? null : check(row, field, read.of(text));
  }

  private <T> @Nullable T check(CsvTable.Row row, Field field, Quantity<T> quantity) {
    if (quantity instanceof Quantity.NotThat<T> not) {
      faults.add(not.at(place(row, field)));
    }
    return quantity.orNull();
  }

  private String text(CsvTable.Row row, Field field) {
    Integer column = columns.get(field);
    return column == null || column >= row.cells().size() ? "" : row.cells().get(column).strip();
  }

  private void pass(CsvTable.Row row, String what, String why) {
    passed.add(new Received.Passed(place(row), what, why));
  }

  private Place place(CsvTable.Row row) {
    return table.place(row, 0);
  }

  private Place place(CsvTable.Row row, Field field) {
    return table.place(row, columns.getOrDefault(field, 0));
  }

  private static String shortened(String text) {
    return text.length() <= 200 ? text : text.substring(0, 200) + " …";
  }
}
