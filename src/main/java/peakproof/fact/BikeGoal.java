package peakproof.fact;

import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Event;
import peakproof.document.Plan;
import peakproof.document.Target;
import peakproof.measure.AirDensity;
import peakproof.measure.Band;
import peakproof.measure.Calibration;
import peakproof.measure.Constant;
import peakproof.measure.Constants;
import peakproof.measure.Cycling;
import peakproof.measure.Digits;
import peakproof.measure.DistanceClass;
import peakproof.measure.RideShare;

/**
 * The goal of the bike leg in watts: what it says, what its speed needs, and what this athlete's
 * distance is usually ridden at.
 *
 * @param goalWatts the goal's own power; unknown when it is by heart rate, rating or not at all
 * @param goalShare the goal's own power as a share of critical power; unknown likewise
 * @param criticalWatts critical power; unknown without
 * @param mostShare the upper end of what the distance is usually ridden at, of critical power
 * @param heldWatts what the ride can be expected to be held at: the goal's own power, else the
 *     upper end of what the distance is ridden at; unknown without either
 * @param neededWatts what the goal's speed needs on the course by the quickest assumptions; unknown
 *     without a goal, the leg or the athlete's mass
 * @param assumptions those assumptions, in words
 */
public record BikeGoal(
    String pointer,
    @Nullable Double goalWatts,
    @Nullable Double goalShare,
    @Nullable Double criticalWatts,
    @Nullable Double mostShare,
    @Nullable Double heldWatts,
    @Nullable Double neededWatts,
    String assumptions)
    implements Fact {

  /** By which share the speed needs more than can be expected; negative when less. */
  public @Nullable Double overShare() {
    return neededWatts == null || heldWatts == null
        ? null
        : (Double) Exact.of(neededWatts / heldWatts - 1);
  }

  /** Whose watts those are, in words. */
  public String heldFrom() {
    return goalWatts == null
        ? "the upper end of what the distance is usually ridden at"
        : "the goal's own power";
  }

  static BikeGoal of(Plan plan, Calibration athlete, Constants constants) {
    Double critical = athlete.criticalPower().value();
    Double share = share(athlete.bikeGoal(), critical);
    Double watts = watts(athlete.bikeGoal(), critical);
    DistanceClass distance = athlete.distance();
    Double most = distance == null ? null : most(RideShare.band(distance, constants));
    Double usual = critical == null || most == null ? null : (Double) (critical * most);
    Ridden ridden = new Ridden(plan, athlete, constants);
    return new BikeGoal(
        plan.goal() == null ? plan.at() : plan.goal().at(),
        watts,
        Exact.of(share),
        critical,
        most,
        watts == null ? usual : watts,
        ridden.watts(),
        ridden.assumptions());
  }

  private static @Nullable Double most(Band band) {
    return band.to();
  }

  private static @Nullable Double share(@Nullable Target goal, @Nullable Double critical) {
    if (goal instanceof Target.ShareOfCriticalPower share) {
      return share.share();
    }
    return goal instanceof Target.Power power && critical != null
        ? (Double) (power.watts() / critical)
        : null;
  }

  private static @Nullable Double watts(@Nullable Target goal, @Nullable Double critical) {
    if (goal instanceof Target.Power power) {
      return power.watts();
    }
    return goal instanceof Target.ShareOfCriticalPower share && critical != null
        ? (Double) (share.share() * critical)
        : null;
  }

  /** The leg ridden at the goal's speed, with the fast end of a forecast's drag and rolling. */
  private record Ridden(Plan plan, Calibration athlete, Constants constants) {
    private static final double SEA_LEVEL = 101_325;

    @Nullable Double watts() {
      Double kmh = athlete.goalBikeSpeed().value();
      Double metres = plan.event().legs().bike();
      Double mass = plan.athlete().massKg();
      Double density = AirDensity.of(air(), SEA_LEVEL).value();
      if (kmh == null || metres == null || mass == null || density == null) {
        return null;
      }
      double all = mass + constants.of(Constant.RIDE_BIKE_MASS);
      return Cycling.of(all, drag(), constants.of(Constant.RIDE_ROLLING), density, constants)
          .power(kmh / 3.6, new Cycling.Course(metres, climb(), wind()))
          .value();
    }

    private double air() {
      Double air = plan.event().weather().air();
      return air == null ? constants.of(Constant.RIDE_AIR) : air;
    }

    private double climb() {
      Double climb = plan.event().bike().climb();
      return climb == null ? 0 : climb;
    }

    private double wind() {
      Double wind = plan.event().weather().wind();
      return wind == null ? 0 : wind * constants.of(Constant.RIDE_WIND);
    }

    /** Upright only when the plan says so. */
    private boolean upright() {
      String position = plan.athlete().position();
      return position != null && !position.equals("aero");
    }

    private double drag() {
      return constants.of(upright() ? Constant.RIDE_UPRIGHT_FAST : Constant.RIDE_AERO_FAST);
    }

    String assumptions() {
      Event.Bike course = plan.event().bike();
      return "drag area "
          + Digits.fixed(drag(), 2)
          + " m², "
          + (course.climb() == null ? "a flat course" : Words.number(climb()) + " m of climb")
          + ", "
          + (plan.event().weather().wind() == null
              ? "no wind"
              : "a wind of " + Words.number(wind()) + " m/s at the rider from all sides")
          + ", air of "
          + Words.number(air())
          + " °C";
    }
  }

  @Override
  public List<Where> where() {
    return List.of(new Where(pointer, null, null));
  }
}
