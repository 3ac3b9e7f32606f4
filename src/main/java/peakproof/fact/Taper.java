package peakproof.fact;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import peakproof.measure.TaperLength;
import peakproof.measure.TaperReduction;

/**
 * The taper as written, against the last weeks before it that were not lighter.
 *
 * @param lengthDays days from its first week with clearly less training to race day; unknown
 *     without one, when a week before it or of it is not known, and once that week is over
 * @param lengthKnown true when its length, or that it has none, can be told
 * @param referenceHours hours a week of the weeks before; unknown like the length
 * @param sessionsShare sessions a week against the weeks before, race week and strength left out; a
 *     brick is one session; unknown without such a week
 * @param swimsShare swims a week against the weeks before, race week left out; unknown likewise
 * @param sharesKnown true when these shares can be told, or there is no such week
 * @param entries its weeks
 */
public record Taper(
    @Nullable Double lengthDays,
    boolean lengthKnown,
    @Nullable Double referenceHours,
    @Nullable Double sessionsShare,
    @Nullable Double swimsShare,
    boolean sharesKnown,
    List<Where> entries)
    implements Fact {

  /** Null once no taper week can be changed. */
  static @Nullable Taper of(Timeline timeline) {
    List<Week> taper =
        timeline.weeks().all().stream().filter(week -> week.phase() == Phase.TAPER).toList();
    if (taper.stream().noneMatch(Week::changeable)) {
      return null;
    }
    Length length = begins(taper.get(0), timeline) ? length(taper, timeline) : UNKNOWN;
    List<Where> entries = new ArrayList<>();
    taper.stream().filter(Week::changeable).forEach(week -> entries.addAll(week.where()));
    List<Week> whole = taper.stream().filter(Taper::counts).filter(Taper::uncut).toList();
    List<Week> swum = taper.stream().filter(Taper::counts).filter(w -> !w.withoutSwim()).toList();
    Double sessions = share(whole, Taper::sessions, timeline);
    Double swims = share(swum, Week::swims, timeline);
    return new Taper(
        length.days(),
        length.known(),
        length.referenceHours(),
        sessions,
        swims,
        (swum.isEmpty() || swims != null) && (whole.isEmpty() || sessions != null),
        List.copyOf(entries));
  }

  private record Length(@Nullable Double days, boolean known, @Nullable Double referenceHours) {}

  private static final Length UNKNOWN = new Length(null, false, null);

  /** Race week is always taper: without a word on the week before, more weeks may belong to it. */
  private static boolean begins(Week first, Timeline timeline) {
    return timeline.weeks().all().stream()
        .filter(week -> week.starts().equals(first.starts().minusWeeks(1)))
        .allMatch(week -> week.phase() != null);
  }

  private static Length length(List<Week> taper, Timeline timeline) {
    Week first = taper.get(0);
    TaperLength length =
        TaperLength.of(
            taper.stream()
                .map(week -> new TaperLength.Week(week.starts(), week.minutes()))
                .toList(),
            timeline.weeks().volumes(first, Week::minutes),
            timeline.raceDate(),
            timeline.constants());
    Double day = timeline.weeks().taperReduction(first.days(), first).referenceDay();
    Long days = length.days();
    boolean open =
        taper.stream().anyMatch(w -> w.starts().equals(length.onset()) && w.changeable());
    return new Length(
        days == null || !open ? null : (Double) (double) days,
        days != null || day != null && taper.stream().allMatch(Week::known),
        day == null ? null : (Double) Exact.of(7 * day / 60));
  }

  private static boolean counts(Week week) {
    return !week.raceWeek() && week.known() && !week.interrupted() && week.changeable();
  }

  /** The mean of some weeks against that of the weeks before the taper; null without either. */
  private static @Nullable Double share(
      List<Week> weeks, ToDoubleFunction<Week> count, Timeline timeline) {
    List<@Nullable Double> days = new ArrayList<>();
    for (Week week : weeks) {
      week.days().forEach(day -> days.add(count.applyAsDouble(week) / week.days().size()));
    }
    if (weeks.isEmpty()) {
      return null;
    }
    Week first = timeline.weeks().taperStart(weeks.get(0).starts());
    Double cut =
        TaperReduction.of(
                days,
                timeline
                    .weeks()
                    .volumes(first, w -> w.known() ? (Double) count.applyAsDouble(w) : null),
                timeline.constants())
            .reduction();
    return cut == null ? null : (Double) Exact.of(1 - cut);
  }

  private static boolean uncut(Week week) {
    return !week.withoutSwim() && !week.withoutBike() && !week.withoutRun();
  }

  /** What follows straight after something is one session with it. */
  private static double sessions(Week week) {
    return week.sessions()
        .filter(Session::endurance)
        .filter(session -> session.before == null)
        .filter(session -> !(session instanceof Run run && run.offBike()))
        .count();
  }

  @Override
  public List<Where> where() {
    return entries;
  }
}
