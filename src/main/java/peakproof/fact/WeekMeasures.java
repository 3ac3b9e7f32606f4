package peakproof.fact;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import peakproof.document.Sport;
import peakproof.measure.Amount;
import peakproof.measure.DomainMinutes;
import peakproof.measure.DomainShares;
import peakproof.measure.LoadRatio;
import peakproof.measure.Monotony;
import peakproof.measure.WeekChange;

/** The numbers of a plan week by week and day by day, as a whole and sport by sport. */
final class WeekMeasures {
  private static final List<Sport> RACING = List.of(Sport.SWIM, Sport.BIKE, Sport.RUN);
  private static final String UNKNOWN_DAY = "the entry of every day of the week";

  private final Timeline timeline;
  private final List<Measured> values = new ArrayList<>();

  private WeekMeasures(Timeline timeline) {
    this.timeline = timeline;
  }

  static List<Measured> of(Timeline timeline) {
    WeekMeasures measures = new WeekMeasures(timeline);
    timeline.weeks().all().forEach(measures::week);
    timeline.days().forEach(measures::day);
    return measures.values;
  }

  private void week(Week week) {
    Measured.Scope scope = Measured.Scope.PLAN.and("week", week.starts());
    amounts(week, scope, null);
    for (Sport sport : RACING) {
      amounts(week, scope.and("sport", sport.word()), sport);
    }
    WeekChange minutes = timeline.weeks().minutesChange(week).change();
    add("week-change", scope, minutes.change(), "share", week, minutes.because());
    WeekChange run = timeline.weeks().runKmChange(week);
    add("week-change", scope.and("sport", "run"), run.change(), "share", week, run.because());
    if (week.known()) {
      add("rest-days", scope, week.restDays(), "days", week, "");
    }
    shares(week, scope);
    ratio(week, scope);
    strength(week, scope);
    adherence(week, scope);
  }

  private void amounts(Week week, Measured.Scope scope, @Nullable Sport sport) {
    Double minutes = sum(week, sport, Session::minutes);
    String because = week.known() ? "the time of every session" : UNKNOWN_DAY;
    add("week-hours", scope, minutes == null ? null : minutes / 60, "h", week, because);
    if (sport != null) {
      Double km = sum(week, sport, Session::km);
      String distance = week.known() ? "the distance of every session" : UNKNOWN_DAY;
      add("week-distance", scope, km, "km", week, distance);
      double sessions = sessions(week, sport).count();
      add("week-sessions", scope, week.known() ? sessions : null, "sessions", week, UNKNOWN_DAY);
      double hard = sessions(week, sport).filter(Session::hard).count();
      add("hard-sessions", scope, week.known() ? hard : null, "sessions", week, UNKNOWN_DAY);
    }
    Double total = timeline.loads().sum(week, sport);
    String rated = week.known() ? "time and rating of every session" : UNKNOWN_DAY;
    add("week-load", scope, total, "au", week, rated);
    Monotony load = Monotony.of(timeline.loads().of(week, sport), timeline.constants());
    add("monotony", scope, load.monotony(), "ratio", week);
    add("weekly-strain", scope, load.strain(), "au", week);
  }

  private void shares(Week week, Measured.Scope scope) {
    DomainMinutes minutes = DomainMinutes.whole(null, 0.0);
    for (Session session : week.sessions().filter(Session::endurance).toList()) {
      minutes = minutes.plus(session.domains());
    }
    DomainShares shares = DomainShares.of(minutes, timeline.constants());
    String because = week.known() ? "intensity of the sessions" : UNKNOWN_DAY;
    boolean known = week.known();
    add("moderate-share", scope, known ? shares.moderate() : null, "share", week, because);
    add("heavy-share", scope, known ? shares.heavy() : null, "share", week, because);
    add("severe-share", scope, known ? shares.severe() : null, "share", week, because);
    add("unclassified-share", scope, known ? shares.unclassified() : null, "share", week, because);
    add("polarisation-index", scope, known ? index(shares) : null, "index", week, because);
  }

  private @Nullable Double index(DomainShares shares) {
    Double moderate = shares.moderate();
    Double heavy = shares.heavy();
    Double severe = shares.severe();
    return moderate == null || heavy == null || severe == null
        ? null
        : DomainShares.polarisation(moderate, heavy, severe, timeline.constants());
  }

  private void strength(Week week, Measured.Scope scope) {
    Double minutes = sum(week, Sport.STRENGTH, Session::minutes);
    String because = week.known() ? "the time of every session" : UNKNOWN_DAY;
    Measured.Scope strength = scope.and("sport", Sport.STRENGTH.word());
    add("week-hours", strength, minutes == null ? null : minutes / 60, "h", week, because);
    Double sessions = week.known() ? (Double) week.strengthSessions() : null;
    add("week-sessions", strength, sessions, "sessions", week, UNKNOWN_DAY);
  }

  /** Three numbers and never one, of the weeks that can be held against the plan. */
  private void adherence(Week week, Measured.Scope scope) {
    if (!timeline.followed().weeks().contains(week.starts())) {
      return;
    }
    var done = peakproof.measure.Adherence.of(timeline.followed().week(week.starts()));
    String because = "the time of every session, planned and done";
    add("adherence-sessions", scope, done.sessions(), "share", week, "a planned session");
    add("adherence-duration", scope, done.duration(), "share", week, because);
    add("adherence-excess", scope, done.excess(), "share", week, because);
  }

  private void ratio(Week week, Measured.Scope scope) {
    boolean taper = week.phase() == Phase.TAPER;
    LoadRatio ratio =
        LoadRatio.of(timeline.loads().until(week.lastDay()), taper, timeline.constants());
    add("acute-chronic-ratio", scope, ratio.weighted(), "ratio", week);
    add("acute-chronic-ratio-coupled", scope, ratio.coupled(), "ratio", week);
    add("acute-chronic-ratio-uncoupled", scope, ratio.uncoupled(), "ratio", week);
  }

  private void day(Day day) {
    Measured.Scope scope = Measured.Scope.PLAN.and("day", day.date());
    String because = day.isKnown() ? "the time of every session" : "an entry for the day";
    Double minutes = day.isKnown() ? day.minutes() : null;
    values.add(of("day-minutes", scope, minutes, "min", day, because));
    String rating = day.isKnown() ? "time and rating of every session" : "an entry for the day";
    values.add(of("day-load", scope, timeline.loads().of(day), "au", day, rating));
  }

  private static Measured of(
      String name,
      Measured.Scope scope,
      @Nullable Double value,
      String unit,
      Day day,
      String because) {
    return Measured.of(
        name,
        scope,
        value,
        unit,
        day.isKnown() ? 1.0 : 0.0,
        entries(Stream.of(day), scope),
        because);
  }

  private void add(String name, Measured.Scope scope, Amount amount, String unit, Week week) {
    add(name, scope, amount.value(), unit, week, amount.because());
  }

  private void add(
      String name,
      Measured.Scope scope,
      @Nullable Double value,
      String unit,
      Week week,
      String because) {
    double known = week.days().stream().filter(Day::isKnown).count();
    values.add(
        Measured.of(
            name,
            scope,
            value,
            unit,
            known / week.days().size(),
            entries(week.days().stream(), scope),
            because));
  }

  private static List<String> entries(Stream<Day> days, Measured.Scope scope) {
    String sport = scope.keys().get("sport");
    return days.flatMap(day -> day.sessions().stream())
        .filter(session -> sport == null || session.sport().word().equals(sport))
        .map(session -> session.written.at())
        .toList();
  }

  private static Stream<Session> sessions(Week week, @Nullable Sport sport) {
    return week.sessions().filter(session -> sport == null || session.sport() == sport);
  }

  private static @Nullable Double sum(
      Week week, @Nullable Sport sport, Function<Session, @Nullable Double> amount) {
    if (!week.known()) {
      return null;
    }
    double sum = 0;
    for (Session session : sessions(week, sport).toList()) {
      Double each = amount.apply(session);
      if (each == null) {
        return null;
      }
      sum += each;
    }
    return sum;
  }
}
