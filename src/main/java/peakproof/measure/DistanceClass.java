package peakproof.measure;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import peakproof.document.Event;

/** Distance class of a race, by its bike leg. */
public enum DistanceClass {
  FULL(Constant.DISTANCE_FULL_FROM, Constant.DISTANCE_FULL_TO),
  HALF(Constant.DISTANCE_HALF_FROM, Constant.DISTANCE_HALF_TO),
  STANDARD(Constant.DISTANCE_STANDARD_FROM, Constant.DISTANCE_STANDARD_TO),
  SPRINT(Constant.DISTANCE_SPRINT_FROM, Constant.DISTANCE_SPRINT_TO);

  private final Constant from;
  private final Constant to;

  DistanceClass(Constant from, Constant to) {
    this.from = from;
    this.to = to;
  }

  /**
   * The class whose band holds the bike leg, else the one the event states; null when neither says.
   */
  public static @Nullable DistanceClass of(Event event, Constants constants) {
    DistanceClass byLeg = ofBikeLeg(event.legs().bike(), constants);
    if (byLeg != null) {
      return byLeg;
    }
    for (DistanceClass each : values()) {
      if (each.word().equals(event.distance())) {
        return each;
      }
    }
    return null;
  }

  /** The class whose band holds a bike leg, metres; null when none does or the leg is unknown. */
  public static @Nullable DistanceClass ofBikeLeg(@Nullable Double bike, Constants constants) {
    for (DistanceClass each : values()) {
      if (bike != null && each.holds(bike, constants)) {
        return each;
      }
    }
    return null;
  }

  private boolean holds(double bikeMetres, Constants constants) {
    return !Limit.below(bikeMetres, constants.of(from))
        && !Limit.above(bikeMetres, constants.of(to));
  }

  /** The word of the documents and settings: {@code full}, … */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** How a setting that differs by distance ends: {@code -full}, … */
  public String suffix() {
    return "-" + word();
  }
}
