package peakproof.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import peakproof.fact.Measured;

/** The weeks of a plan as a table, one a line, and below it why a number is missing. */
final class WeekTable {
  private static final int WEEK = 12;
  private static final int CELL = 9;

  /** How a column shows its number. */
  private enum Form {
    WHOLE("%.0f", 1),
    TENTHS("%.1f", 1),
    HUNDREDTHS("%.2f", 1),
    PERCENT("%+.0f%%", 100);

    private final String pattern;
    private final double factor;

    Form(String pattern, double factor) {
      this.pattern = pattern;
      this.factor = factor;
    }

    String of(double number) {
      return String.format(Locale.ROOT, pattern, factor * number);
    }
  }

  /** A column: its heading and the measure it shows, of one sport or of all. */
  private record Column(String heading, String name, @Nullable String sport, Form form) {
    boolean shows(Measured value) {
      String its = value.scope().get("sport");
      return value.name().equals(name) && (sport == null ? its == null : sport.equals(its));
    }
  }

  private static final List<Column> COLUMNS =
      List.of(
          new Column("hours", "week-hours", null, Form.TENTHS),
          new Column("swim km", "week-distance", "swim", Form.TENTHS),
          new Column("bike h", "week-hours", "bike", Form.TENTHS),
          new Column("run km", "week-distance", "run", Form.TENTHS),
          new Column("load", "week-load", null, Form.WHOLE),
          new Column("change", "week-change", null, Form.PERCENT),
          new Column("monotony", "monotony", null, Form.HUNDREDTHS),
          new Column("strain", "weekly-strain", null, Form.WHOLE),
          new Column("ratio", "acute-chronic-ratio", null, Form.HUNDREDTHS));

  private WeekTable() {}

  /** The table's lines; none without a week. */
  static List<String> of(List<Measured> values) {
    Map<String, List<Measured>> weeks = new LinkedHashMap<>();
    for (Measured value : values) {
      String week = value.scope().get("week");
      if (week != null) {
        weeks.computeIfAbsent(week, starts -> new ArrayList<>()).add(value);
      }
    }
    List<String> lines = new ArrayList<>();
    if (weeks.isEmpty()) {
      return lines;
    }
    StringBuilder heading = new StringBuilder(cell("week of", -WEEK));
    COLUMNS.forEach(column -> heading.append(cell(column.heading, CELL)));
    lines.add(heading.toString());
    Set<String> reasons = new LinkedHashSet<>();
    weeks.forEach((week, its) -> lines.add(row(week, its, reasons)));
    lines.addAll(reasons);
    return lines;
  }

  private static String row(String week, List<Measured> values, Set<String> reasons) {
    StringBuilder row = new StringBuilder(cell(week, -WEEK));
    for (Column column : COLUMNS) {
      String shown = "";
      for (Measured value : values) {
        Double number = value.value();
        if (column.shows(value)) {
          shown = number == null ? "?" : column.form.of(number);
          if (number == null) {
            reasons.add("  ? " + column.heading + ": " + value.unknown());
          }
        }
      }
      row.append(cell(shown, CELL));
    }
    return row.toString();
  }

  private static String cell(String text, int width) {
    return String.format(Locale.ROOT, "%" + width + "s", text);
  }
}
