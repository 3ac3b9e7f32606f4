package peakproof.fact;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Plan;
import peakproof.measure.Constant;
import peakproof.measure.Detraining;

/**
 * Days without training in the log, some of them missed or ill, that are over.
 *
 * @param days how many
 * @param from the first of them
 * @param to the last of them
 * @param daysAgo days since the last of them
 * @param ill true when illness was logged in it
 * @param hurt true when pain was logged in it or an injury is open
 * @param costLow least it may have cost the athlete's endurance, a share
 * @param costHigh most it may have cost, a share
 * @param entry the first day's entry
 */
@OfHealth
public record Gap(
    double days,
    LocalDate from,
    LocalDate to,
    double daysAgo,
    boolean ill,
    boolean hurt,
    double costLow,
    double costHigh,
    Where entry)
    implements Fact {

  /** {@code Mon 24 May to Thu 27 May}. */
  public String label() {
    return Words.weekday(from) + " to " + Words.weekday(to);
  }

  @Override
  public List<Where> where() {
    return List.of(entry);
  }

  /** True for a break that is short and not for pain, an injury or an illness. */
  boolean isShort(Timeline timeline) {
    return !hurt
        && !ill
        && days >= timeline.constant(Constant.SHORT_GAP_FROM)
        && days <= timeline.constant(Constant.SHORT_GAP_TO);
  }

  static List<Gap> all(Timeline timeline, Plan plan) {
    boolean injured =
        plan.athlete().health().injuries().stream().anyMatch(injury -> injury.to() == null);
    List<Gap> gaps = new ArrayList<>();
    List<Day> run = new ArrayList<>();
    for (Day day : timeline.days()) {
      if (day.known() == Known.DONE && day.sessions().isEmpty()) {
        run.add(day);
      } else {
        Gap gap = of(timeline, run, injured);
        if (gap != null) {
          gaps.add(gap);
        }
        run.clear();
      }
    }
    return gaps;
  }

  private static @Nullable Gap of(Timeline timeline, List<Day> run, boolean injured) {
    Day first = run.stream().filter(day -> day.missed() || day.ill()).findFirst().orElse(null);
    if (first == null || first.log() == null) {
      return null;
    }
    LocalDate from = run.get(0).date();
    LocalDate to = run.get(run.size() - 1).date();
    Detraining cost = Detraining.of(run.size(), false, timeline.constants());
    return new Gap(
        run.size(),
        from,
        to,
        ChronoUnit.DAYS.between(to, timeline.asOf()),
        run.stream().anyMatch(Day::ill),
        injured || run.stream().anyMatch(day -> day.log() != null && !day.log().pain().isEmpty()),
        cost.least(),
        cost.most(),
        new Where(first.log().at(), first.date(), null));
  }
}
