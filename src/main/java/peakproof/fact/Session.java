package peakproof.fact;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import peakproof.document.Sport;
import peakproof.measure.Constant;
import peakproof.measure.Domain;
import peakproof.measure.DomainEdges;
import peakproof.measure.DomainMinutes;
import peakproof.measure.SetBreakdown;

/**
 * One session, done or planned: a {@link Swim}, {@link Ride}, {@link Run}, {@link Strength} or
 * {@link OtherSession}. What neither plan nor log says is unknown; a rule that compares an unknown
 * stays silent.
 */
public abstract sealed class Session implements Fact
    permits Swim, Ride, Run, Strength, OtherSession {
  final Timeline timeline;
  final peakproof.document.Session written;
  final @Nullable SetBreakdown set;
  final @Nullable Session before;
  private final LocalDate date;
  private final boolean planned;
  private final @Nullable Double minutes;
  private final @Nullable Double metres;
  private @Nullable Boolean hard;

  Session(Draft draft) {
    this.timeline = draft.timeline();
    this.written = draft.written();
    this.set = draft.set();
    this.before = draft.before();
    this.date = draft.date();
    this.planned = draft.planned();
    this.minutes = minutes(written.recorded().seconds(), set);
    this.metres = metres(written.recorded().metres(), set);
  }

  private static @Nullable Double minutes(@Nullable Double seconds, @Nullable SetBreakdown set) {
    return seconds != null
        ? (Double) Exact.of(seconds.doubleValue() / 60)
        : set == null ? null : Exact.of(set.minutes());
  }

  private static @Nullable Double metres(@Nullable Double metres, @Nullable SetBreakdown set) {
    return metres != null || set == null ? metres : Exact.of(set.metres());
  }

  /** What a session is made from; {@code before} is what it follows without a break. */
  record Draft(
      Timeline timeline,
      LocalDate date,
      boolean planned,
      peakproof.document.Session written,
      @Nullable SetBreakdown set,
      @Nullable Session before) {}

  abstract Sport sport();

  /** Its day. */
  public LocalDate date() {
    return date;
  }

  /** The Monday of its week. */
  public LocalDate week() {
    return Week.monday(date);
  }

  /** Days before race day, 21 for D-21. */
  public double daysToRace() {
    return ChronoUnit.DAYS.between(date, timeline.raceDate());
  }

  /** True when it is still to come, so that the coach can change it. */
  public boolean planned() {
    return planned;
  }

  /** The session in words: its set line as written, or its duration or distance. */
  public String label() {
    String what =
        written.set() != null
            ? written.set().text()
            : minutes() != null
                ? Words.minutes(minutes())
                : metres() != null ? Words.metres(metres(), sport()) : "a session";
    return sport().word() + " " + what;
  }

  /** Minutes in all, rests included; unknown when neither written nor computable. */
  public @Nullable Double minutes() {
    return minutes;
  }

  /** Metres in all; unknown when neither written nor computable. */
  public @Nullable Double metres() {
    return metres;
  }

  /** Kilometres in all; unknown like the metres. */
  public @Nullable Double km() {
    Double metres = metres();
    return metres == null ? null : (Double) (metres / 1000);
  }

  /** The kit it lists; none when it lists none. */
  Set<String> kit() {
    Set<String> kit = written.wear().kit();
    return kit == null ? Set.of() : kit;
  }

  /** Minutes in each intensity domain: by the set line, else the whole of it by its means. */
  DomainMinutes domains() {
    return set != null
        ? set.domains()
        : DomainMinutes.whole(
            DomainEdges.ofLogged(
                written.recorded(), sport(), timeline.calibration(), timeline.constants()),
            minutes());
  }

  /** Planned minutes in the severe domain; none for a logged session without a set line. */
  public double severeMinutes() {
    Double severe = set == null ? null : set.domains().in(Domain.SEVERE);
    return severe == null ? 0 : severe;
  }

  /**
   * True for a hard session: enough severe minutes when planned, a high rating when logged. A pace
   * that can only be a slip of units makes none.
   */
  public boolean hard() {
    Boolean known = hard;
    if (known == null) {
      known = writtenHard() && !(planned && ImpliedSpeed.slips(this, timeline));
      hard = known;
    }
    return known;
  }

  private boolean writtenHard() {
    Double rpe = written.recorded().rpe();
    if (rpe != null && !planned) {
      return rpe >= timeline.constant(Constant.HARD_RATING);
    }
    return set != null && Boolean.TRUE.equals(set.hard());
  }

  /** True for a hard session, a long run or a long ride. */
  public boolean hardOrLong() {
    return hard()
        || this instanceof Run run && run.longRun()
        || this instanceof Ride ride && ride.longRide();
  }

  /** True with race effort or harder for some minutes. */
  public boolean sharp() {
    return writtenHard() || raceMinutes() >= timeline.constant(Constant.RACE_EFFORT_LEAST) - 1e-9;
  }

  /** True when nothing says that any of it is harder than the moderate domain. */
  boolean easy() {
    Double rpe = written.recorded().rpe();
    if (rpe != null && !planned) {
      return rpe <= timeline.constant(Constant.EDGE_RATING_MODERATE);
    }
    return set == null || none(set.domains().heavy()) && none(set.domains().severe());
  }

  private static boolean none(@Nullable Double minutes) {
    return minutes != null && minutes <= 0;
  }

  /**
   * Whether any of it is at race effort or harder than moderate; null when that cannot be told: a
   * mean hides short fast parts.
   */
  @Nullable Boolean brisk() {
    if (set == null) {
      Domain mean =
          DomainEdges.ofLogged(
              written.recorded(), sport(), timeline.calibration(), timeline.constants());
      return mean == null || mean == Domain.MODERATE ? null : (Boolean) true;
    }
    if (some(set.raceMinutes()) || some(set.domains().heavy()) || some(set.domains().severe())) {
      return true;
    }
    return some(set.domains().unclassified()) ? null : (Boolean) false;
  }

  /** Unknown minutes are those of a part whose length cannot be known, but which is there. */
  private static boolean some(@Nullable Double minutes) {
    return minutes == null || minutes > 0;
  }

  /** Minutes at race effort; none where it is not known. */
  public double raceMinutes() {
    Double race = set == null ? null : set.raceMinutes();
    return race == null ? 0 : race;
  }

  /** True for a swim, a ride or a run. */
  public boolean endurance() {
    return sport().racing();
  }

  /** True for training of any kind and for a race on the way; not for a walk and the like. */
  public boolean training() {
    return sport() != Sport.OTHER || written.race() != null;
  }

  /** True for a test. */
  public boolean test() {
    return written.test();
  }

  /** Its length as a share of the longest of its sport in the eight weeks before; unknown alone. */
  public @Nullable Double shareOfLongest() {
    Double minutes = minutes();
    Double longest = timeline.longSessions().longestBefore(this);
    return minutes == null || longest == null || longest <= 0 || !longestIsLogged()
        ? null
        : (Double) Exact.of(minutes / longest);
  }

  boolean longestIsLogged() {
    return timeline.longSessions().longestIsLogged(this);
  }

  /** What makes it a large one, in words: a test, or its share of the longest of its sport. */
  public String againstLongest() {
    Double share = shareOfLongest();
    return test() || share == null
        ? "a test"
        : Words.share(share) + " of the longest of its sport in the eight weeks before";
  }

  @Override
  public List<Where> where() {
    return List.of(new Where(written.at(), date, null));
  }

  @Override
  public String toString() {
    return date + " " + label();
  }
}
