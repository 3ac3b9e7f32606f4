package peakproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import peakproof.document.Sport;
import peakproof.fact.Sheet;
import peakproof.fact.Words;

/**
 * Hours of each week by sport, one texture on the other.
 *
 * @param sports that occur at all, from the foot up
 */
record HoursChart(Columns columns, List<Axis.Mark> marks, List<Sport> sports, List<Bar> bars) {
  private static final double HEAD = 12;
  private static final double HEIGHT = 160;

  /** A week; a total of {@code ?} has no pieces, as it is not known. */
  record Bar(String x, String left, String label, String top, String total, List<Piece> pieces) {}

  /** A sport of a week; {@code time} is {@code ?} when unknown, and then nothing is drawn. */
  record Piece(Sport sport, String y, String height, String time) {}

  static HoursChart of(Sheet sheet) {
    Columns columns = Columns.of(sheet.weeks().size(), HEAD + HEIGHT);
    double most =
        sheet.weeks().stream()
            .map(Sheet.Column::all)
            .filter(Objects::nonNull)
            .mapToDouble(minutes -> minutes / 60)
            .max()
            .orElse(0);
    Axis axis = Axis.upTo(most, HEAD, HEIGHT);
    List<Sport> sports = new ArrayList<>();
    for (Sport sport : Sport.values()) {
      if (sheet.weeks().stream().anyMatch(week -> positive(week.minutes().get(sport)))) {
        sports.add(sport);
      }
    }
    List<Bar> bars = new ArrayList<>();
    for (int i = 0; i < sheet.weeks().size(); i++) {
      bars.add(bar(sheet.weeks().get(i), columns, i, sports, axis));
    }
    return new HoursChart(columns, axis.marks(), List.copyOf(sports), List.copyOf(bars));
  }

  private static boolean positive(@Nullable Double minutes) {
    return minutes != null && minutes > 0;
  }

  private static Bar bar(
      Sheet.Column week, Columns columns, int index, List<Sport> sports, Axis axis) {
    Double all = week.all();
    List<Piece> pieces = new ArrayList<>();
    double below = 0;
    for (Sport sport : sports) {
      Double minutes = week.minutes().get(sport);
      double hours = minutes == null || all == null ? 0 : minutes / 60;
      double foot = axis.at(below);
      double top = axis.at(below + hours);
      below += hours;
      pieces.add(
          new Piece(
              sport,
              Axis.pixels(top),
              Axis.pixels(foot - top),
              minutes == null ? "?" : Words.minutes(minutes)));
    }
    return new Bar(
        columns.middle(index),
        columns.left(index),
        Words.day(week.starts()),
        Axis.pixels(axis.at(below) - 4),
        all == null ? "?" : Words.minutes(all),
        pieces);
  }
}
