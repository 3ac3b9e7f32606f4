package peakproof.fact;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import peakproof.document.Dossier;
import peakproof.document.Plan;
import peakproof.document.PlanDay;
import peakproof.document.PlanWeek;
import peakproof.document.Session;
import peakproof.measure.Calibration;

/** Finds what in a plan cannot be as written, and which key entries it lacks. */
final class Integrity {
  private static final double DAY_MINUTES = 24 * 60;

  private Integrity() {}

  static List<PlanMistake> mistakes(Dossier dossier, Timeline timeline) {
    List<PlanMistake> mistakes = new ArrayList<>();
    Plan plan = dossier.plan();
    for (Day day : timeline.days()) {
      Double minutes = day.minutes();
      if (day.changeable() && minutes != null && minutes > DAY_MINUTES) {
        String label = Words.weekday(day.date()) + " holds " + Words.minutes(minutes);
        mistakes.add(new PlanMistake(label, null, timeline.whereOf(day)));
      }
    }
    for (Week week : timeline.weeks().all()) {
      Double off = week.hoursOffMinutes();
      PlanWeek written = timeline.writtenWeek(week.starts());
      if (off != null && written != null && written.hours() != null && week.minutes() != null) {
        String label =
            week.label()
                + " says "
                + Words.minutes(written.hours() / 60)
                + ", its sessions add up to "
                + Words.minutes(week.minutes());
        mistakes.add(new PlanMistake(label, off, week.where().get(0)));
      }
    }
    plan.weeks().forEach(week -> checkRace(plan, week, mistakes));
    return mistakes;
  }

  private static void checkRace(Plan plan, PlanWeek week, List<PlanMistake> mistakes) {
    LocalDate race = plan.event().date();
    boolean raceWeek = week.starts().equals(Week.monday(race));
    boolean found = false;
    for (var entry : week.days().entrySet()) {
      LocalDate date =
          week.starts().plusDays(entry.getKey().getValue() - DayOfWeek.MONDAY.getValue());
      PlanDay day = entry.getValue();
      for (Session session : day.sessions()) {
        boolean its = plan.event().name().equals(session.race());
        found |= date.equals(race) && session.race() != null;
        if (its && !date.equals(race)) {
          String label =
              plan.event().name()
                  + " stands on "
                  + Words.weekday(date)
                  + ", the event is on "
                  + Words.weekday(race);
          mistakes.add(new PlanMistake(label, null, new Where(session.at(), date, null)));
        } else if (date.isAfter(race) && session.race() == null) {
          String label = "a session on " + Words.weekday(date) + ", after the race";
          mistakes.add(new PlanMistake(label, null, new Where(session.at(), date, null)));
        }
      }
    }
    if (raceWeek && !found) {
      String label = "race week is written, but the race is not on " + Words.weekday(race);
      mistakes.add(new PlanMistake(label, null, new Where(week.at(), null, week.starts())));
    }
  }

  static List<MissingEntry> missing(Dossier dossier, Race race, Calibration calibration) {
    List<MissingEntry> missing = new ArrayList<>();
    Plan plan = dossier.plan();
    if (race.distance() == null) {
      missing.add(new MissingEntry("event.distance", "/event/legs"));
    }
    if (race.water() == null) {
      missing.add(new MissingEntry("event.swim.water", "/event/swim"));
    }
    if (race.start() == null) {
      missing.add(new MissingEntry("event.swim.start", "/event/swim"));
    }
    if (plan.athlete().bornYear() == null && plan.athlete().bornDate() == null) {
      missing.add(new MissingEntry("athlete.born", plan.athlete().at()));
    }
    if (dossier.log() == null && plan.athlete().lately() == null) {
      missing.add(new MissingEntry("a log, or athlete.lately", plan.athlete().at()));
    }
    boolean intensity =
        calibration.maximumHeartRate() != null
            || calibration.criticalPower().known()
            || calibration.criticalSwimSpeed().known()
            || plan.goal() != null && plan.goal().bikeEffort() != null
            || calibration.runTest() != null;
    if (!intensity) {
      missing.add(
          new MissingEntry(
              "athlete.heart-rate.max, athlete.bike.critical-power or athlete.tests",
              plan.athlete().at()));
    }
    return missing;
  }
}
