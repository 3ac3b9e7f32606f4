package peakproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import peakproof.fact.Sheet;
import peakproof.fact.Words;
import peakproof.measure.Quartiles;

/**
 * The load of each week as a dot over ticks at the quartiles of this athlete's own past weeks.
 *
 * @param ticks none while too few weeks were done to tell
 */
record LoadChart(
    Columns columns, List<Axis.Mark> marks, List<Axis.Mark> ticks, List<Dot> dots, int past) {
  private static final double HEAD = 14;
  private static final double HEIGHT = 130;
  private static final int ENOUGH = 4;

  /** A week; {@code y} is null when its load is not known. */
  record Dot(String x, @Nullable String y, boolean done, String label, String load) {}

  static LoadChart of(Sheet sheet) {
    List<Double> past =
        sheet.weeks().stream()
            .filter(Sheet.Column::done)
            .map(Sheet.Column::load)
            .filter(Objects::nonNull)
            .map(Objects::requireNonNull)
            .toList();
    double most =
        sheet.weeks().stream()
            .map(Sheet.Column::load)
            .filter(Objects::nonNull)
            .mapToDouble(Double::doubleValue)
            .max()
            .orElse(0);
    Axis axis = Axis.upTo(most, HEAD, HEIGHT);
    Columns columns = Columns.of(sheet.weeks().size(), HEAD + HEIGHT);
    List<Dot> dots = new ArrayList<>();
    for (int i = 0; i < sheet.weeks().size(); i++) {
      Sheet.Column week = sheet.weeks().get(i);
      Double load = week.load();
      dots.add(
          new Dot(
              columns.middle(i),
              load == null ? null : axis.y(load),
              week.done(),
              Words.day(week.starts()),
              load == null ? "?" : String.valueOf(Math.round(load))));
    }
    return new LoadChart(columns, axis.marks(), ticks(past, axis), dots, past.size());
  }

  private static List<Axis.Mark> ticks(List<Double> past, Axis axis) {
    Quartiles quartiles = past.size() < ENOUGH ? null : Quartiles.of(past);
    if (quartiles == null) {
      return List.of();
    }
    return List.of(
        new Axis.Mark(axis.y(quartiles.first()), rounded(quartiles.first())),
        new Axis.Mark(axis.y(quartiles.median()), rounded(quartiles.median())),
        new Axis.Mark(axis.y(quartiles.third()), rounded(quartiles.third())));
  }

  private static String rounded(double load) {
    return String.valueOf(Math.round(load));
  }
}
