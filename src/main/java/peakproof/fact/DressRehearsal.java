package peakproof.fact;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import peakproof.document.Event;
import peakproof.document.Plan;
import peakproof.measure.Constant;
import peakproof.measure.Constants;
import peakproof.measure.DistanceClass;

/**
 * Whether a day is the race in small: a swim, and a ride with a run straight off it, each a share
 * of its leg, in the kit of the race. Race bike, clothing and shoes are asked for where plan or log
 * speak of them at all, the wetsuit where the athlete means to race in one. A race on the way with
 * legs long enough is one as well.
 */
final class DressRehearsal {
  private final Plan plan;
  private final List<Session> sessions;
  private final double share;
  private final double enough;

  DressRehearsal(
      Plan plan, List<Session> sessions, @Nullable DistanceClass distance, Constants constants) {
    this.plan = plan;
    this.sessions = sessions;
    this.share = constants.of(Constant.REHEARSAL_SHARE);
    this.enough =
        constants.of(
            distance == DistanceClass.FULL
                ? Constant.REHEARSAL_RUN_FULL
                : Constant.REHEARSAL_RUN_HALF);
  }

  Tally on(List<Day> days) {
    return Tally.count(days, this::on, "distance, time and kit of swims, rides and runs of a day");
  }

  private @Nullable Boolean on(Day day) {
    @Nullable Boolean any = false;
    for (Session session : day.sessions()) {
      if (session.written.race() != null) {
        any = either(any, raced(session.written.legs()));
      }
      Ride ride = session instanceof Run run ? run.ride() : null;
      for (Session swim : day.sessions()) {
        if (ride != null && swim instanceof Swim) {
          any =
              either(
                  any, all(large(swim), large(ride), largeRun(session), kit(swim, ride, session)));
        }
      }
    }
    return any;
  }

  private @Nullable Boolean raced(Event.@Nullable Legs legs) {
    if (legs == null) {
      return null;
    }
    Event.Legs race = plan.event().legs();
    Double run = legs.run();
    return all(
        reaches(legs.swim() == null ? 0.0 : legs.swim(), race.swim()),
        reaches(legs.bike() == null ? 0.0 : legs.bike(), race.bike()),
        reachesRun(run == null ? 0.0 : run));
  }

  private @Nullable Boolean large(Session session) {
    Event.Legs race = plan.event().legs();
    if (session instanceof Swim) {
      return reaches(session.metres(), race.swim());
    }
    Double metres = session.metres();
    Double minutes = session.minutes();
    Double goal = plan.goal() == null ? null : plan.goal().bike();
    return metres != null || minutes == null
        ? reaches(metres, race.bike())
        : reaches(minutes * 60, goal);
  }

  private @Nullable Boolean largeRun(Session run) {
    return reachesRun(run.metres());
  }

  private @Nullable Boolean reachesRun(@Nullable Double metres) {
    return metres != null && metres >= enough - 1e-9
        ? Boolean.TRUE
        : reaches(metres, plan.event().legs().run());
  }

  private @Nullable Boolean reaches(@Nullable Double amount, @Nullable Double leg) {
    return amount == null || leg == null ? null : (Boolean) (amount >= share * leg - 1e-9);
  }

  private @Nullable Boolean kit(Session swim, Session ride, Session run) {
    boolean suited = plan.raceDay() != null && Boolean.TRUE.equals(plan.raceDay().wetsuitWorn());
    return all(
        suited ? worn(swim, "wetsuit") : Boolean.TRUE,
        wornIfNamed(ride, "race-bike"),
        wornIfNamed(ride, "race-clothing"),
        wornIfNamed(run, "race-shoes"));
  }

  private @Nullable Boolean wornIfNamed(Session session, String word) {
    return sessions.stream().noneMatch(each -> each.kit().contains(word))
        ? Boolean.TRUE
        : worn(session, word);
  }

  private static @Nullable Boolean worn(Session session, String word) {
    return session.planned() || session.written.wear().kit() != null
        ? (Boolean) session.kit().contains(word)
        : null;
  }

  private static @Nullable Boolean all(@Nullable Boolean... parts) {
    if (Arrays.asList(parts).contains(false)) {
      return false;
    }
    return Arrays.stream(parts).allMatch(Objects::nonNull) ? Boolean.TRUE : null;
  }

  private static @Nullable Boolean either(@Nullable Boolean one, @Nullable Boolean other) {
    if (Boolean.TRUE.equals(one) || Boolean.TRUE.equals(other)) {
      return true;
    }
    return one == null || other == null ? null : (Boolean) false;
  }
}
