package peakproof.report;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import peakproof.document.Sport;
import peakproof.fact.Sheet;
import peakproof.fact.Words;
import peakproof.report.Pins.Pin;

/**
 * The block sheet: days as rows, weeks as columns, totals at the foot, findings pinned to it.
 *
 * @param near the week of the as-of date, the one before it, and all to come
 * @param earlier those before; of no week for none
 * @param loose findings of no day and no week
 */
record BlockPart(Grid near, Grid earlier, List<Pin> loose, String asOf) {
  private static final int WEEKS_BACK = 1;

  /** Some of the weeks. */
  record Grid(List<Head> heads, List<Row> rows, List<Total> totals) {}

  /** A week's head; {@code togo} are weeks to race week. */
  record Head(String id, String label, String phase, String togo, List<Pin> pins) {}

  /** A day of the week in all weeks. */
  record Row(String day, List<Box> boxes) {}

  /**
   * A day.
   *
   * @param id null for a day outside the block
   * @param kind done, planned, unknown, unwritten, race or outside
   * @param spoken the date for who cannot see the table
   * @param words what the day says besides sessions
   */
  record Box(
      @Nullable String id,
      String kind,
      boolean now,
      String date,
      String spoken,
      boolean hard,
      List<Line> lines,
      String words,
      List<Pin> pins) {}

  /** A session: its sport, its length, and the whole of it in words. */
  record Line(Sport sport, boolean follows, String amount, String label) {}

  /** A line at the foot. */
  record Total(String name, List<String> values) {}

  static BlockPart of(Sheet sheet, Pins pins, LocalDate race, LocalDate asOf) {
    LocalDate from =
        asOf.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY)).minusWeeks(WEEKS_BACK);
    Map<Boolean, List<Sheet.Column>> parts =
        sheet.weeks().stream()
            .collect(Collectors.partitioningBy(week -> week.starts().isBefore(from)));
    return new BlockPart(
        grid(parts.getOrDefault(false, List.of()), pins, race, asOf),
        grid(parts.getOrDefault(true, List.of()), pins, race, asOf),
        pins.at(Pins.NOWHERE),
        Dates.full(asOf));
  }

  private static Grid grid(List<Sheet.Column> weeks, Pins pins, LocalDate race, LocalDate asOf) {
    List<Row> rows = new ArrayList<>();
    for (DayOfWeek day : DayOfWeek.values()) {
      List<Box> boxes =
          weeks.stream()
              .map(
                  week ->
                      box(
                          week.starts().with(TemporalAdjusters.nextOrSame(day)),
                          week,
                          pins,
                          race,
                          asOf))
              .toList();
      rows.add(new Row(day.getDisplayName(TextStyle.SHORT, Locale.ENGLISH), boxes));
    }
    return new Grid(
        weeks.stream().map(week -> head(week, pins, race)).toList(),
        rows,
        List.of(
            new Total("time", weeks.stream().map(week -> time(week.all())).toList()),
            new Total("load", weeks.stream().map(week -> load(week.load())).toList())));
  }

  private static Head head(Sheet.Column week, Pins pins, LocalDate race) {
    long weeks = ChronoUnit.WEEKS.between(week.starts(), race);
    return new Head(
        Pins.week(week.starts()),
        Words.day(week.starts()),
        week.phase() == null ? "" : week.phase().word(),
        weeks == 0 ? "race week" : weeks + " to go",
        pins.at(Pins.week(week.starts())));
  }

  private static Box box(
      LocalDate date, Sheet.Column week, Pins pins, LocalDate race, LocalDate asOf) {
    Sheet.Cell cell =
        week.days().stream().filter(day -> day.date().equals(date)).findFirst().orElse(null);
    boolean raceDay = date.equals(race);
    boolean outside = cell == null && !raceDay;
    String id = outside ? null : Pins.day(date);
    return new Box(
        id,
        raceDay ? "race" : cell == null ? "outside" : kind(cell),
        date.equals(asOf),
        String.valueOf(date.getDayOfMonth()),
        Words.weekday(date),
        cell != null && cell.hard(),
        cell == null ? List.of() : cell.entries().stream().map(BlockPart::line).toList(),
        raceDay ? "race" : cell == null ? "" : words(cell),
        id == null ? List.of() : pins.at(id));
  }

  private static String kind(Sheet.Cell cell) {
    return cell.source().name().toLowerCase(Locale.ROOT);
  }

  private static String words(Sheet.Cell cell) {
    List<String> words = new ArrayList<>();
    if (cell.ill()) {
      words.add("ill");
    }
    if (cell.missed()) {
      words.add("missed");
    }
    if (words.isEmpty() && cell.entries().isEmpty()) {
      words.add(
          switch (cell.source()) {
            case DONE, PLANNED -> "rest";
            case UNKNOWN -> "no entry";
            case UNWRITTEN -> "not written";
          });
    }
    return String.join(", ", words);
  }

  private static Line line(Sheet.Entry entry) {
    Double minutes = entry.minutes();
    return new Line(
        entry.sport(),
        entry.follows(),
        (minutes == null ? "?" : Words.minutes(minutes)) + (entry.race() ? " race" : ""),
        entry.label());
  }

  private static String time(@Nullable Double minutes) {
    return minutes == null ? "?" : Words.minutes(minutes);
  }

  private static String load(@Nullable Double load) {
    return load == null ? "?" : String.valueOf(Math.round(load));
  }
}
