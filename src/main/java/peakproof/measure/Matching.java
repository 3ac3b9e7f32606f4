package peakproof.measure;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import peakproof.document.Sport;

/**
 * Which done session was which planned one: same sport, within two days, nearest duration, in order
 * of date. Common practice, no source.
 *
 * @param pairs matched
 * @param missed planned and not done
 * @param extra done and not planned
 */
public record Matching(List<Pair> pairs, List<Entry> missed, List<Entry> extra) {

  /**
   * A session on a day.
   *
   * @param at its JSON pointer
   * @param minutes null when unknown
   */
  public record Entry(String at, LocalDate date, Sport sport, @Nullable Double minutes) {
    /** Minutes that are no number are unknown. */
    public Entry {
      minutes = minutes == null ? null : Amount.finite(minutes);
    }
  }

  /** A planned session and the one it became. */
  public record Pair(Entry planned, Entry done) {}

  /** Matches each planned session in order of date with the done one nearest in duration. */
  public static Matching of(List<Entry> planned, List<Entry> done, Constants constants) {
    double days = constants.of(Constant.MATCHING_DAYS);
    List<Entry> left = new ArrayList<>(done);
    List<Pair> pairs = new ArrayList<>();
    List<Entry> missed = new ArrayList<>();
    List<Entry> inOrder = planned.stream().sorted(Comparator.comparing(Entry::date)).toList();
    for (Entry wanted : inOrder) {
      Optional<Entry> nearest =
          left.stream()
              .filter(each -> each.sport == wanted.sport && apart(each, wanted) <= days)
              .min(
                  Comparator.comparingDouble((Entry each) -> difference(each, wanted))
                      .thenComparing(each -> apart(each, wanted))
                      .thenComparing(Entry::date));
      if (nearest.isPresent()) {
        left.remove(nearest.get());
        pairs.add(new Pair(wanted, nearest.get()));
      } else {
        missed.add(wanted);
      }
    }
    return new Matching(List.copyOf(pairs), List.copyOf(missed), List.copyOf(left));
  }

  private static long apart(Entry one, Entry other) {
    return Math.abs(ChronoUnit.DAYS.between(one.date, other.date));
  }

  /** Sessions of unknown duration come last. */
  private static double difference(Entry one, Entry other) {
    Double minutes = one.minutes;
    Double others = other.minutes;
    return minutes == null || others == null ? Double.MAX_VALUE : Math.abs(minutes - others);
  }
}
