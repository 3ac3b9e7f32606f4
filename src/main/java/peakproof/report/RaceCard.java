package peakproof.report;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Event;
import peakproof.document.Goal;

/**
 * Race day by the clock. Both transitions together are given by the goal; half of them is taken to
 * come after the swim.
 *
 * @param rows start, ends of legs, finish
 * @param notes how to read it
 */
public record RaceCard(List<Row> rows, List<String> notes) {
  private static final double DAY = 86_400;

  private static final String UNKNOWN = "–";

  /** One line: what, when by the goal, when at the latest; a dash where that is not known. */
  public record Row(String what, String goal, String latest) {
    /** {@code Off the bike: 13:45, at the latest 17:00}. */
    String inWords() {
      return what
          + ": "
          + (goal.equals(UNKNOWN) ? "no goal" : goal)
          + (latest.equals(UNKNOWN) ? "" : ", at the latest " + latest);
    }
  }

  static RaceCard of(Event event, @Nullable Goal goal) {
    LocalTime start = event.start();
    Double half = goal == null || goal.transitions() == null ? null : goal.transitions() / 2;
    Double swim = goal == null ? null : goal.swim();
    Double onBike = sum(swim, half);
    Double ridden = sum(onBike, goal == null ? null : goal.bike());
    Double running = sum(ridden, half);
    Double finish = sum(running, goal == null ? null : goal.run());
    Event.CutOffs limits = event.cutOffs();
    List<Row> rows = new ArrayList<>();
    if (start != null) {
      rows.add(new Row("Start", Figures.timeOfDay(start), UNKNOWN));
    }
    rows.add(row("Out of the water", swim, limits.swim(), start));
    rows.add(row("On the bike", onBike, null, start));
    rows.add(row("Off the bike", ridden, limits.bike(), start));
    rows.add(row("Running", running, null, start));
    rows.add(
        row(
            "Finish",
            finish == null && goal != null ? goal.total() : finish,
            limits.finish(),
            start));
    return new RaceCard(
        rows.stream()
            .filter(row -> !(row.goal().equals(UNKNOWN) && row.latest().equals(UNKNOWN)))
            .toList(),
        notes(event, half != null));
  }

  private static List<String> notes(Event event, boolean transitions) {
    List<String> notes = new ArrayList<>();
    notes.add(
        event.start() == null
            ? "Times count from the start, as hours, minutes and seconds."
            : "Clock times are local time at the race, counted from the start in the event's"
                + " papers.");
    String kind = event.swim().start();
    if ("wave".equals(kind) || "rolling".equals(kind)) {
      notes.add(
          "In a "
              + kind
              + " start your own start is later: move the goal times by as much, and ask the"
              + " race from when its cut-offs count.");
    }
    if (transitions) {
      notes.add("Half of the time for transitions is counted after the swim, half after the bike.");
    }
    notes.add("The race's own papers and officials have the last word on every cut-off.");
    return notes;
  }

  private static Row row(
      String what, @Nullable Double goal, @Nullable Double latest, @Nullable LocalTime start) {
    return new Row(what, when(goal, start), when(latest, start));
  }

  private static @Nullable Double sum(@Nullable Double one, @Nullable Double other) {
    return one == null || other == null ? null : (Double) (one + other);
  }

  /** {@code 13:45}, {@code 00:30 the next day}; from the start where that is not known. */
  private static String when(@Nullable Double seconds, @Nullable LocalTime start) {
    if (seconds == null) {
      return UNKNOWN;
    }
    if (start == null) {
      return Figures.clock(seconds);
    }
    double minutes = Math.round((start.toSecondOfDay() + seconds) / 60);
    long days = (long) (minutes * 60 / DAY);
    LocalTime time = LocalTime.ofSecondOfDay((long) (minutes * 60 % DAY));
    return Figures.timeOfDay(time)
        + (days == 0 ? "" : days == 1 ? " the next day" : " " + days + " days later");
  }
}
