package peakproof.intake;

import java.time.LocalTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import peakproof.document.ColumnMapping;
import peakproof.document.ColumnMapping.Field;
import peakproof.document.Fault;
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
  private final CsvColumns columns;
  private final List<Incoming> sessions = new ArrayList<>();
  private final List<Received.Passed> passed = new ArrayList<>();

  /**
   * What holds for every row that does not say it.
   *
   * @param zone where the athlete was; wins over the mapping's
   */
  public record Defaults(@Nullable ZoneId zone, @Nullable Sport sport, @Nullable String where) {}

  private CsvSessions(CsvTable table, ColumnMapping mapping, Defaults defaults, boolean planned) {
    this.table = table;
    this.mapping = mapping;
    this.defaults = defaults;
    this.planned = planned;
    this.cells = new Cells(mapping, defaults.zone() == null ? mapping.zone() : defaults.zone());
    this.columns = new CsvColumns(table, mapping, table.rows().get(0));
  }

  /** Reads what was done, for a log. */
  public static Received done(String file, byte[] bytes, ColumnMapping mapping, Defaults defaults) {
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
    if (table.rows().isEmpty()) {
      return Received.wrong(
          List.of(
              new Fault(
                  new Place(file, 1, 1),
                  "this table is empty",
                  "expected a line with the names of the columns and one for each session",
                  "export it again")));
    }
    CsvSessions reader = new CsvSessions(table, mapping, defaults, planned);
    reader.rows();
    List<Fault> faults = reader.columns.faults();
    return faults.isEmpty()
        ? new Received(reader.sessions, reader.passed, List.of())
        : Received.wrong(faults.stream().sorted().toList());
  }

  private void rows() {
    columns.demand(
        defaults.sport() != null,
        planned ? "date, sport and session" : "date, sport and duration or distance",
        table.rows().get(0));
    if (columns.faults().isEmpty()) {
      table.rows().stream().skip(1).filter(columns::fits).forEach(this::row);
    }
  }

  private void row(CsvTable.Row row) {
    int before = columns.faults().size();
    ColumnMapping.SportWord word = sport(row);
    if (word != null && word.sport() == null) {
      pass(row, columns.text(row, Field.SPORT), "the mapping skips it");
      return;
    }
    Cells.Moment moment = moment(row);
    LocalTime at = columns.read(row, Field.AT, cells::timeOfDay);
    Sport sport = word == null ? null : word.sport();
    if (word == null || sport == null || moment == null) {
      return;
    }
    YamlValue.Keys keys = new CsvAmounts(columns, mapping, cells, planned).of(row, sport);
    String where = place(row, word);
    keys = where == null ? keys : keys.with("where", where);
    LocalTime start = at == null ? begun(moment) : at;
    keys = start == null ? keys : keys.with("at", start.truncatedTo(ChronoUnit.MINUTES).toString());
    String note = note(columns.text(row, Field.NOTE));
    keys = note.isEmpty() ? keys : keys.with("note", note);
    if (columns.faults().size() > before) {
      return;
    }
    if (keys.get(sport.word()) == null) {
      pass(
          row,
          sport.word(),
          planned
              ? "neither a set line nor a duration"
              : sport.racing() ? "neither duration nor distance" : "no duration");
    } else {
      sessions.add(new Incoming(place(row), moment.date(), sport, keys));
    }
  }

  /** A day alone is often written with midnight behind it. */
  private static @Nullable LocalTime begun(Cells.Moment moment) {
    return LocalTime.MIDNIGHT.equals(moment.time()) ? null : moment.time();
  }

  private Cells.@Nullable Moment moment(CsvTable.Row row) {
    if (columns.text(row, Field.DATE).isEmpty()) {
      columns.tell(
          row,
          Field.DATE,
          "this row has no date",
          "expected the day of the session",
          "write it, or delete the row");
      return null;
    }
    return columns.read(row, Field.DATE, cells::moment);
  }

  private ColumnMapping.@Nullable SportWord sport(CsvTable.Row row) {
    String text = columns.text(row, Field.SPORT);
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
    columns.tell(
        row,
        Field.SPORT,
        text.isEmpty() ? "this row has no sport" : "'" + text + "' is no sport that is known here",
        "expected swim, bike, run, strength or other, or a word of the mapping",
        text.isEmpty()
            ? "write it, or give --sport"
            : "add '" + text + ": run' (or another, or skip) below 'sports:' of the mapping");
    return null;
  }

  private @Nullable String place(CsvTable.Row row, ColumnMapping.SportWord word) {
    String text = columns.text(row, Field.WHERE);
    String mapped = mapping.places().get(text.toLowerCase(Locale.ROOT));
    if (mapped != null || text.isEmpty()) {
      return mapped != null ? mapped : word.where() != null ? word.where() : defaults.where();
    }
    Quantity<String> place = Quantity.whereabouts(text);
    if (place instanceof Quantity.NotThat<String> not) {
      columns.tell(
          row,
          Field.WHERE,
          not.what(),
          not.expected(),
          "add '" + text + ": pool' (or another) below 'places:' of the mapping");
    }
    return place.orNull();
  }

  private void pass(CsvTable.Row row, String what, String why) {
    passed.add(new Received.Passed(place(row), what, why));
  }

  private Place place(CsvTable.Row row) {
    return table.place(row, 0);
  }

  private static String note(String text) {
    StringBuilder note = new StringBuilder();
    text.codePoints()
        .map(c -> Character.isWhitespace(c) || Character.isISOControl(c) ? ' ' : c)
        .filter(
            c ->
                Character.isDefined(c)
                    && Character.getType(c) != Character.SURROGATE
                    && Character.getType(c) != Character.FORMAT
                    && Character.getType(c) != Character.PRIVATE_USE)
        .limit(NOTE_LENGTH)
        .forEach(note::appendCodePoint);
    return note.toString().replaceAll(" +", " ").strip();
  }
}
