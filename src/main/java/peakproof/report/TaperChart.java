package peakproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Background;
import peakproof.audit.Background.TaperBand;
import peakproof.fact.Phase;
import peakproof.fact.Sheet;
import peakproof.fact.Words;

/**
 * How training falls towards the race: weeks as shares of the usual day, and the last days together
 * against what the house asks for.
 *
 * @param usual training of a usual day in words
 * @param band null when no rule asks for one
 */
record TaperChart(
    Columns columns, List<Axis.Mark> marks, String usual, List<Step> steps, @Nullable Band band) {
  private static final double HEAD = 16;
  private static final double HEIGHT = 120;
  private static final int WEEKS_BEFORE = 3;

  /** A week; {@code y} is null when its time is not known. */
  record Step(
      String x, @Nullable String y, String above, boolean done, String label, String share) {}

  /** What is left of a usual day over the last days: at most, at least, and in this plan. */
  record Band(
      String x,
      String left,
      int days,
      String high,
      String low,
      String least,
      String most,
      @Nullable String y,
      String cut) {}

  /** Null without a taper, and where it is not known what is usual. */
  static @Nullable TaperChart of(Background background) {
    Sheet sheet = background.sheet();
    Double usual = sheet.usualMinutes();
    int taper = 0;
    while (taper < sheet.weeks().size() && sheet.weeks().get(taper).phase() != Phase.TAPER) {
      taper++;
    }
    if (usual == null || usual <= 0 || taper == sheet.weeks().size()) {
      return null;
    }
    List<Sheet.Column> weeks =
        sheet.weeks().subList(Math.max(0, taper - WEEKS_BEFORE), sheet.weeks().size());
    double most =
        weeks.stream()
            .map(Sheet.Column::minutesADay)
            .filter(Objects::nonNull)
            .mapToDouble(minutes -> 100 * minutes / usual)
            .max()
            .orElse(0);
    Axis axis = Axis.upTo(Math.max(100, most), HEAD, HEIGHT);
    Columns columns = Columns.of(weeks.size() + 2, HEAD + HEIGHT);
    List<Step> steps = new ArrayList<>();
    for (int i = 0; i < weeks.size(); i++) {
      steps.add(step(weeks.get(i), columns.middle(i), usual, axis));
    }
    return new TaperChart(
        columns,
        axis.marks(),
        Words.minutes(usual),
        steps,
        band(background.taper(), columns, weeks.size() + 1, axis));
  }

  private static Step step(Sheet.Column week, String x, double usual, Axis axis) {
    Double minutes = week.minutesADay();
    Double share = minutes == null ? null : (Double) (minutes / usual);
    return new Step(
        x,
        share == null ? null : axis.y(100 * share),
        share == null ? "" : Axis.pixels(axis.at(100 * share) - 9),
        week.done(),
        Words.day(week.starts()),
        share == null ? "?" : Words.share(share));
  }

  private static @Nullable Band band(
      @Nullable TaperBand asked, Columns columns, int index, Axis axis) {
    if (asked == null) {
      return null;
    }
    Double cut = asked.cut();
    return new Band(
        columns.middle(index),
        columns.left(index),
        asked.days(),
        axis.y(100 * (1 - asked.least())),
        axis.y(100 * (1 - asked.most())),
        Words.share(asked.least()),
        Words.share(asked.most()),
        cut == null ? null : axis.y(100 * Math.max(0, 1 - cut)),
        cut == null ? "?" : Words.share(cut));
  }
}
