package peakproof.measure;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Minutes weighted by the zone they were in. The weights are arbitrary and have no physiological
 * base; loads of different methods are never added.
 */
public final class ZoneLoad {
  /** Zones of ten per cent of the maximum heart rate from 50 % on. */
  public static final int ZONES = 5;

  private static final Constant[] FROM = {
    Constant.HEART_ZONE_1,
    Constant.HEART_ZONE_2,
    Constant.HEART_ZONE_3,
    Constant.HEART_ZONE_4,
    Constant.HEART_ZONE_5
  };

  private ZoneLoad() {}

  /** The zone of a share of the maximum heart rate, 1 to 5; 0 below 50 %, and of no number. */
  public static int zone(double shareOfMaximum, Constants constants) {
    int zone = 0;
    while (zone < ZONES
        && Limit.countable(shareOfMaximum)
        && reached(shareOfMaximum, zone, constants)) {
      zone++;
    }
    return zone;
  }

  /**
   * Minutes times zone over the five zones, Edwards 1993 (from memory), in arbitrary units.
   *
   * @param minutes of zones 1 to 5, null for unknown ones; time below 50 % counts nothing
   */
  public static Amount fiveZones(List<@Nullable Double> minutes) {
    return minutes.size() == ZONES
        ? weighted(minutes)
        : Amount.unknown("the minutes of all five zones");
  }

  /**
   * Minutes times 1, 2 and 3 in the three intensity domains, Lucía 2003 (from memory), in arbitrary
   * units; unknown while part of the time has no domain.
   */
  public static Amount threeZones(DomainMinutes minutes) {
    Double outside = minutes.unclassified();
    return outside == null || !(outside <= 0)
        ? Amount.unknown("the intensity of all of the time")
        : weighted(java.util.Arrays.asList(minutes.moderate(), minutes.heavy(), minutes.severe()));
  }

  private static Amount weighted(List<@Nullable Double> minutes) {
    double load = 0;
    int zone = 0;
    for (Double each : minutes) {
      zone++;
      if (each == null || !Limit.countable(each)) {
        return Amount.unknown("the minutes of every zone");
      }
      load += zone * each;
    }
    return Amount.of(load);
  }

  private static boolean reached(double share, int zone, Constants constants) {
    return !Limit.below(share, constants.of(FROM[zone]));
  }
}
