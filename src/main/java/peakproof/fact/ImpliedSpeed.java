package peakproof.fact;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Effort;
import peakproof.document.SetLine;
import peakproof.document.Sport;
import peakproof.document.Target;
import peakproof.measure.Constant;
import peakproof.measure.Digits;
import peakproof.measure.Pace;
import peakproof.measure.UnitSlip;

/**
 * A speed that entries imply: the mean of a logged session of the last eight weeks that has
 * distance and time, or the pace a planned part asks for. Trail runs are left out, and so are runs
 * of an athlete on wheels.
 *
 * @param session where it stands
 * @param unitSlip true when it lies where only a slip of units would bring it
 * @param offEasyShare by which share it is off the athlete's tested easy pace, either way; unknown
 *     but for one continuous easy part of a swim or run
 * @param overCriticalShare by which share it is faster than critical swim speed by tests, which
 *     nobody holds for long: yards taken for metres make a swim 9 % faster; below zero when slower;
 *     unknown but for a logged swim in the pool
 * @param minutes how long the session takes; unknown when not said
 * @param reading the entry in words
 * @param believed the speeds of the sport that are no slip
 * @param otherReading the speed if the distance was meant in yards (swim) or miles
 * @param easy the tested easy pace that one easy part is held against, in words
 * @param critical critical swim speed by tests, in words
 */
public record ImpliedSpeed(
    Session session,
    boolean unitSlip,
    @Nullable Double offEasyShare,
    @Nullable Double overCriticalShare,
    @Nullable Double minutes,
    String reading,
    String believed,
    String otherReading,
    String easy,
    String critical)
    implements Fact {

  private static final List<String> FASTER = List.of("wetsuit", "fins", "paddles", "pull-buoy");

  static List<ImpliedSpeed> all(Timeline timeline, boolean wheels) {
    LocalDate oldest =
        timeline.asOf().minusWeeks((long) timeline.constant(Constant.LONG_WEEKS)).plusDays(1);
    List<ImpliedSpeed> all = new ArrayList<>();
    timeline
        .sessions()
        .filter(session -> session.endurance() && !session.date().isBefore(oldest))
        .filter(session -> !(session instanceof Run && (wheels || trail(session))))
        .forEach(session -> collect(session, timeline, all));
    return all;
  }

  /** True when a pace that the session asks for is a slip of units. */
  static boolean slips(Session session, Timeline timeline) {
    SetLine line = session.written.set();
    List<ImpliedSpeed> paces = new ArrayList<>();
    if (line != null) {
      paces(line.parts(), session, false, timeline, paces);
    }
    return paces.stream().anyMatch(ImpliedSpeed::unitSlip);
  }

  private static boolean trail(Session session) {
    return "trail".equals(session.written.scene().where());
  }

  private static void collect(Session session, Timeline timeline, List<ImpliedSpeed> all) {
    SetLine line = session.written.set();
    boolean easy = line != null && oneEasyPart(line);
    Double seconds = session.written.recorded().seconds();
    Double metres = session.written.recorded().metres();
    if (!session.planned() && seconds != null && metres != null && seconds > 0 && metres > 0) {
      String label =
          session.sport().word()
              + " "
              + Words.metres(metres, session.sport())
              + " in "
              + Words.minutes(seconds / 60)
              + " on "
              + Words.weekday(session.date());
      all.add(of(session, metres / seconds, easy, label, timeline));
    }
    if (session.planned() && line != null) {
      paces(line.parts(), session, easy, timeline, all);
    }
  }

  private static void paces(
      List<SetLine.Part> parts,
      Session session,
      boolean easy,
      Timeline timeline,
      List<ImpliedSpeed> all) {
    for (SetLine.Part part : parts) {
      if (part.target() instanceof Target.Pace pace && pace.secondsPerMetre() > 0) {
        String label = session.label() + " on " + Words.weekday(session.date());
        all.add(of(session, 1 / pace.secondsPerMetre(), easy, label, timeline));
      }
      if (part.work() instanceof SetLine.Group group) {
        paces(group.parts(), session, easy, timeline, all);
      }
    }
  }

  private static boolean oneEasyPart(SetLine line) {
    SetLine.Part part = line.parts().get(0);
    return line.parts().size() == 1
        && part.count() == 1
        && part.effort() == Effort.EASY
        && !(part.work() instanceof SetLine.Group);
  }

  private static ImpliedSpeed of(
      Session session, double speed, boolean easy, String label, Timeline timeline) {
    Sport sport = session.sport();
    double other = speed * (sport == Sport.SWIM ? Pace.YARD : Pace.MILE / 1000);
    Double usual = easy ? TestedSpeed.easy(sport, timeline) : null;
    Double critical = inPool(session) ? TestedSpeed.criticalSwim(timeline) : null;
    return new ImpliedSpeed(
        session,
        Boolean.TRUE.equals(UnitSlip.of(sport, speed, 1, timeline.constants())),
        usual == null ? null : (Double) Exact.of(Math.abs(usual / speed - 1)),
        critical == null ? null : (Double) Exact.of(speed / critical - 1),
        session.minutes(),
        label + ": " + words(sport, speed),
        believed(sport, timeline),
        (sport == Sport.SWIM ? "in yards it is " : "in miles it is ") + words(sport, other),
        usual == null ? "not held against it" : words(sport, usual),
        critical == null ? "not held against it" : words(sport, critical));
  }

  /**
   * True for a swim in the pool, logged as a whole, with nothing on that makes a swimmer faster.
   */
  private static boolean inPool(Session session) {
    return !session.planned()
        && session.sport() == Sport.SWIM
        && session.written.set() == null
        && "pool".equals(session.written.scene().where())
        && FASTER.stream().noneMatch(session.written.wear()::has);
  }

  private static String believed(Sport sport, Timeline timeline) {
    return switch (sport) {
      case SWIM ->
          Words.swimPace(timeline.constant(Constant.PLAUSIBLE_SWIM_FROM))
              + " to "
              + Words.swimPace(timeline.constant(Constant.PLAUSIBLE_SWIM_TO));
      case RUN ->
          Words.runPace(timeline.constant(Constant.PLAUSIBLE_RUN_FROM))
              + " to "
              + Words.runPace(timeline.constant(Constant.PLAUSIBLE_RUN_TO));
      default ->
          Words.number(timeline.constant(Constant.PLAUSIBLE_RIDE_FROM))
              + " to "
              + Words.number(timeline.constant(Constant.PLAUSIBLE_RIDE_TO))
              + " km/h";
    };
  }

  private static String words(Sport sport, double speed) {
    return switch (sport) {
      case SWIM -> Words.swimPace(100 / speed);
      case RUN -> Words.runPace(1000 / speed);
      default -> Digits.fixed(Pace.KMH * speed, 1) + " km/h";
    };
  }

  @Override
  public List<Where> where() {
    return session.where();
  }
}
