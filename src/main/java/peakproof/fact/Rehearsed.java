package peakproof.fact;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * One thing of the race and the days it was, or is to be, rehearsed on.
 *
 * @param what in a few words
 * @param done days of the log
 * @param planned days to come
 * @param unsaid true when the log leaves open whether some session rehearsed it
 */
public record Rehearsed(
    String what, List<LocalDate> done, List<LocalDate> planned, boolean unsaid) {

  /** Everything a race asks for, in the order of the day. */
  static List<Rehearsed> all(Timeline timeline) {
    List<Session> sessions = timeline.diary().sessions();
    Skills skills = timeline.skills();
    List<Rehearsed> all = new ArrayList<>();
    all.add(of("open water", swims(sessions), skills::openWater));
    all.add(of("wetsuit", swims(sessions), skills::wetsuit));
    for (String skill :
        List.of("sighting", "fast-start", "contact", "buoy-turns", "both-sides", "warm-up")) {
      all.add(
          of(
              skill.replace('-', ' '),
              swims(sessions),
              swim -> single(skills.practised(List.of(swim), skill))));
    }
    all.add(of("transition", sessions, session -> single(skills.transitions(List.of(session)))));
    all.add(of("race bike", rides(sessions), skills::raceBike));
    all.add(of("race clothing on the bike", rides(sessions), ride -> clothing(ride, skills)));
    all.add(of("run off the bike", runs(sessions), Run::offBike));
    RaceShoes shoes = timeline.rehearsals().shoes();
    all.add(of("race shoes", runs(sessions), run -> single(shoes.runs(List.of(run)))));
    Fuelling fuelling = timeline.rehearsals().fuelling();
    all.add(
        of(
            "fuel of the race on a long session",
            sessions.stream().filter(Session::endurance).toList(),
            session -> single(fuelling.longSessions(List.of(session)))));
    all.add(dress(timeline));
    return all;
  }

  private static @Nullable Boolean clothing(Ride ride, Skills skills) {
    Double minutes = skills.raceClothingMinutes(ride);
    return ride.raceClothing() ? Boolean.TRUE : minutes == null ? null : (Boolean) false;
  }

  private static @Nullable Boolean single(Tally tally) {
    return tally.value() > 0 ? Boolean.TRUE : tally.doubt() == null ? (Boolean) false : null;
  }

  private static Rehearsed dress(Timeline timeline) {
    List<LocalDate> done = new ArrayList<>();
    List<LocalDate> planned = new ArrayList<>();
    boolean unsaid = false;
    for (Day day : timeline.days()) {
      Tally tally = timeline.rehearsals().dress().on(List.of(day));
      if (tally.value() > 0) {
        (day.changeable() ? planned : done).add(day.date());
      }
      unsaid |= tally.doubt() != null && tally.value() <= 0;
    }
    return new Rehearsed("the race in small", done, planned, unsaid);
  }

  private static <S extends Session> Rehearsed of(
      String what, List<S> sessions, Function<S, @Nullable Boolean> does) {
    List<LocalDate> done = new ArrayList<>();
    List<LocalDate> planned = new ArrayList<>();
    boolean unsaid = false;
    for (S session : sessions) {
      Boolean has = does.apply(session);
      List<LocalDate> days = session.planned() ? planned : done;
      if (Boolean.TRUE.equals(has) && !days.contains(session.date())) {
        days.add(session.date());
      }
      unsaid |= has == null;
    }
    return new Rehearsed(what, List.copyOf(done), List.copyOf(planned), unsaid);
  }

  private static List<Swim> swims(List<Session> sessions) {
    return of(sessions, Swim.class);
  }

  private static List<Ride> rides(List<Session> sessions) {
    return of(sessions, Ride.class);
  }

  private static List<Run> runs(List<Session> sessions) {
    return of(sessions, Run.class);
  }

  private static <S extends Session> List<S> of(List<Session> sessions, Class<S> kind) {
    return sessions.stream().filter(kind::isInstance).map(kind::cast).toList();
  }
}
