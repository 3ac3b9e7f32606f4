package peakproof.measure;

import java.util.function.DoubleUnaryOperator;

/**
 * Power of a rider from speed and speed from power, Martin 1998, J Appl Biomech 14:276, doi
 * 10.1123/jab.14.3.276 (R² 0.97, standard error 2.7 W; constants partly from memory).
 */
public final class Cycling {
  private static final double GRAVITY = 9.81;
  private static final double FASTEST = 50;
  private static final double STRONGEST_WIND = 40;
  private static final double STEEPEST = 0.5;

  private final double mass;
  private final double dragArea;
  private final double rolling;
  private final double airDensity;
  private final Constants constants;

  private Cycling(
      double mass, double dragArea, double rolling, double airDensity, Constants constants) {
    this.mass = mass;
    this.dragArea = dragArea;
    this.rolling = rolling;
    this.airDensity = airDensity;
    this.constants = constants;
  }

  /**
   * A rider on a bike.
   *
   * @param mass of both, kg
   * @param dragArea of both, m², the wheels' own drag added
   * @param rolling coefficient of rolling resistance
   * @param airDensity kg/m³
   */
  public static Cycling of(
      double mass, double dragArea, double rolling, double airDensity, Constants constants) {
    return new Cycling(mass, dragArea, rolling, airDensity, constants);
  }

  /**
   * An age-grouper on aero bars, by the club's planning figures.
   *
   * @param riderMass kg, without the bike
   * @param airDensity kg/m³
   */
  public static Cycling planned(double riderMass, double airDensity, Constants constants) {
    return new Cycling(
        riderMass + constants.of(Constant.RIDE_BIKE_MASS),
        constants.of(Constant.RIDE_DRAG_AREA),
        constants.of(Constant.RIDE_ROLLING),
        airDensity,
        constants);
  }

  /**
   * Watts at the pedals, negative when the road gives them.
   *
   * @param speed m/s, above 0 to 50
   * @param headwind m/s along the road, negative from behind, up to 40
   * @param grade rise over run, up to 0.5 either way
   */
  public Amount power(double speed, double headwind, double grade) {
    return Limit.positive(speed) && speed <= FASTEST && possible(headwind, grade)
        ? Amount.of(watts(speed, headwind, grade))
        : outside();
  }

  /** The same while speed changes from one to another within so many seconds. */
  public Amount power(
      double speed, double headwind, double grade, double from, double to, double seconds) {
    Amount steady = power(speed, headwind, grade);
    if (!steady.known() || !Limit.positive(seconds)) {
      return steady.known() ? outside() : steady;
    }
    double radius = constants.of(Constant.RIDE_WHEEL_RADIUS);
    double wheels = constants.of(Constant.RIDE_WHEEL_INERTIA) / (radius * radius);
    double kinetic = (mass + wheels) * (to * to - from * from) / 2 / seconds;
    return Amount.of(watts(speed, headwind, grade) + kinetic / efficiency());
  }

  /** Metres a second that so many watts above zero give on a road, by bisection up to 50 m/s. */
  public Amount speed(double watts, double headwind, double grade) {
    return possible(headwind, grade)
        ? solved(watts, speed -> watts(speed, headwind, grade))
        : outside();
  }

  /**
   * A course that ends where it began.
   *
   * @param metres of a lap
   * @param climb metres climbed, and come down again, on it
   * @param wind m/s
   */
  public record Course(double metres, double climb, double wind) {}

  /**
   * Watts for a mean speed on a closed course: the mean of head- and tailwind, and of the climb's
   * work the 40 % that do not come back on the descents (common practice, no source).
   *
   * @param speed m/s, above 0 to 50
   */
  public Amount power(double speed, Course course) {
    return Limit.positive(speed) && speed <= FASTEST && possible(course)
        ? Amount.of(watts(speed, course))
        : outside();
  }

  /** Mean metres a second that so many watts above zero give on a closed course. */
  public Amount speed(double watts, Course course) {
    return possible(course) ? solved(watts, speed -> watts(speed, course)) : outside();
  }

  private Amount solved(double watts, DoubleUnaryOperator power) {
    Double root =
        Limit.positive(watts)
            ? RisingRoot.between(0, FASTEST, speed -> power.applyAsDouble(speed) - watts)
            : null;
    return root == null ? outside() : Amount.of(root);
  }

  private double watts(double speed, double headwind, double grade) {
    double angle = Math.atan(grade);
    double air = speed + headwind;
    double drag = airDensity * dragArea * air * Math.abs(air) / 2;
    double road = mass * GRAVITY * (rolling * Math.cos(angle) + Math.sin(angle));
    double bearings =
        constants.of(Constant.RIDE_BEARINGS) + constants.of(Constant.RIDE_BEARINGS_SPEED) * speed;
    return (drag + road + bearings) * speed / efficiency();
  }

  private double watts(double speed, Course course) {
    double flat = (watts(speed, course.wind, 0) + watts(speed, -course.wind, 0)) / 2;
    double kept = 1 - constants.of(Constant.RIDE_CLIMB_RETURNED);
    double climbing = mass * GRAVITY * course.climb / course.metres * speed;
    return flat + kept * climbing / efficiency();
  }

  private double efficiency() {
    return constants.of(Constant.RIDE_EFFICIENCY);
  }

  private boolean possible(double headwind, double grade) {
    return Limit.positive(mass)
        && Limit.positive(dragArea)
        && Limit.countable(rolling)
        && Limit.positive(airDensity)
        && Limit.within(headwind, -STRONGEST_WIND, STRONGEST_WIND)
        && Limit.within(grade, -STEEPEST, STEEPEST);
  }

  private boolean possible(Course course) {
    return Limit.positive(course.metres)
        && Limit.within(course.climb / course.metres, 0, STEEPEST)
        && possible(course.wind, 0);
  }

  private static Amount outside() {
    return Amount.unknown("speed, power, wind and road within what can be ridden");
  }
}
