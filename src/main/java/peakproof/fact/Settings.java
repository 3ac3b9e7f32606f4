package peakproof.fact;

import java.util.Map;
import peakproof.measure.DistanceClass;

/**
 * A rule's numbers as they count for this plan. A setting may differ by distance class or sport: it
 * is then written {@code longest-full}, {@code longest-half}, … and asked for as {@code longest}
 * with the distance.
 *
 * @param rule the rule's slug
 * @param values each setting's value, in the unit of the method that reads it
 */
public record Settings(String rule, Map<String, Value> values) {
  /** What a setting can be, decided by how the card writes it; see {@code rules/README.md}. */
  public enum Kind {
    /** A bare number: {@code 3}. */
    COUNT,
    /** A share, 0.75 for {@code 75%}. */
    SHARE,
    /** Minutes, from {@code 1h45}. */
    DURATION,
    /** Metres, from {@code 24km}. */
    DISTANCE,
    /** Degrees Celsius, from {@code 16C}. */
    TEMPERATURE,
    /** Grams per hour, from {@code 75g/h}. */
    CARBOHYDRATE,
    /** Litres per hour, from {@code 650ml/h}. */
    FLUID,
    /** Days before race day, 21 from {@code D-21}. */
    DAY,
    /** Days before race day, both ends in, from {@code D-56..D-15}; becomes a Window fact. */
    WINDOW
  }

  /**
   * One value; for a window {@code number} is its first and {@code until} its last day before the
   * race, for all others the two are equal.
   */
  public record Value(Kind kind, double number, double until) {}

  /** A bare number. */
  public double count(String name) {
    return read(name, Kind.COUNT);
  }

  /** A bare number that differs by distance class. */
  public double count(String name, DistanceClass distance) {
    return count(name + distance.suffix());
  }

  /** A share, 0 to 1. */
  public double share(String name) {
    return read(name, Kind.SHARE);
  }

  /** A share that differs by distance class. */
  public double share(String name, DistanceClass distance) {
    return share(name + distance.suffix());
  }

  /** A duration in minutes. */
  public double minutes(String name) {
    return read(name, Kind.DURATION);
  }

  /** A duration in minutes that differs by distance class. */
  public double minutes(String name, DistanceClass distance) {
    return minutes(name + distance.suffix());
  }

  /** A distance in metres. */
  public double metres(String name) {
    return read(name, Kind.DISTANCE);
  }

  /** A distance in metres that differs by distance class. */
  public double metres(String name, DistanceClass distance) {
    return metres(name + distance.suffix());
  }

  /** A distance in kilometres. */
  public double km(String name) {
    return metres(name) / 1000;
  }

  /** A distance in kilometres that differs by distance class. */
  public double km(String name, DistanceClass distance) {
    return metres(name, distance) / 1000;
  }

  /** A temperature in °C. */
  public double celsius(String name) {
    return read(name, Kind.TEMPERATURE);
  }

  /** Grams of carbohydrate per hour. */
  public double carbohydrate(String name) {
    return read(name, Kind.CARBOHYDRATE);
  }

  /** Litres of fluid per hour. */
  public double fluid(String name) {
    return read(name, Kind.FLUID);
  }

  /** A day before the race, 21 for {@code D-21}. */
  public double day(String name) {
    return read(name, Kind.DAY);
  }

  private double read(String name, Kind kind) {
    Value value = values.get(name);
    if (value == null || value.kind() != kind) {
      throw new IllegalStateException(rule + " has no setting " + name + " of kind " + kind);
    }
    return value.number();
  }
}
