package peakproof.begin;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import peakproof.measure.DistanceClass;

/**
 * The sessions of one week, by its shares of swim, ride and run: what the long sessions leave goes
 * to the midweek ones, and what these leave to the easy day. Bounds of each: common practice, no
 * source.
 */
final class TrainingWeek {
  /** Minutes of a week from which sessions have their usual size. */
  private static final int USUAL_WEEK = 360;

  private static final int EASY_LEAST = 30;
  private static final int EVENED = 40;

  private final Brief brief;
  private final Frame.Week week;
  private final WeekAmounts amounts;
  private final Map<DayOfWeek, Slots.Role> roles;
  private final boolean rehearsal;
  private final Swims swims;
  private final Rides rides;

  TrainingWeek(
      Brief brief, Frame.Week week, WeekAmounts amounts, Map<DayOfWeek, Slots.Role> roles) {
    this.brief = brief;
    this.week = week;
    this.amounts = amounts;
    this.roles = roles;
    this.rehearsal = brief.isLong() && week.trial() == Frame.Trial.REHEARSAL;
    this.swims = new Swims(brief);
    this.rides = new Rides(brief);
  }

  Map<DayOfWeek, List<Work>> days() {
    Map<DayOfWeek, List<Work>> days = new EnumMap<>(DayOfWeek.class);
    roles.forEach((day, role) -> days.put(day, day(day, role)));
    return days;
  }

  private List<Work> day(DayOfWeek day, Slots.Role role) {
    return switch (role) {
      case POOL -> List.of(poolSwim(), strength());
      case HARD_RIDE -> List.of(rides.midweek(week, midweekRide(), runOffMidweek()));
      case LONG_SWIM -> List.of(swims.longOne(week, amounts), paceRun());
      case LONG_RUN -> List.of(longRun(day));
      case LONG_RIDE -> List.of(rehearsal ? rehearsal() : longRide());
      case EASY -> easyDay(day);
    };
  }

  private Work poolSwim() {
    return week.trial() == Frame.Trial.GOAL_PACE ? swims.goalPaceTest() : swims.pool(week, amounts);
  }

  private Work longRide() {
    return rides.longOne(week, amounts.longRide());
  }

  private Work longRun(DayOfWeek day) {
    Work run = Work.of("run", Scalar.duration((int) amounts.longRun()) + " easy");
    boolean afterRide = roles.get(day.minus(1)) == Slots.Role.LONG_RIDE;
    Work fuelled = amounts.longRun() >= Fuelling.FROM ? new Fuelling(brief).onRun(run) : run;
    return afterRide ? fuelled.with("purpose", "back-to-back") : fuelled;
  }

  private Work rehearsal() {
    Double swim = brief.event().legs().swim();
    int metres = swim == null ? 500 : (int) Math.ceil(swim * 0.3 / 100) * 100;
    return swims
        .beforeTheRide(metres)
        .then(rides.rehearsal(week, amounts.longRide(), rehearsalRun()));
  }

  /** A quarter of the run, or 8 km (half 5 km), at the goal's pace or one easily held. */
  private int rehearsalRun() {
    Double leg = brief.event().legs().run();
    double metres = Math.min(leg == null ? 5000 : leg / 4, fullDistance() ? 8000 : 5000);
    Double goal = brief.plan().goal() == null ? null : brief.plan().goal().run();
    double pace = leg == null || goal == null ? 390 : goal / leg * 1000;
    return (int) Math.ceil((metres / 1000 * pace / 60 + 1) / 5) * 5;
  }

  private boolean fullDistance() {
    return brief.distance() == DistanceClass.FULL;
  }

  private boolean isSmall() {
    return amounts.week() < USUAL_WEEK;
  }

  private int runOffMidweek() {
    return isSmall() ? 10 : brief.isLong() ? 20 : 15;
  }

  private double runs() {
    return amounts.week() * brief.practice().run();
  }

  private double offLongRide() {
    return rehearsal ? rehearsalRun() : brief.practice().offLongRide();
  }

  /** Minutes of the run with race pace. */
  private double midweekRun() {
    double left = runs() - amounts.longRun() - offLongRide() - runOffMidweek();
    return fives(Math.max(30, Math.min(brief.isLong() ? 60 : 35, left)));
  }

  private Work paceRun() {
    int minutes = (int) midweekRun();
    return switch (week.focus()) {
      case BUILD -> shod(middle(minutes, 10, "10min race"));
      case PEAK -> shod(middle(minutes, rehearsal ? 10 : 20, (rehearsal ? 10 : 20) + "min race"));
      case TAPER ->
          shod(
              brief.isLong()
                  ? "10min easy, 6x20s hard r1min, 10min easy"
                  : "8min easy, 4x20s hard r1min, 5min easy");
      case LIGHTER -> Work.of("run", minutes + "min easy");
    };
  }

  private static String middle(int minutes, int race, String line) {
    return "10min easy, " + line + ", " + Math.max(5, minutes - race - 10) + "min easy";
  }

  private static Work shod(String line) {
    return Work.of("run", line).with("kit", "[race-shoes]");
  }

  private double midweekRide() {
    double most = Math.min(75, brief.mostWeekday() - runOffMidweek());
    double least = week.focus() == Frame.Focus.TAPER || isSmall() ? 40 : 45;
    return fives(Math.min(Math.max(least, restOfRiding() * 0.55), Math.max(30, most)));
  }

  private double restOfRiding() {
    return amounts.week() * brief.practice().bike() - amounts.longRide();
  }

  private List<Work> easyDay(DayOfWeek day) {
    List<Work> easy = new ArrayList<>();
    double most = Slots.isWeekend(day) ? 120 : Math.min(90, brief.mostWeekday());
    double run = easyRun();
    double ride =
        fives(Math.min(most, restOfRiding() - midweekRide() - (run > leftToRun() ? run : 0)));
    Work running = Work.of("run", Scalar.duration((int) run) + " easy");
    if (ride >= EASY_LEAST) {
      Work riding = rides.easy(ride);
      easy.add(run >= EASY_LEAST ? riding.then(running) : riding);
    } else if (run >= EASY_LEAST) {
      easy.add(running);
    }
    if (week.focus() != Frame.Focus.TAPER) {
      easy.add(strength());
    }
    return easy;
  }

  private double leftToRun() {
    return runs() - amounts.longRun() - offLongRide() - runOffMidweek() - midweekRun();
  }

  /** Takes time from the easy ride where the long run alone is too much of the running. */
  private double easyRun() {
    double others = offLongRide() + runOffMidweek() + midweekRun();
    double most = brief.house().of("run-long-share", "most");
    boolean lopsided = amounts.longRun() > most * (amounts.longRun() + others);
    double takes = Math.min(EVENED, restOfRiding() - midweekRide() - EASY_LEAST);
    double longest = brief.isLong() ? 50 : 35;
    return fives(Math.min(longest, Math.max(leftToRun(), lopsided ? takes : 0)));
  }

  /** Short and light, so that it is kept up without a sore leg. */
  private Work strength() {
    return Work.of("strength", week.focus() == Frame.Focus.TAPER || isSmall() ? "15min" : "20min")
        .with("for", "[core, balance]")
        .with("load", "light");
  }

  private static double fives(double minutes) {
    return Math.floor(minutes / 5) * 5;
  }
}
