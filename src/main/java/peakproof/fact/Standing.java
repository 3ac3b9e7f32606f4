package peakproof.fact;

import java.time.LocalDate;
import java.time.Period;
import org.jspecify.annotations.Nullable;
import peakproof.document.Athlete.Experience;
import peakproof.document.Plan;
import peakproof.measure.Constant;
import peakproof.measure.Constants;
import peakproof.measure.DistanceClass;

/**
 * Where an athlete stands for a race, as the words of the trade have it.
 *
 * @param distance class of the race, or null when none fits
 * @param age on race day, in years; by a bare year, the age on 31 December; null when unknown
 * @param masters true from the age the club counts as masters
 * @param firstTimer true without a finished race of this class; null when unknown
 * @param experienced true with several finished races of this class and some years of the sport
 */
public record Standing(
    @Nullable DistanceClass distance,
    @Nullable Double age,
    boolean masters,
    @Nullable Boolean firstTimer,
    boolean experienced) {

  /** The standing of a plan's athlete; what the plan does not say is unknown or false. */
  public static Standing of(Plan plan, Constants constants) {
    DistanceClass distance = DistanceClass.of(plan.event(), constants);
    Experience experience = plan.athlete().experience();
    Double age = age(plan);
    Integer finished = finished(experience, distance);
    Double years = experience == null ? null : experience.years();
    return new Standing(
        distance,
        age,
        age != null && age >= constants.of(Constant.MASTERS_FROM),
        finished == null ? null : (Boolean) (finished == 0),
        finished != null
            && years != null
            && finished >= constants.of(Constant.EXPERIENCED_RACES)
            && years >= constants.of(Constant.EXPERIENCED_YEARS));
  }

  private static @Nullable Double age(Plan plan) {
    LocalDate race = plan.event().date();
    if (plan.athlete().bornDate() != null) {
      return (double) Period.between(plan.athlete().bornDate(), race).getYears();
    }
    return plan.athlete().bornYear() == null
        ? null
        : (Double) (double) (race.getYear() - plan.athlete().bornYear().getValue());
  }

  private static @Nullable Integer finished(
      @Nullable Experience experience, @Nullable DistanceClass distance) {
    if (experience == null || distance == null) {
      return null;
    }
    Integer said =
        switch (distance) {
          case FULL -> experience.full();
          case HALF -> experience.half();
          case STANDARD -> experience.standard();
          case SPRINT -> experience.sprint();
        };
    return said == null ? 0 : said;
  }
}
