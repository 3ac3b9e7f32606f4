package peakproof.fact;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import peakproof.document.Athlete;
import peakproof.document.Plan;
import peakproof.document.Session;
import peakproof.document.Sport;
import peakproof.measure.Calibration;
import peakproof.measure.Constant;
import peakproof.measure.Constants;
import peakproof.measure.Sweat;

/**
 * What is to be drunk on a leg of the race, or in a session still to come that says so, beside what
 * the athlete is known to lose.
 *
 * @param what the leg or the session in words
 * @param race true for a leg of the race
 * @param minutes how long the whole race, or the session, is expected to take; unknown when neither
 *     written nor computable
 * @param fluid litres an hour; unknown when not written
 * @param limitFluid litres an hour beyond which it is too much: the highest sweat rate weighed in
 *     the sport, else what goes for somebody who never weighed
 * @param weighed true when that limit is the athlete's own sweat rate
 * @param withinUsual true when it is at most what goes for athletes neither small nor slow who
 *     never weighed, so that only size or pace make it too much
 * @param dryMinutes longest time without a drink in reach by the distance of the aid stations and
 *     the goal; on the bike only when nothing is carried; unknown otherwise
 */
public record Drinking(
    String what,
    boolean race,
    @Nullable Double minutes,
    @Nullable Double fluid,
    double limitFluid,
    boolean weighed,
    boolean withinUsual,
    @Nullable Double dryMinutes,
    Where entry)
    implements Fact {

  /** Where the limit comes from, in words. */
  public String limitFrom() {
    return weighed ? "the athlete's highest weighed sweat rate" : "no sweat rate being weighed";
  }

  /** {@code , a drink in reach every 14min}; empty when that is not known. */
  public String reach() {
    return dryMinutes == null ? "" : ", a drink in reach every " + Words.minutes(dryMinutes);
  }

  static List<Drinking> all(Plan plan, Timeline timeline, Race race) {
    Limits limits = new Limits(plan, race, timeline.constants());
    List<Drinking> all = new ArrayList<>();
    all.add(limits.leg(Sport.BIKE, timeline.calibration()));
    all.add(limits.leg(Sport.RUN, timeline.calibration()));
    timeline
        .sessions()
        .filter(peakproof.fact.Session::planned)
        .map(limits::session)
        .filter(Objects::nonNull)
        .forEach(all::add);
    return all;
  }

  /** What goes for one athlete. */
  private record Limits(Plan plan, Race race, Constants constants) {

    Drinking leg(Sport sport, Calibration athlete) {
      Plan.RaceDay day = plan.raceDay();
      Session.Fuel fuel = day == null ? null : sport == Sport.BIKE ? day.bikeFuel() : day.runFuel();
      String at = day == null ? plan.at() : day.at();
      return of(
          "on the " + sport.word() + " of the race",
          sport,
          race.expectedMinutes(),
          fuel == null ? null : fuel.fluid(),
          new Dry(sport == Sport.BIKE ? dryOnBike(day, athlete) : dryOnRun(athlete), true),
          new Where(at, null, null));
    }

    @Nullable Drinking session(peakproof.fact.Session session) {
      Session.Fuel fuel = session.written.fuel();
      LocalDate date = session.date();
      return fuel == null || fuel.fluid() == null
          ? null
          : of(
              "in " + session.label() + " on " + Words.weekday(date),
              session.sport(),
              session.minutes(),
              fuel.fluid(),
              new Dry(null, false),
              new Where(session.written.at(), date, null));
    }

    private record Dry(@Nullable Double minutes, boolean race) {}

    private Drinking of(
        String what,
        Sport sport,
        @Nullable Double minutes,
        @Nullable Double fluid,
        Dry dry,
        Where entry) {
      Double weighed = weighed(sport);
      double limit = Exact.of(Sweat.drinkLimit(weighed, smallOrSlow(), constants));
      double usual = Sweat.drinkLimit(null, false, constants);
      boolean within = weighed == null && fluid != null && fluid <= usual + 1e-9;
      return new Drinking(
          what, dry.race, minutes, fluid, limit, weighed != null, within, dry.minutes, entry);
    }

    private @Nullable Double weighed(Sport sport) {
      Double highest = null;
      for (Athlete.SweatRate each : plan.athlete().sweatRates()) {
        Double rate = each.sport() == null || each.sport() == sport ? rate(each) : null;
        if (rate != null && (highest == null || rate > highest)) {
          highest = rate;
        }
      }
      return highest;
    }

    private static @Nullable Double rate(Athlete.SweatRate each) {
      return Sweat.of(
              new Sweat.Weighing(
                  each.beforeKg(),
                  each.afterKg(),
                  each.drunkLitres(),
                  each.urineLitres(),
                  each.seconds() / 3600))
          .litresAnHour()
          .value();
    }

    private boolean smallOrSlow() {
      Double mass = plan.athlete().massKg();
      Double minutes = race.expectedMinutes();
      return mass != null && mass < constants.of(Constant.DRINK_SMALL)
          || minutes != null && minutes > constants.of(Constant.DRINK_SLOW);
    }

    private @Nullable Double dryOnRun(Calibration athlete) {
      Double every = plan.event().run().aidEvery();
      Double pace = athlete.goalRunPace().value();
      return every == null || pace == null ? null : Exact.of(every / 1000 * pace / 60);
    }

    /** Bottles last longer than the way to the next table, unless the plan says there are none. */
    private @Nullable Double dryOnBike(Plan.@Nullable RaceDay day, Calibration athlete) {
      Double every = plan.event().bike().aidEvery();
      Double kmh = athlete.goalBikeSpeed().value();
      boolean none = day != null && day.carries() != null && day.carries() <= 0;
      return !none || every == null || kmh == null ? null : Exact.of(every / 1000 / kmh * 60);
    }
  }

  @Override
  public List<Where> where() {
    return List.of(entry);
  }
}
