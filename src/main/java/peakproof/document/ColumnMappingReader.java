package peakproof.document;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Reads how a table of sessions is written. */
final class ColumnMappingReader {
  private static final Words DELIMITERS = Words.of("a delimiter", "comma", "semicolon", "tab");
  private static final Words DECIMALS = Words.of("a decimal sign", "point", "comma");
  private static final Words DATES =
      new Words(
          "an order of a date's parts",
          Stream.of(ColumnMapping.DateOrder.values()).map(ColumnMapping.DateOrder::word).toList());
  private static final Words SPORTS =
      Words.of("a sport", "swim", "bike", "run", "strength", "other", "skip");
  private static final String SKIP = "skip";

  private final Desk desk;

  private ColumnMappingReader(Desk desk) {
    this.desk = desk;
  }

  static ColumnMapping.Read read(Path file) {
    Faults faults = new Faults();
    Tree tree = new DocumentFiles(faults).open(file);
    Node node = tree == null ? null : DocumentKind.MAPPING.content(tree, faults);
    Desk desk = Desk.plain(faults, new HashMap<>());
    Fields fields = node == null ? null : desk.fields(node, "the mapping");
    ColumnMapping mapping = fields == null ? null : new ColumnMappingReader(desk).mapping(fields);
    return new ColumnMapping.Read(faults.none() ? mapping : null, faults.sorted());
  }

  private ColumnMapping mapping(Fields fields) {
    Format.check(fields);
    String delimiter = fields.read("delimiter", DELIMITERS::read);
    String decimal = fields.read("decimal", DECIMALS::read);
    String dates = fields.read("dates", DATES::read);
    ZoneId zone = fields.read("zone", ColumnMappingReader::zone);
    fields.demand("columns", "{date: Day, sport: Sport, duration: Time}");
    Map<ColumnMapping.Field, ColumnMapping.Column> columns = columns(fields);
    Map<String, ColumnMapping.SportWord> sports = sports(fields);
    Map<String, String> places = places(fields);
    fields.finish();
    return new ColumnMapping(
        "semicolon".equals(delimiter) ? ';' : "tab".equals(delimiter) ? '\t' : ',',
        "comma".equals(decimal),
        Stream.of(ColumnMapping.DateOrder.values())
            .filter(order -> order.word().equals(dates))
            .findFirst()
            .orElse(ColumnMapping.DateOrder.YEAR_MONTH_DAY),
        zone,
        columns,
        sports,
        places,
        true);
  }

  /** A time zone by the name of a place in it, which knows when the clocks change. */
  static Quantity<ZoneId> zone(String text) {
    try {
      if (text.equals("UTC") || text.contains("/")) {
        return new Quantity.Of<>(ZoneId.of(text));
      }
    } catch (DateTimeException unknown) {
      // told below
    }
    return new Quantity.NotThat<>(
        "'" + text + "' is no time zone",
        "expected its name such as Europe/Oslo, or UTC",
        Nearest.advice(
            text,
            ZoneId.getAvailableZoneIds().stream().filter(id -> id.contains("/")).sorted().toList(),
            "write continent and city"));
  }

  private Map<ColumnMapping.Field, ColumnMapping.Column> columns(Fields owner) {
    Map<ColumnMapping.Field, ColumnMapping.Column> columns =
        new EnumMap<>(ColumnMapping.Field.class);
    Fields fields = owner.mapping("columns", "'columns'");
    if (fields == null) {
      return columns;
    }
    for (ColumnMapping.Field field : ColumnMapping.Field.values()) {
      Node node = fields.node(field.word());
      ColumnMapping.Column column = node == null ? null : column(node, field);
      if (column != null) {
        columns.put(field, column);
      }
    }
    if (!fields.has(ColumnMapping.Field.DATE.word())) {
      fields.demand("date", "Day");
    }
    fields.finish();
    return columns;
  }

  private ColumnMapping.@Nullable Column column(Node node, ColumnMapping.Field field) {
    if (node.tree() instanceof Tree.Scalar scalar) {
      return new ColumnMapping.Column(scalar.text(), null, scalar.place());
    }
    Fields fields = desk.fields(node, "the column '" + field.word() + "'");
    if (fields == null) {
      return null;
    }
    String name = fields.require("column", "Time", Quantity.Of::new);
    if (field.units().isEmpty()) {
      fields.refuse(List.of("unit"), "for duration, distance and climb", "leave it out");
    }
    Words units = new Words("a unit of " + field.word(), field.units());
    String unit = field.units().isEmpty() ? null : fields.read("unit", units::read);
    fields.finish();
    return name == null ? null : new ColumnMapping.Column(name, unit, fields.keyPlace("column"));
  }

  private Map<String, ColumnMapping.SportWord> sports(Fields owner) {
    Map<String, ColumnMapping.SportWord> sports = new HashMap<>();
    Fields fields = owner.mapping("sports", "'sports'");
    if (fields != null) {
      fields
          .all()
          .forEach((word, node) -> sports.put(word.strip().toLowerCase(Locale.ROOT), sport(node)));
    }
    return sports;
  }

  private ColumnMapping.SportWord sport(Node node) {
    if (node.tree() instanceof Tree.Mapping) {
      Fields fields = desk.fields(node, "the sport");
      if (fields != null) {
        String word = fields.require("sport", "swim", SPORTS::read);
        String where = fields.read("where", Quantity::whereabouts);
        fields.finish();
        return new ColumnMapping.SportWord(sport(word), where);
      }
    }
    return new ColumnMapping.SportWord(sport(desk.value(node, SPORTS::read)), null);
  }

  private static @Nullable Sport sport(@Nullable String word) {
    return word == null || word.equals(SKIP) ? null : Sport.valueOf(word.toUpperCase(Locale.ROOT));
  }

  private Map<String, String> places(Fields owner) {
    Map<String, String> places = new HashMap<>();
    Fields fields = owner.mapping("places", "'places'");
    if (fields != null) {
      fields
          .all()
          .forEach(
              (word, node) -> {
                String place = desk.value(node, Quantity::whereabouts);
                if (place != null) {
                  places.put(word.strip().toLowerCase(Locale.ROOT), place);
                }
              });
    }
    return places;
  }
}
