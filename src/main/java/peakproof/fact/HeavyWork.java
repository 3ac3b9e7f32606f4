package peakproof.fact;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.measure.Constant;
import peakproof.measure.DistanceClass;
import peakproof.measure.DomainEdges;
import peakproof.measure.DomainMinutes;
import peakproof.measure.DomainShares;
import peakproof.measure.SetBreakdown;

/**
 * How the time in the water, on the bike and on foot is spread over the intensity domains in four
 * weeks of build, lighter ones among them, the last of which can still be changed. Planned race
 * effort is left out.
 *
 * @param week the last of them
 * @param from the Monday of the first
 * @param moderateShare share of the classified time; unknown like the heavy share
 * @param heavyShare share of the classified time; unknown when a day or a duration is, and when too
 *     much cannot be classified
 * @param severeShare share of the classified time; unknown like the heavy share
 */
public record HeavyWork(
    Week week,
    LocalDate from,
    @Nullable Double moderateShare,
    @Nullable Double heavyShare,
    @Nullable Double severeShare)
    implements Fact {
  private static final int WEEKS = 4;

  static List<HeavyWork> all(Timeline timeline) {
    List<Week> weeks = timeline.weeks().all();
    List<HeavyWork> all = new ArrayList<>();
    for (int last = WEEKS - 1; last < weeks.size(); last++) {
      List<Week> four = weeks.subList(last - WEEKS + 1, last + 1);
      Week week = weeks.get(last);
      if (week.changeable() && four.stream().allMatch(HeavyWork::building)) {
        all.add(of(week, four, timeline));
      }
    }
    return all;
  }

  private static boolean building(Week week) {
    return week.phase() == Phase.BUILD || week.phase() == Phase.LIGHTER;
  }

  private static HeavyWork of(Week week, List<Week> four, Timeline timeline) {
    DomainMinutes minutes = DomainMinutes.whole(null, 0.0);
    for (Week each : four) {
      for (Session session : each.sessions().filter(Session::endurance).toList()) {
        minutes = minutes.plus(domains(session, timeline));
      }
    }
    DomainShares shares = DomainShares.of(minutes, timeline.constants());
    Double outside = shares.unclassified();
    boolean known =
        four.stream().allMatch(Week::known)
            && outside != null
            && outside <= timeline.constant(Constant.UNCLASSIFIED_MOST) + 1e-9;
    return new HeavyWork(
        week,
        four.get(0).starts(),
        known ? Exact.of(shares.moderate()) : null,
        known ? Exact.of(shares.heavy()) : null,
        known ? Exact.of(shares.severe()) : null);
  }

  /** By the set line, else the whole of a logged session by its means. */
  private static DomainMinutes domains(Session session, Timeline timeline) {
    return session.set != null
        ? withoutRaceEffort(session.set, timeline)
        : DomainMinutes.whole(
            DomainEdges.ofLogged(
                session.written.recorded(),
                session.sport(),
                timeline.calibration(),
                timeline.constants()),
            session.minutes());
  }

  /** Race effort is heavy but in a sprint, and what it is for is another question. */
  private static DomainMinutes withoutRaceEffort(SetBreakdown set, Timeline timeline) {
    DomainMinutes all = set.domains();
    Double heavy = all.heavy();
    Double race = set.raceMinutes();
    return timeline.calibration().distance() == DistanceClass.SPRINT
            || heavy == null
            || race == null
        ? all
        : new DomainMinutes(
            all.moderate(), Math.max(0, heavy - race), all.severe(), all.unclassified());
  }

  @Override
  public List<Where> where() {
    return week.where();
  }
}
