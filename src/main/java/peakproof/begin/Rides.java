package peakproof.begin;

import java.util.List;
import peakproof.measure.DistanceClass;

/** The rides of a skeleton, with the runs off the bike. */
final class Rides {
  private static final double IN_POSITION = 0.7;
  private static final double BUILD_RACE_EFFORT = 0.25;
  private static final double TAPER_RACE_EFFORT = 0.4;

  private final Brief brief;
  private final Fuelling fuelling;

  Rides(Brief brief) {
    this.brief = brief;
    this.fuelling = new Fuelling(brief);
  }

  /** The one ride of the week that is hard, and a short run off it. */
  Work midweek(Frame.Week week, double minutes, int off) {
    String run = "run: " + off + "min easy";
    return Work.of("bike", midweekLine(week, (int) minutes)).then(new Work(run, List.of()));
  }

  private String midweekLine(Frame.Week week, int minutes) {
    if (week.focus() == Frame.Focus.LIGHTER) {
      return Scalar.duration(minutes) + " steady";
    }
    boolean hard = brief.profile().ridesHard();
    int work = hard ? 4 : 7;
    int rest = hard ? 3 : 4;
    int most = week.focus() == Frame.Focus.TAPER ? 3 : 5;
    int count = Math.max(2, Math.min(most, (minutes - 25 + rest) / (work + rest)));
    int end = Math.max(10, (minutes - 15 - count * (work + rest) + rest) / 5 * 5);
    return "15min easy, "
        + count
        + "x"
        + work
        + (hard ? "min hard r" : "min threshold r")
        + rest
        + "min, "
        + Scalar.duration(end)
        + " easy";
  }

  Work easy(double minutes) {
    return Work.of("bike", Scalar.duration((int) minutes) + " easy");
  }

  /** The long ride in race kit, race effort in the middle of it, and the run off it. */
  Work longOne(Frame.Week week, double minutes) {
    Work ride = kitted(longLine(week, (int) minutes), minutes);
    boolean tries = week.trial() == Frame.Trial.REHEARSAL;
    return (tries ? ride.with("practise", "[transition]") : ride).then(off(week));
  }

  /** The ride of the dress rehearsal. */
  Work rehearsal(Frame.Week week, double minutes, int runMinutes) {
    return kitted(longLine(week, (int) minutes), minutes)
        .with("practise", "[transition]")
        .then(fuelling.onRun(shod("run: " + Scalar.duration(runMinutes) + " race")));
  }

  private String longLine(Frame.Week week, int minutes) {
    double share =
        switch (week.focus()) {
          case BUILD -> BUILD_RACE_EFFORT;
          case PEAK -> brief.house().of("bike-race-effort-block", "race-effort") + 0.05;
          case TAPER -> TAPER_RACE_EFFORT;
          case LIGHTER -> 0;
        };
    int before = minutes >= 150 ? 30 : 15;
    int race = (int) Math.ceil(minutes * share / 5) * 5;
    int after = minutes - before - race;
    if (race == 0) {
      return Scalar.duration(minutes) + " easy";
    }
    return Scalar.duration(before)
        + " easy, "
        + Scalar.duration(race)
        + " race"
        + (after < 5 ? "" : ", " + Scalar.duration(after) + " easy");
  }

  private Work off(Frame.Week week) {
    int usual = brief.practice().offLongRide();
    return switch (week.focus()) {
      case BUILD -> shod("run: " + Math.min(20, usual) + "min easy");
      case PEAK -> fuelling.onRun(shod("run: " + offMinutes(usual) + "min " + offEffort()));
      case TAPER -> shod("run: " + Math.min(15, usual) + "min race");
      case LIGHTER -> shod("run: " + Math.min(15, usual) + "min easy");
    };
  }

  /** Race effort over a sprint is hard, and one hard run a week is enough. */
  private String offEffort() {
    return brief.distance() == DistanceClass.SPRINT ? "steady" : "race";
  }

  /** As long as the house asks of one long brick. */
  private int offMinutes(int usual) {
    return brief.isLong()
        ? (int) Math.max(usual, brief.house().of("brick-long-none", "run"))
        : usual;
  }

  private static Work shod(String line) {
    return new Work(line, List.of(new Work.Key("kit", "[race-shoes]")));
  }

  private Work kitted(String line, double minutes) {
    Work ride = Work.of("bike", line).with("kit", "[race-bike, race-clothing]");
    if ("aero".equals(brief.plan().athlete().position())) {
      ride = ride.with("aero", Scalar.duration(((int) (minutes * IN_POSITION / 5)) * 5));
    }
    return minutes >= Fuelling.FROM ? fuelling.onBike(ride) : ride;
  }
}
