package peakproof.fact;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.measure.Constant;
import peakproof.measure.Coverage;

/**
 * A swim to come in water that is colder than the club takes for a first time.
 *
 * @param celsius temperature of its water
 * @param coldSwimsBefore swims in cold water in the weeks before it, done and planned; unknown
 *     while the days and swims that do not say could make up what is missing
 */
public record ColdSwim(Swim swim, double celsius, @Nullable Double coldSwimsBefore)
    implements Fact {

  static List<ColdSwim> all(Timeline timeline) {
    List<ColdSwim> cold = new ArrayList<>();
    timeline
        .sessions()
        .filter(session -> session.planned() && session instanceof Swim)
        .map(Swim.class::cast)
        .forEach(
            swim -> {
              Double celsius = swim.celsius();
              if (celsius != null && celsius < timeline.constant(Constant.COLD_FIRST) - 1e-9) {
                cold.add(new ColdSwim(swim, celsius, before(swim, timeline)));
              }
            });
    return cold;
  }

  /** Each swim that may have been a cold one, and a log with holes, leaves the count open. */
  private static @Nullable Double before(Swim swim, Timeline timeline) {
    LocalDate first = swim.date().minusDays((long) timeline.constant(Constant.COLD_DAYS));
    List<Day> days = timeline.between(first, swim.date());
    int known = (int) days.stream().filter(Day::isKnown).count();
    boolean doubt =
        !new Coverage(known, days.size()).enough(timeline.constants())
            || timeline.unloggedSince(first, swim.date()) != null;
    double count = 0;
    for (Day day : days) {
      for (Session session : day.sessions()) {
        if (session == swim) {
          break;
        }
        if (session instanceof Swim earlier) {
          Boolean cold = cold(earlier, timeline);
          doubt |= cold == null;
          count += Boolean.TRUE.equals(cold) ? 1 : 0;
        }
      }
    }
    return doubt ? null : (Double) count;
  }

  private static @Nullable Boolean cold(Swim swim, Timeline timeline) {
    Double celsius = swim.celsius();
    if (celsius != null) {
      return celsius < timeline.constant(Constant.COLD_WATER) - 1e-9;
    }
    return Boolean.FALSE.equals(timeline.skills().openWater(swim)) ? false : null;
  }

  /** Its day. */
  public LocalDate date() {
    return swim.date();
  }

  /** The swim in words. */
  public String label() {
    return swim.label();
  }

  @Override
  public List<Where> where() {
    return swim.where();
  }
}
