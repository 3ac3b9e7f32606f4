package peakproof.fact;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The seven days after a week, by their load: one fact for the lightest of them, one for the two
 * lightest, and so on. There is none once those days are over, and within the last seven days.
 *
 * @param week the week before them
 * @param next the Monday they begin with
 * @param days how many of them
 * @param usualShare the week before as a share of the usual, as {@link Week#usualShare}
 * @param dayShare the heaviest of these days as a share of a usual day's load; unknown when a day's
 *     load is
 */
public record Recovery(
    Week week,
    LocalDate next,
    double days,
    @Nullable Double usualShare,
    @Nullable Double dayShare,
    List<Where> entries)
    implements Fact {
  private static final int WEEK = 7;

  static List<Recovery> all(Timeline timeline) {
    List<Recovery> all = new ArrayList<>();
    for (Week week : timeline.weeks().all()) {
      Week next = timeline.weeks().of(week.starts().plusWeeks(1));
      if (next != null && next.changeable() && next.days().size() == WEEK) {
        add(timeline, week, next, all);
      }
    }
    return all;
  }

  private static void add(Timeline timeline, Week week, Week next, List<Recovery> into) {
    List<Double> loads = new ArrayList<>();
    for (Day day : next.days()) {
      Double load = timeline.loads().of(day);
      if (load != null) {
        loads.add(load);
      }
    }
    Collections.sort(loads);
    Double usual = timeline.weeks().usual(week, Week::load);
    Double usualShare = week.usualShare();
    List<Where> entries = new ArrayList<>(next.where());
    entries.addAll(week.where());
    for (int days = 1; days <= WEEK; days++) {
      Double share =
          loads.size() < WEEK || usual == null || usual <= 0
              ? null
              : (Double) Exact.of(loads.get(days - 1) / (usual / WEEK));
      into.add(new Recovery(week, next.starts(), days, usualShare, share, List.copyOf(entries)));
    }
  }

  /** {@code the week of 14 Jun}. */
  public String label() {
    return week.label();
  }

  @Override
  public List<Where> where() {
    return entries;
  }
}
