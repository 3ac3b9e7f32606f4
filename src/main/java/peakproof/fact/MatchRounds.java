package peakproof.fact;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import peakproof.measure.Constants;
import peakproof.measure.Matching;
import peakproof.measure.Matching.Entry;

/**
 * Matches day by day, then what is left week by week, then over the ends of weeks. In one go a
 * missed ride of a Thursday would take the long one of the Saturday, and a missed run of a Sunday
 * the short one of the next Tuesday, and so on through the weeks. At the end a session may move
 * through the whole of its week: whoever works in shifts trains when there is time, and the week is
 * what counts.
 */
final class MatchRounds {
  private final Constants constants;
  private final List<Matching.Pair> pairs = new ArrayList<>();
  private List<Entry> missed;
  private List<Entry> left;

  private MatchRounds(List<Entry> planned, List<Entry> done, Constants constants) {
    this.constants = constants;
    this.missed = planned;
    this.left = done;
  }

  static Matching of(List<Entry> planned, List<Entry> done, Constants constants) {
    MatchRounds rounds = new MatchRounds(planned, done, constants);
    rounds.round(Entry::date, Function.identity());
    rounds.round(MatchRounds::monday, Function.identity());
    rounds.round(entry -> LocalDate.MIN, Function.identity());
    rounds.round(MatchRounds::monday, MatchRounds::onMonday);
    rounds.pairs.sort(Comparator.comparing(pair -> pair.planned().date()));
    return new Matching(
        List.copyOf(rounds.pairs), List.copyOf(rounds.missed), List.copyOf(rounds.left));
  }

  static LocalDate monday(Entry entry) {
    return Week.monday(entry.date());
  }

  private static Entry onMonday(Entry entry) {
    return new Entry(entry.at(), monday(entry), entry.sport(), entry.minutes());
  }

  /** Holds those against each other that share a day, as if they stood where they are put. */
  private void round(Function<Entry, LocalDate> shared, Function<Entry, Entry> put) {
    Map<LocalDate, List<Entry>> groups = grouped(missed, shared);
    Map<LocalDate, List<Entry>> doneThen = grouped(left, shared);
    List<Entry> stillMissed = new ArrayList<>();
    List<Entry> stillLeft = new ArrayList<>(left);
    groups.forEach(
        (day, group) -> {
          Map<Entry, Entry> origin = new HashMap<>();
          List<Entry> planned = put(group, put, origin);
          List<Entry> done = put(doneThen.getOrDefault(day, List.of()), put, origin);
          Matching round = Matching.of(planned, done, constants);
          for (Matching.Pair pair : round.pairs()) {
            Entry came = origin.getOrDefault(pair.done(), pair.done());
            pairs.add(new Matching.Pair(origin.getOrDefault(pair.planned(), pair.planned()), came));
            stillLeft.remove(came);
          }
          round.missed().forEach(e -> stillMissed.add(origin.getOrDefault(e, e)));
        });
    missed = stillMissed;
    left = stillLeft;
  }

  private static Map<LocalDate, List<Entry>> grouped(
      List<Entry> entries, Function<Entry, LocalDate> shared) {
    Map<LocalDate, List<Entry>> groups = new TreeMap<>();
    entries.forEach(
        entry -> groups.computeIfAbsent(shared.apply(entry), day -> new ArrayList<>()).add(entry));
    return groups;
  }

  private static List<Entry> put(
      List<Entry> entries, Function<Entry, Entry> put, Map<Entry, Entry> origin) {
    List<Entry> moved = new ArrayList<>();
    for (Entry entry : entries) {
      Entry its = put.apply(entry);
      origin.put(its, entry);
      moved.add(its);
    }
    return moved;
  }
}
