package peakproof.fact;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import peakproof.measure.Constant;
import peakproof.measure.DistanceClass;
import peakproof.measure.Domain;
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
 * @param heavySessionShare share of the sessions with a domain that are heavy by the hardest one
 *     held for some minutes; unknown like the heavy share
 * @param severeShare share of the classified time; unknown like the heavy share
 */
public record HeavyWork(
    Week week,
    LocalDate from,
    @Nullable Double moderateShare,
    @Nullable Double heavyShare,
    @Nullable Double heavySessionShare,
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
    List<DomainMinutes> sessions =
        four.stream()
            .flatMap(each -> each.sessions().filter(Session::endurance))
            .map(session -> domains(session, timeline))
            .toList();
    DomainMinutes minutes =
        sessions.stream().reduce(DomainMinutes.whole(null, 0.0), DomainMinutes::plus);
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
        known ? Exact.of(heavy(sessions, timeline)) : null,
        known ? Exact.of(shares.severe()) : null);
  }

  private static @Nullable Double heavy(List<DomainMinutes> sessions, Timeline timeline) {
    double held = timeline.constant(Constant.HARDEST_DOMAIN_HELD);
    List<Domain> hardest =
        sessions.stream()
            .map(session -> session.hardestHeld(held))
            .filter(Objects::nonNull)
            .map(Objects::requireNonNull)
            .toList();
    return hardest.isEmpty()
        ? null
        : (Double) ((double) Collections.frequency(hardest, Domain.HEAVY) / hardest.size());
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
