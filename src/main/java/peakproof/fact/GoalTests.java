package peakproof.fact;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import peakproof.document.Athlete;
import peakproof.document.Event;
import peakproof.document.Plan;
import peakproof.document.Sport;

/**
 * The goal times of the legs beside the races and tests that bear on them: those listed under the
 * athlete and those in the log. What a swim set was held at counts as a test of the swim.
 *
 * @param swimOpen true with a goal for the swim and no test of it still to come
 * @param bikeOpen the same of the bike leg
 * @param runOpen the same of the run
 * @param swimDays days since the newest race or test of the swim; unknown when none is listed
 * @param bikeDays the same of the bike leg
 * @param runDays the same of the run
 * @param newest the same in words, for the legs that have a goal
 * @param any true when anything is listed, or a log is kept
 */
public record GoalTests(
    String pointer,
    boolean swimOpen,
    boolean bikeOpen,
    boolean runOpen,
    @Nullable Double swimDays,
    @Nullable Double bikeDays,
    @Nullable Double runDays,
    String newest,
    boolean any)
    implements Fact {

  static GoalTests of(Plan plan, Timeline timeline, boolean logged) {
    peakproof.document.Goal goal = plan.goal();
    List<Athlete.Test> tests = plan.athlete().tests();
    Double swim = days(Sport.SWIM, tests, timeline);
    Double bike = days(Sport.BIKE, tests, timeline);
    Double run = days(Sport.RUN, tests, timeline);
    boolean swims = goal != null && goal.swim() != null;
    boolean rides = goal != null && goal.bike() != null;
    boolean runs = goal != null && goal.run() != null;
    List<String> newest = new ArrayList<>();
    Stream.of(
            swims ? words(Sport.SWIM, swim) : "",
            rides ? words(Sport.BIKE, bike) : "",
            runs ? words(Sport.RUN, run) : "")
        .filter(words -> !words.isEmpty())
        .forEach(newest::add);
    return new GoalTests(
        goal == null ? plan.at() : goal.at(),
        swims && !toCome(Sport.SWIM, tests, timeline),
        rides && !toCome(Sport.BIKE, tests, timeline),
        runs && !toCome(Sport.RUN, tests, timeline),
        swim,
        bike,
        run,
        String.join(", ", newest),
        logged || !tests.isEmpty());
  }

  private static String words(Sport sport, @Nullable Double days) {
    return sport.word() + (days == null ? " none" : " " + Words.number(days) + " days ago");
  }

  private static @Nullable Double days(Sport sport, List<Athlete.Test> listed, Timeline timeline) {
    LocalDate asOf = timeline.asOf();
    Stream<LocalDate> tests =
        listed.stream().filter(test -> test.sport() == sport).map(Athlete.Test::date);
    Stream<LocalDate> logged =
        timeline
            .sessions()
            .filter(session -> !session.planned() && shows(session, sport))
            .map(Session::date);
    return Stream.concat(tests, logged)
        .filter(date -> !date.isAfter(asOf))
        .max(LocalDate::compareTo)
        .map(date -> (double) ChronoUnit.DAYS.between(date, asOf))
        .orElse(null);
  }

  private static boolean toCome(Sport sport, List<Athlete.Test> listed, Timeline timeline) {
    return timeline.sessions().anyMatch(session -> session.planned() && shows(session, sport))
        || listed.stream()
            .anyMatch(test -> test.sport() == sport && test.date().isAfter(timeline.asOf()));
  }

  /** A test of the sport, a race that has its leg, or a swim set with the pace it was held at. */
  private static boolean shows(Session session, Sport sport) {
    peakproof.document.Session written = session.written;
    if (written.race() != null) {
      return races(written.legs(), sport);
    }
    boolean held = sport == Sport.SWIM && written.recorded().held() != null;
    return session.sport() == sport && (written.test() || held);
  }

  /** A race that does not say its legs may have them all. */
  private static boolean races(Event.@Nullable Legs legs, Sport sport) {
    if (legs == null) {
      return true;
    }
    return switch (sport) {
      case SWIM -> legs.swim() != null;
      case BIKE -> legs.bike() != null;
      case RUN -> legs.run() != null;
      case STRENGTH, OTHER -> false;
    };
  }

  @Override
  public List<Where> where() {
    return List.of(new Where(pointer, null, null));
  }
}
