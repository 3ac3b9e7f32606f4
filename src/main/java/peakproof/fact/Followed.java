package peakproof.fact;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import peakproof.document.Log;
import peakproof.document.Plan;
import peakproof.document.PlanWeek;
import peakproof.document.Sport;
import peakproof.measure.Adherence;
import peakproof.measure.Matching;
import peakproof.measure.SetBreakdown;

/**
 * The plan's past weeks beside the log. Strength work is left out. What was cancelled beforehand is
 * not planned any more: the sports under {@code without}, weeks away, days of illness or of a
 * closed place; an optional session that was left out is none missed.
 */
final class Followed {
  private static final Set<String> CANCELLED = Set.of("illness", "closed");

  private final Timeline timeline;
  private final Map<Matching.Entry, peakproof.document.Session> written = new HashMap<>();
  private final Map<Matching.Entry, Session> done = new LinkedHashMap<>();
  private final Matching matching;

  Followed(Plan plan, Timeline timeline) {
    this.timeline = timeline;
    List<Matching.Entry> wanted = new ArrayList<>();
    for (PlanWeek week : plan.weeks()) {
      if (week.away() == null) {
        week.days()
            .forEach(
                (weekday, day) -> {
                  LocalDate date = week.starts().plusDays(weekday.getValue() - 1L);
                  if (expected(date)) {
                    day.sessions().forEach(session -> want(week, date, session, wanted));
                  }
                });
      }
    }
    timeline
        .sessions()
        .filter(session -> !session.planned() && session.endurance())
        .forEach(
            session -> {
              Matching.Entry entry =
                  new Matching.Entry(
                      session.written.at(), session.date(), session.sport(), session.minutes());
              done.put(entry, session);
            });
    this.matching = MatchRounds.of(wanted, List.copyOf(done.keySet()), timeline.constants());
  }

  /** A planned session and the one it became. */
  record Pair(peakproof.document.Session written, Session done) {}

  /** True for a past day on which the plan still stood. */
  private boolean expected(LocalDate date) {
    Day day = timeline.at(date);
    return day != null && day.known() == Known.DONE && !cancelled(day);
  }

  private static boolean cancelled(Day day) {
    return day.ill() || CANCELLED.contains(because(day));
  }

  private static boolean illness(Day day) {
    return day.ill() || because(day).equals("illness");
  }

  /** Why a day's training was missed; empty when it was not, and when the log does not say. */
  private static String because(Day day) {
    Log.Missed missed = day.log() == null ? null : day.log().missed();
    String because = missed == null ? null : missed.because();
    return because == null ? "" : because;
  }

  private void want(
      PlanWeek week,
      LocalDate date,
      peakproof.document.Session first,
      List<Matching.Entry> wanted) {
    for (peakproof.document.Session session = first; session != null; session = session.then()) {
      Sport sport = session.sport();
      if (sport != null && sport.racing() && !without(week, session, sport)) {
        Matching.Entry entry = new Matching.Entry(session.at(), date, sport, minutes(session));
        written.put(entry, session);
        wanted.add(entry);
      }
    }
  }

  private static boolean without(PlanWeek week, peakproof.document.Session session, Sport sport) {
    return week.without().containsKey(sport.word())
        || session.scene().openWater() && week.without().containsKey("open-water");
  }

  private @Nullable Double minutes(peakproof.document.Session session) {
    SetBreakdown breakdown = timeline.breakdown(session);
    return breakdown == null ? null : breakdown.minutes();
  }

  /** Matched sessions in order of the planned day. */
  List<Pair> pairs() {
    List<Pair> pairs = new ArrayList<>();
    for (Matching.Pair pair : matching.pairs()) {
      peakproof.document.Session planned = written.get(pair.planned());
      Session session = done.get(pair.done());
      if (planned != null && session != null) {
        pairs.add(new Pair(planned, session));
      }
    }
    return pairs;
  }

  /** The sessions of one week, matched; what was moved over its end counts where it was planned. */
  Matching week(LocalDate monday) {
    return new Matching(
        matching.pairs().stream().filter(pair -> in(monday, pair.planned())).toList(),
        matching.missed().stream().filter(entry -> in(monday, entry) && !optional(entry)).toList(),
        matching.extra().stream().filter(entry -> in(monday, entry)).toList());
  }

  private static boolean in(LocalDate monday, Matching.Entry entry) {
    return MatchRounds.monday(entry).equals(monday);
  }

  private boolean optional(Matching.Entry entry) {
    peakproof.document.Session session = written.get(entry);
    return session != null && session.optional();
  }

  /**
   * The finished weeks that can be held against the plan, newest first. Weeks away and weeks with
   * illness are passed over; one that is not written or not known ends the row.
   */
  List<LocalDate> weeks() {
    List<LocalDate> weeks = new ArrayList<>();
    for (LocalDate monday = Week.monday(timeline.firstChangeable()).minusWeeks(1);
        timeline.writtenWeek(monday) != null && known(monday);
        monday = monday.minusWeeks(1)) {
      if (!passedOver(monday) && Adherence.of(week(monday)).sessions() != null) {
        weeks.add(monday);
      }
    }
    return weeks;
  }

  private boolean known(LocalDate monday) {
    return timeline.between(monday, monday.plusDays(6)).stream()
        .allMatch(day -> day.known() == Known.DONE);
  }

  private boolean passedOver(LocalDate monday) {
    PlanWeek week = timeline.writtenWeek(monday);
    return week != null && week.away() != null
        || timeline.between(monday, monday.plusDays(6)).stream().anyMatch(Followed::illness);
  }
}
