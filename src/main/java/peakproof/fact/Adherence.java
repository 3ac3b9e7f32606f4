package peakproof.fact;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;
import peakproof.document.PlanWeek;
import peakproof.measure.Constant;
import peakproof.measure.Matching;

/**
 * The last so many weeks of the plan against the log: one fact for the last week, one for the last
 * two, and so on. There is none before enough weeks can be held against the log, and none once no
 * written week can be changed.
 *
 * @param weeks how many weeks
 * @param from the Monday of the first of them
 * @param sessionsPlanned planned sessions of these weeks, strength left out
 * @param sessionsDone how many of them were done
 * @param bestSessionsShare the largest share of a week's planned sessions that were done
 * @param leastExcessShare the least that was done beyond the plan in a week, as a share of its
 *     planned minutes; unknown when a duration is
 * @param shortGap true when a short break that is over, without pain or injury, lies in these weeks
 */
public record Adherence(
    double weeks,
    LocalDate from,
    double sessionsPlanned,
    double sessionsDone,
    double bestSessionsShare,
    @Nullable Double leastExcessShare,
    boolean shortGap,
    List<Where> entries)
    implements Fact {

  /** One week of it. */
  private record Of(LocalDate monday, Matching matching, peakproof.measure.Adherence measured) {}

  static List<Adherence> all(Timeline timeline, Followed followed, List<Gap> gaps) {
    Where next = nextWeek(timeline);
    List<Of> weeks =
        followed.weeks().stream()
            .map(
                monday -> {
                  Matching matching = followed.week(monday);
                  return new Of(monday, matching, peakproof.measure.Adherence.of(matching));
                })
            .toList();
    List<Adherence> all = new ArrayList<>();
    if (next == null || weeks.size() < timeline.constant(Constant.MATCHED_WEEKS)) {
      return all;
    }
    for (int count = 1; count <= weeks.size(); count++) {
      all.add(of(weeks.subList(0, count), timeline, gaps, next));
    }
    return all;
  }

  private static Adherence of(List<Of> weeks, Timeline timeline, List<Gap> gaps, Where next) {
    LocalDate from = weeks.get(weeks.size() - 1).monday();
    List<Where> entries = new ArrayList<>(List.of(next));
    weeks.forEach(week -> entries.add(whereOf(timeline, week.monday())));
    double done = weeks.stream().mapToDouble(week -> week.matching().pairs().size()).sum();
    double missed = weeks.stream().mapToDouble(week -> week.matching().missed().size()).sum();
    boolean timed = weeks.stream().allMatch(week -> week.measured().excess() != null);
    return new Adherence(
        weeks.size(),
        from,
        done + missed,
        done,
        Exact.of(shares(weeks).max().orElse(0)),
        timed ? (Double) Exact.of(excesses(weeks).min().orElse(0)) : null,
        // An illness takes its week out, so that a short break here is one for another reason.
        gaps.stream().anyMatch(gap -> !gap.from().isBefore(from) && gap.isShort(timeline)),
        List.copyOf(entries));
  }

  private static DoubleStream shares(List<Of> weeks) {
    return weeks.stream()
        .map(week -> week.measured().sessions())
        .filter(Objects::nonNull)
        .mapToDouble(Double::doubleValue);
  }

  private static DoubleStream excesses(List<Of> weeks) {
    return weeks.stream()
        .map(week -> week.measured().excess())
        .filter(Objects::nonNull)
        .mapToDouble(Double::doubleValue);
  }

  /** The first written week that can still be changed: what a coach would edit. */
  private static @Nullable Where nextWeek(Timeline timeline) {
    return timeline.weeks().all().stream()
        .filter(Week::changeable)
        .map(week -> week.where().get(0))
        .findFirst()
        .orElse(null);
  }

  private static Where whereOf(Timeline timeline, LocalDate monday) {
    PlanWeek written = Objects.requireNonNull(timeline.writtenWeek(monday));
    return new Where(written.at(), null, monday);
  }

  @Override
  public List<Where> where() {
    return entries;
  }
}
