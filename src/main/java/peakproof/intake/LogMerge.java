package peakproof.intake;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import peakproof.document.Log;
import peakproof.document.Positions;
import peakproof.document.Session;
import peakproof.document.Sport;

/**
 * Tells the sessions a log does not have from those it has. Each entry of the log stands for one
 * session of a file; of several alike the nearest ones belong together, so that a file taken twice
 * adds nothing the second time.
 */
public final class LogMerge {
  private final Map<LocalDate, List<Known>> known = new HashMap<>();
  private final Map<LocalDate, String> restful = new HashMap<>();

  /** A session the log has, or will have. */
  private record Known(Sport sport, Extent extent, String told) {}

  private record Pair(int incoming, int known, double apart) {}

  /**
   * @param log null for one that is yet to be begun
   */
  public LogMerge(@Nullable Log log, Positions positions) {
    Map<LocalDate, Log.Day> days = log == null ? Collections.emptyMap() : log.days();
    days.forEach(
        (date, day) -> {
          day.sessions().forEach(session -> know(date, session, positions));
          if (day.rest()) {
            restful.put(date, positions.of(day.at()).toString());
          }
        });
  }

  /** True when the log calls a day a rest day. */
  public boolean saysRest(LocalDate date) {
    return restful.containsKey(date);
  }

  private void know(LocalDate date, Session session, Positions positions) {
    for (Session each = session; each != null; each = each.then()) {
      Sport sport = each.sport();
      if (sport != null) {
        know(date, new Known(sport, Extent.of(each), "the log has it, " + positions.of(each.at())));
      }
    }
  }

  private void know(LocalDate date, Known session) {
    known.computeIfAbsent(date, day -> new ArrayList<>()).add(session);
  }

  /** Decides on the sessions of one file, in its order; those taken count as known afterwards. */
  public List<Decision> decide(List<Incoming> sessions) {
    Map<Integer, Decision> decisions = new TreeMap<>();
    Map<LocalDate, Map<Sport, List<Integer>>> days = new LinkedHashMap<>();
    Map<Object, Incoming> rows = new HashMap<>();
    for (int i = 0; i < sessions.size(); i++) {
      Incoming session = sessions.get(i);
      Incoming twin = rows.putIfAbsent(List.of(session.date(), session.keys()), session);
      if (restful.containsKey(session.date())) {
        decisions.put(
            i, Decision.skipped(session, "the log says rest, " + restful.get(session.date())));
      } else if (twin != null) {
        decisions.put(i, Decision.skipped(session, "the same as " + twin.from()));
      } else {
        days.computeIfAbsent(session.date(), day -> new LinkedHashMap<>())
            .computeIfAbsent(session.sport(), sport -> new ArrayList<>())
            .add(i);
      }
    }
    days.forEach(
        (date, sports) ->
            sports.forEach((sport, some) -> decide(date, sport, some, sessions, decisions)));
    decisions.values().stream()
        .filter(Decision::taken)
        .map(Decision::session)
        .forEach(
            taken ->
                know(
                    taken.date(),
                    new Known(taken.sport(), Extent.of(taken), "the same as " + taken.from())));
    return List.copyOf(decisions.values());
  }

  /** Decides on the sessions of a day in one sport. */
  private void decide(
      LocalDate date,
      Sport sport,
      List<Integer> some,
      List<Incoming> sessions,
      Map<Integer, Decision> decisions) {
    List<Known> its =
        known.getOrDefault(date, List.of()).stream().filter(k -> k.sport() == sport).toList();
    List<Known> free = new ArrayList<>(its);
    for (Pair pair : pairs(some, its, sessions)) {
      Known entry = its.get(pair.known());
      if (!decisions.containsKey(pair.incoming()) && free.remove(entry)) {
        Incoming session = sessions.get(pair.incoming());
        decisions.put(pair.incoming(), Decision.skipped(session, entry.told()));
      }
    }
    for (int i : some) {
      if (!decisions.containsKey(i)) {
        decisions.put(i, remaining(sessions.get(i), free));
      }
    }
  }

  private static List<Pair> pairs(List<Integer> some, List<Known> its, List<Incoming> sessions) {
    List<Pair> pairs = new ArrayList<>();
    for (int i : some) {
      Extent extent = Extent.of(sessions.get(i));
      for (int k = 0; k < its.size(); k++) {
        Extent other = its.get(k).extent();
        if (extent.likeness(other) == Extent.Likeness.SAME) {
          pairs.add(new Pair(i, k, extent.distanceTo(other)));
        }
      }
    }
    pairs.sort(
        Comparator.comparingDouble(Pair::apart)
            .thenComparingInt(Pair::incoming)
            .thenComparingInt(Pair::known));
    return pairs;
  }

  private static Decision remaining(Incoming session, List<Known> free) {
    Extent extent = Extent.of(session);
    for (Known entry : free) {
      if (extent.likeness(entry.extent()) == Extent.Likeness.PERHAPS) {
        free.remove(entry);
        return Decision.skipped(session, "perhaps " + entry.told() + ", with no length to compare");
      }
    }
    return Decision.of(session);
  }
}
