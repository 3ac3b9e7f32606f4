package peakproof.measure;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Event;
import peakproof.document.Plan;
import peakproof.measure.Projected.Range;

/**
 * The race ride by the power equation of Martin 1998: the share of critical power that logged long
 * rides at race effort were held at, else the band of the distance, over the course's climb.
 * Shares, drag and rolling resistance are common practice, no source.
 */
final class PoweredRide {
  private static final double SEA_LEVEL = 101_325;

  private final Plan plan;
  private final double metres;
  private final LongRides rides;
  private final Calibration athlete;
  private final Constants constants;

  private PoweredRide(
      Plan plan, double metres, LongRides rides, Calibration athlete, Constants constants) {
    this.plan = plan;
    this.metres = metres;
    this.rides = rides;
    this.athlete = athlete;
    this.constants = constants;
  }

  static Projected projected(
      Plan plan, double metres, LongRides rides, Calibration athlete, Constants constants) {
    return new PoweredRide(plan, metres, rides, athlete, constants).projected();
  }

  /** Watts as shares of critical power, with how they were come by. */
  private record Effort(Range share, List<String> entries, String how) {}

  private Projected projected() {
    Double critical = athlete.criticalPower().value();
    Double mass = plan.athlete().massKg();
    DistanceClass distance = athlete.distance();
    if (critical == null) {
      return Projected.unknown(athlete.criticalPower().because());
    }
    if (mass == null) {
      return Projected.unknown("the athlete's `mass`");
    }
    if (distance == null) {
      return Projected.unknown("the event's distance");
    }
    Effort held = held(critical);
    Effort effort = held == null ? usual(distance) : held;
    Range range = range(critical, effort.share, mass);
    if (range == null) {
      return Projected.unknown("power, mass and climb that fit together");
    }
    List<String> entries = new ArrayList<>(athlete.criticalPower().entries());
    entries.addAll(effort.entries);
    Projected projected = Projected.of(range, entries, arithmetic(critical, effort, mass));
    Range one = held == null ? range(critical, pinned(effort.share), mass) : null;
    return one == null
        ? projected
        : projected.narrowedBy(
            "a long ride at race effort, logged with `power`", range.width() - one.width());
  }

  private @Nullable Effort held(double critical) {
    List<LoggedRides.Ride> measured =
        rides.raced().stream().filter(ride -> ride.session().recorded().power() != null).toList();
    List<Double> watts = new ArrayList<>();
    for (LoggedRides.Ride ride : measured) {
      Double power = ride.session().recorded().power();
      if (power != null) {
        watts.add(power);
      }
    }
    Double median = Median.of(watts);
    if (median == null) {
      return null;
    }
    String count = measured.size() == 1 ? "the logged long ride" : "the logged long rides";
    return new Effort(
        around(median / critical),
        measured.stream().map(ride -> ride.session().at()).toList(),
        "held on " + count + " at race effort");
  }

  private Range around(double share) {
    double band = constants.of(Constant.RIDE_POWER_BAND);
    return new Range(share * (1 + band), share, share * (1 - band));
  }

  private Range pinned(Range share) {
    return around(share.likely());
  }

  /** The fast end of a time comes from the upper end of the band. */
  private Effort usual(DistanceClass distance) {
    Band band = RideShare.band(distance, constants);
    double from = band.from() == null ? 0 : band.from();
    double to = band.to() == null ? 0 : band.to();
    return new Effort(
        new Range(to, (from + to) / 2, from), List.of(), "as the distance is usually ridden");
  }

  /** A rider of some drag and rolling resistance on the event's course, the same out and back. */
  private @Nullable Range range(double critical, Range share, double mass) {
    double fast = constants.of(aero() ? Constant.RIDE_AERO_FAST : Constant.RIDE_UPRIGHT_FAST);
    double slow = constants.of(aero() ? Constant.RIDE_AERO_SLOW : Constant.RIDE_UPRIGHT_SLOW);
    double smooth = constants.of(Constant.RIDE_ROLLING);
    double rough = constants.of(Constant.RIDE_ROLLING_SLOW);
    Double low = seconds(critical * share.low(), mass, fast, smooth);
    Double likely =
        seconds(critical * share.likely(), mass, (fast + slow) / 2, (smooth + rough) / 2);
    Double high = seconds(critical * share.high(), mass, slow, rough);
    return low == null || likely == null || high == null ? null : new Range(low, likely, high);
  }

  private @Nullable Double seconds(double watts, double mass, double drag, double rolling) {
    Double density = AirDensity.of(air(), SEA_LEVEL).value();
    if (density == null) {
      return null;
    }
    double all = mass + constants.of(Constant.RIDE_BIKE_MASS);
    Event.Bike course = plan.event().bike();
    double climb = course.climb() == null ? 0 : course.climb();
    Double speed =
        Cycling.of(all, drag, rolling, density, constants)
            .speed(watts, new Cycling.Course(metres, climb, wind()))
            .value();
    return speed == null ? null : (Double) (metres / speed);
  }

  private double air() {
    Double air = plan.event().weather().air();
    return air == null ? constants.of(Constant.RIDE_AIR) : air;
  }

  private double wind() {
    Double wind = plan.event().weather().wind();
    return wind == null ? 0 : wind * constants.of(Constant.RIDE_WIND);
  }

  private boolean aero() {
    return "aero".equals(plan.athlete().position());
  }

  private List<String> arithmetic(double critical, Effort effort, double mass) {
    Event.Bike course = plan.event().bike();
    Range share = effort.share;
    return List.of(
        "by the power equation: critical power "
            + Math.round(critical)
            + " W, "
            + InWords.percent(share.high())
            + " to "
            + InWords.percent(share.low())
            + " of it "
            + effort.how
            + ", which is "
            + Math.round(critical * share.high())
            + " to "
            + Math.round(critical * share.low())
            + " W",
        "rider "
            + InWords.number(mass)
            + " kg and bike "
            + InWords.number(constants.of(Constant.RIDE_BIKE_MASS))
            + " kg, drag area "
            + (aero()
                ? InWords.span(Constant.RIDE_AERO_FAST, Constant.RIDE_AERO_SLOW, constants)
                : InWords.span(Constant.RIDE_UPRIGHT_FAST, Constant.RIDE_UPRIGHT_SLOW, constants))
            + " m² ("
            + (aero() ? "on aero bars" : "aero bars are not written under `bike`")
            + "), rolling "
            + InWords.span(Constant.RIDE_ROLLING, Constant.RIDE_ROLLING_SLOW, constants),
        (course.climb() == null ? "climb not given, taken as flat" : climb(course.climb()))
            + ", "
            + (plan.event().weather().wind() == null ? "no wind given" : wind(wind()))
            + ", air "
            + InWords.number(air())
            + " °C"
            + (plan.event().weather().air() == null ? " assumed" : ""));
  }

  private String climb(double climb) {
    return "climb "
        + InWords.number(climb)
        + " m, of whose work "
        + InWords.percent(constants.of(Constant.RIDE_CLIMB_RETURNED))
        + " comes back on the descents";
  }

  private static String wind(double wind) {
    return "wind "
        + InWords.number(wind)
        + " m/s at a rider's height, the mean of head- and tailwind";
  }
}
