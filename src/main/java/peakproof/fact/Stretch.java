package peakproof.fact;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * Days in a row that are alike, the last ones still to come. The days of a declared camp and those
 * around it are told apart.
 *
 * @param restless true for days without a rest day, false for days with a hard or long session
 * @param days how many
 * @param from the first of them
 * @param to the last of them
 * @param camp true when it lies in a declared camp
 * @param entry the first day of it that can still be changed
 */
public record Stretch(
    boolean restless, double days, LocalDate from, LocalDate to, boolean camp, Where entry)
    implements Fact {

  /** {@code Mon 31 May to Sun 13 Jun}. */
  public String label() {
    return Words.weekday(from) + " to " + Words.weekday(to);
  }

  @Override
  public List<Where> where() {
    return List.of(entry);
  }

  static List<Stretch> all(Timeline timeline) {
    List<Stretch> stretches = new ArrayList<>();
    collect(timeline, true, day -> day.isKnown() && !day.rest(), stretches);
    collect(timeline, false, day -> day.isKnown() && day.hard(), stretches);
    return stretches;
  }

  private static void collect(
      Timeline timeline, boolean restless, Predicate<Day> alike, List<Stretch> into) {
    List<Day> run = new ArrayList<>();
    for (Day day : timeline.days()) {
      boolean goesOn = alike.test(day);
      if (!goesOn || !run.isEmpty() && camp(timeline, day) != camp(timeline, run.get(0))) {
        add(timeline, restless, run, into);
        run.clear();
      }
      if (goesOn) {
        run.add(day);
      }
    }
    add(timeline, restless, run, into);
  }

  private static boolean camp(Timeline timeline, Day day) {
    return timeline.weeks().inCamp(day.date());
  }

  private static void add(Timeline timeline, boolean restless, List<Day> run, List<Stretch> into) {
    Day first = firstChangeable(run);
    if (first == null) {
      return;
    }
    LocalDate from = run.get(0).date();
    LocalDate to = run.get(run.size() - 1).date();
    boolean camp = camp(timeline, first);
    into.add(new Stretch(restless, run.size(), from, to, camp, timeline.whereOf(first)));
  }

  private static @Nullable Day firstChangeable(List<Day> run) {
    return run.stream().filter(Day::changeable).findFirst().orElse(null);
  }
}
