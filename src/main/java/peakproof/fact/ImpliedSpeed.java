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
 */
public final class ImpliedSpeed implements Fact {
  private static final List<String> FASTER = List.of("wetsuit", "fins", "paddles", "pull-buoy");

  private final Session session;
  private final Timeline timeline;
  private final double speed;
  private final boolean whole;
  private final @Nullable Double easySpeed;
  private final @Nullable Double criticalSpeed;

  /**
   * Takes a speed.
   *
   * @param speed m/s
   * @param whole true for the mean of a logged session, false for a planned pace
   * @param easy true when the session is one continuous easy part
   */
  private ImpliedSpeed(
      Session session, double speed, boolean whole, boolean easy, Timeline timeline) {
    this.session = session;
    this.timeline = timeline;
    this.speed = speed;
    this.whole = whole;
    this.easySpeed = easy ? TestedSpeed.easy(session.sport(), timeline) : null;
    this.criticalSpeed = inPool(session) ? TestedSpeed.criticalSwim(timeline) : null;
  }

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
    return line != null
        && paces(line.parts()).stream()
            .anyMatch(pace -> slip(session.sport(), 1 / pace.secondsPerMetre(), timeline));
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
      all.add(new ImpliedSpeed(session, metres / seconds, true, easy, timeline));
    }
    if (session.planned() && line != null) {
      paces(line.parts())
          .forEach(
              pace ->
                  all.add(
                      new ImpliedSpeed(
                          session, 1 / pace.secondsPerMetre(), false, easy, timeline)));
    }
  }

  /** The paces that parts ask for, those inside groups among them. */
  private static List<Target.Pace> paces(List<SetLine.Part> parts) {
    List<Target.Pace> paces = new ArrayList<>();
    for (SetLine.Part part : parts) {
      if (part.target() instanceof Target.Pace pace && pace.secondsPerMetre() > 0) {
        paces.add(pace);
      }
      if (part.work() instanceof SetLine.Group group) {
        paces.addAll(paces(group.parts()));
      }
    }
    return paces;
  }

  private static boolean oneEasyPart(SetLine line) {
    SetLine.Part part = line.parts().get(0);
    return line.parts().size() == 1
        && part.count() == 1
        && part.effort() == Effort.EASY
        && !(part.work() instanceof SetLine.Group);
  }

  private static boolean slip(Sport sport, double speed, Timeline timeline) {
    return Boolean.TRUE.equals(UnitSlip.of(sport, speed, 1, timeline.constants()));
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

  /** Where it stands. */
  public Session session() {
    return session;
  }

  /** True when it lies where only a slip of units would bring it. */
  public boolean unitSlip() {
    return slip(session.sport(), speed, timeline);
  }

  /**
   * By which share it is off the athlete's tested easy pace, either way; unknown but for one
   * continuous easy part of a swim or run.
   */
  public @Nullable Double offEasyShare() {
    return easySpeed == null ? null : (Double) Exact.of(Math.abs(easySpeed / speed - 1));
  }

  /**
   * By which share it is faster than critical swim speed by tests, which nobody holds for long:
   * yards taken for metres make a swim 9 % faster; below zero when slower; unknown but for a logged
   * swim in the pool.
   */
  public @Nullable Double overCriticalShare() {
    return criticalSpeed == null ? null : (Double) Exact.of(speed / criticalSpeed - 1);
  }

  /** How long the session takes, minutes; unknown when not said. */
  public @Nullable Double minutes() {
    return session.minutes();
  }

  /** The entry in words. */
  public String reading() {
    Double seconds = session.written.recorded().seconds();
    Double metres = session.written.recorded().metres();
    String entry =
        !whole || seconds == null || metres == null
            ? session.label()
            : session.sport().word()
                + " "
                + Words.metres(metres, session.sport())
                + " in "
                + Words.minutes(seconds / 60);
    return entry + " on " + Words.weekday(session.date()) + ": " + words(session.sport(), speed);
  }

  /** The speed if the distance was meant in yards (swim) or miles. */
  public String otherReading() {
    Sport sport = session.sport();
    return sport == Sport.SWIM
        ? "in yards it is " + words(sport, speed * Pace.YARD)
        : "in miles it is " + words(sport, speed * Pace.MILE / 1000);
  }

  /** The tested easy pace that one easy part is held against, in words. */
  public String easy() {
    return against(easySpeed);
  }

  /** Critical swim speed by tests, in words. */
  public String critical() {
    return against(criticalSpeed);
  }

  private String against(@Nullable Double tested) {
    return tested == null ? "not held against it" : words(session.sport(), tested);
  }

  /** The speeds of the sport that are no slip. */
  public String believed() {
    return switch (session.sport()) {
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
