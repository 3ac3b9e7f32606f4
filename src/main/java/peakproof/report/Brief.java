package peakproof.report;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What an athlete gets of a plan: the athlete's own words and nothing else. All texts are one line
 * and fit to be shown; a renderer escapes them for its own language.
 *
 * <p>From the plan come the athlete's name, the event, the goal's times and effort, the starts and
 * focus of weeks, and of sessions all keys but {@code note} and {@code medicine}; of the race day
 * fuel, caffeine, warm-up, wetsuit and carried drink, of travel the arrival. Nothing else of a plan
 * may be shown, and of log, house and judgement nothing at all: what a new key of a document says
 * stays with the coach until it is put in here.
 *
 * @param athlete the name
 * @param asOf the day the plan was looked at
 * @param identity tells this athlete's way to this race from any other's, in no particular form
 * @param goals leg by leg
 * @param weeks those with days to come
 * @param open what is not written yet; null when all is
 * @param rehearsals what is practised when
 * @param fuelling of race day
 * @param raceWeek what to see to
 * @param cautions what keeps people unhurt
 */
public record Brief(
    String athlete,
    LocalDate asOf,
    String identity,
    Race race,
    List<Goal> goals,
    List<Week> weeks,
    @Nullable String open,
    List<Rehearsal> rehearsals,
    List<String> fuelling,
    List<String> raceWeek,
    RaceCard card,
    List<String> cautions) {

  /**
   * The race.
   *
   * @param start in local time there; null when the event does not say
   * @param zone the venue's, null when nobody says
   * @param facts of course and rules, a line each
   */
  public record Race(
      String name,
      LocalDate date,
      @Nullable LocalTime start,
      @Nullable ZoneId zone,
      List<String> facts) {
    /** {@code 06:30, local time of the race (Europe/Oslo)}; null when the start is not known. */
    public @Nullable String startWords() {
      LocalTime time = start;
      if (time == null) {
        return null;
      }
      return Figures.timeOfDay(time)
          + ", local time at the race"
          + (zone == null ? "" : " (" + zone.getId() + ")");
    }
  }

  /** A leg and its goal; null where there is none. */
  public record Goal(String leg, @Nullable String length, @Nullable String time, String hold) {}

  /** A week from its Monday. */
  public record Week(LocalDate starts, String title, List<Day> days) {}

  /**
   * A day.
   *
   * @param warnings official ones
   * @param sessions none on a rest day
   * @param raceDay true when it is the race's
   */
  public record Day(
      LocalDate date, List<String> warnings, List<Session> sessions, boolean raceDay) {
    /** {@code Mon 31 May}. */
    public String title() {
      return Dates.day(date, date);
    }
  }

  /**
   * A session, with what follows straight after.
   *
   * @param title {@code Swim in open water, then bike, then run}
   * @param at the time it starts; null when the plan does not say
   * @param length of a swim in all; null where time tells more
   * @param seconds it takes in all; null when that cannot be told
   * @param kind what it begins with, by which a calendar knows it again
   */
  public record Session(
      String title,
      @Nullable LocalTime at,
      @Nullable String length,
      @Nullable Double seconds,
      String kind,
      List<Leg> legs) {
    /** {@code Ride on the road · at 07:00 · about 4 h}. */
    public String heading() {
      return Figures.dotted(title, at == null ? null : "at " + Figures.timeOfDay(at), size());
    }

    /** {@code 3600 m · about 1 h 10 min}; empty when neither is known. */
    public String size() {
      return Figures.dotted(length, seconds == null ? null : time(seconds));
    }

    private String time(double seconds) {
      boolean exact = legs.stream().allMatch(leg -> leg.steps().isEmpty());
      return exact ? Figures.time(seconds) : "about " + Figures.roughTime(seconds);
    }
  }

  /**
   * What is done in one sport.
   *
   * @param title empty for a session of one leg
   */
  public record Leg(String title, List<Step> steps, List<String> details) {}

  /** One step of a set, with what is in its rounds. */
  public record Step(String words, List<Step> rounds) {
    static Step of(String words) {
      return new Step(words, List.of());
    }
  }

  /** Something to rehearse, and the days it is planned for. */
  public record Rehearsal(String what, List<LocalDate> days) {
    /** {@code 2 Jun, 9 Jun}. */
    public String when() {
      return String.join(", ", days.stream().map(peakproof.fact.Words::day).toList());
    }
  }
}
