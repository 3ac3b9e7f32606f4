package peakproof.begin;

import java.util.ArrayList;
import java.util.List;

/** The swims of a skeleton. Lengths and rests: common practice, no source. */
final class Swims {
  private static final int LEAST = 1000;
  private static final int MOST = 4000;
  private static final int SMALL = 1500;

  private final Brief brief;

  Swims(Brief brief) {
    this.brief = brief;
  }

  /** Repetitions at race pace, and technique while fresh. */
  Work pool(Frame.Week week, WeekAmounts amounts) {
    double inAll =
        amounts.week() * brief.practice().swim() * 60 / brief.swimPace() * 100
            - longMetres(amounts);
    int repetition = brief.practice().repetition();
    boolean small = Math.max(least(), inAll) < SMALL;
    double room = Math.max(least(), Math.min(MOST, inAll)) - (small ? 500 : 900);
    int count = (int) Math.max(2, Math.min(8, Math.floor(room / repetition)));
    String effort = week.focus() == Frame.Focus.LIGHTER ? " easy" : " race";
    String set = count + "x" + repetition + effort + (repetition >= 400 ? " r30s" : " r20s");
    return Work.of(
            "swim",
            small
                ? "200 easy, 4x50 drill r15s, " + set + ", 100 easy"
                : "400 easy, 6x50 drill r15s, " + set + ", 200 easy")
        .with("where", "pool");
  }

  /** As much of the race swim in hundreds at goal pace as the house takes for a test of it. */
  Work goalPaceTest() {
    Double leg = brief.event().legs().swim();
    double share = brief.house().of("swim-goal-pace-test", "test");
    int count = leg == null ? 10 : (int) Math.ceil(leg * share / 100);
    return Work.of("swim", "300 easy, 4x50 drill r15s, " + count + "x100 race r10s, 100 easy")
        .with("where", "pool");
  }

  /** Half the race swim, so that the test of the goal is no leap. */
  private double least() {
    Double leg = brief.event().legs().swim();
    return Math.max(LEAST, leg == null ? 0 : leg / 2);
  }

  private static double longMetres(WeekAmounts amounts) {
    return 700 + amounts.longSwim();
  }

  /** A fast start that settles into one long stretch without a rest, where the race is swum. */
  Work longOne(Frame.Week week, WeekAmounts amounts) {
    boolean lighter = week.focus() == Frame.Focus.LIGHTER;
    int metres = (int) amounts.longSwim();
    Work swim =
        Work.of(
            "swim",
            lighter
                ? "300 easy, " + metres + " steady, 100 easy"
                : "300 easy, 4x50 hard r20s, " + metres + " race, 200 easy");
    return placed(
        swim,
        lighter
            ? List.of("sighting", "both-sides")
            : List.of("sighting", "both-sides", "fast-start", "contact", "buoy-turns"),
        false);
  }

  /** The swim of the dress rehearsal, straight into the ride. */
  Work beforeTheRide(int metres) {
    return placed(
        Work.of("swim", metres + " race"), List.of("transition", "wetsuit-strip", "warm-up"), true);
  }

  /** The last swim before the race, in its own water if it may be. */
  Work last() {
    return placed(
        Work.of(
            "swim",
            "200 easy, 4x50 hard r20s, " + (brief.isLong() ? 500 : 300) + " race, 100 easy"),
        List.of("sighting", "fast-start"),
        false);
  }

  private Work placed(Work swim, List<String> practise, boolean clothed) {
    if (!brief.isOpenWater()) {
      return swim.with("where", "pool");
    }
    List<String> kit = new ArrayList<>();
    if (brief.mayWearWetsuit()) {
      kit.add("wetsuit");
    }
    if (clothed) {
      kit.add("race-clothing");
    }
    List<String> practised = new ArrayList<>(practise);
    practised.removeIf(one -> one.equals("wetsuit-strip") && !brief.mayWearWetsuit());
    Work placed = swim.with("where", "open-water").with("company", "supervised");
    placed = kit.isEmpty() ? placed : placed.with("kit", list(kit));
    return placed.with("practise", list(practised));
  }

  static String list(List<String> words) {
    return "[" + String.join(", ", words) + "]";
  }
}
