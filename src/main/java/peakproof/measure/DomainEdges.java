package peakproof.measure;

import org.jspecify.annotations.Nullable;
import peakproof.document.Session;
import peakproof.document.Sport;
import peakproof.document.Target;

/**
 * The domain of some work by the first proxy that can be computed: power, pace, heart rate, rating.
 * The edges are common practice, no source; a beta-blocker takes the heart rate out.
 */
public final class DomainEdges {
  private DomainEdges() {}

  /** The domain of what a part is held at; null when it cannot be told. */
  public static @Nullable Domain of(
      Target target, Sport sport, Calibration athlete, Constants constants) {
    if (target instanceof Target.Power power) {
      return ofPower(power.watts(), sport, athlete, constants);
    }
    if (target instanceof Target.ShareOfCriticalPower share) {
      return sport == Sport.BIKE ? ofPowerShare(share.share(), constants) : null;
    }
    if (target instanceof Target.Pace pace) {
      return ofPace(pace.secondsPerMetre(), sport, athlete, constants);
    }
    if (target instanceof Target.Rating rating) {
      return ofRating(rating.rating(), constants);
    }
    Double bpm = heartRate(target, athlete);
    if (bpm != null) {
      return ofHeartRate(bpm, sport, athlete, constants);
    }
    boolean shareOnFoot = target instanceof Target.ShareOfMaximum && sport == Sport.RUN;
    return shareOnFoot && athlete.heartRateUsable()
        ? between(((Target.ShareOfMaximum) target).share(), 0, 1, constants)
        : null;
  }

  /** The domain of a whole logged session by its means; null when it cannot be told. */
  public static @Nullable Domain ofLogged(
      Session.Recorded recorded, Sport sport, Calibration athlete, Constants constants) {
    Domain domain = null;
    Double power = recorded.power();
    if (power != null) {
      domain = ofPower(power, sport, athlete, constants);
    }
    Double held = recorded.held();
    if (domain == null && held != null) {
      domain = ofPace(held, sport, athlete, constants);
    }
    Double bpm = recorded.heartRate();
    if (domain == null && bpm != null) {
      domain = ofHeartRate(bpm, sport, athlete, constants);
    }
    Double rpe = recorded.rpe();
    return domain == null && rpe != null ? ofRating(rpe, constants) : domain;
  }

  /** Beats per minute of a heart-rate target, or null when the athlete's figures are missing. */
  static @Nullable Double heartRate(Target target, Calibration athlete) {
    Double most = athlete.maximumHeartRate();
    Double least = athlete.restingHeartRate();
    if (target instanceof Target.HeartRate rate) {
      return rate.bpm();
    }
    if (target instanceof Target.ShareOfMaximum share && most != null) {
      return share.share() * most;
    }
    if (target instanceof Target.ShareOfReserve share && most != null && least != null) {
      return least + share.share() * (most - least);
    }
    return null;
  }

  private static @Nullable Domain ofPower(
      double watts, Sport sport, Calibration athlete, Constants constants) {
    Double critical = athlete.criticalPower().value();
    return sport == Sport.BIKE && critical != null
        ? ofPowerShare(watts / critical, constants)
        : null;
  }

  private static Domain ofPowerShare(double share, Constants constants) {
    if (Limit.above(share, 1)) {
      return Domain.SEVERE;
    }
    return Limit.below(share, constants.of(Constant.EDGE_POWER_MODERATE))
        ? Domain.MODERATE
        : Domain.HEAVY;
  }

  private static @Nullable Domain ofPace(
      double secondsPerMetre, Sport sport, Calibration athlete, Constants constants) {
    Double swim = athlete.thresholdSwimPace().value();
    Double run = athlete.openMarathonPace().value();
    if (sport == Sport.SWIM && swim != null) {
      double slower = constants.of(Constant.EDGE_SWIM_MODERATE);
      return ofPace(100 * secondsPerMetre, swim + slower, swim);
    }
    if (sport == Sport.RUN && run != null) {
      double moderate = constants.of(Constant.EDGE_RUN_MODERATE) * run;
      return ofPace(1000 * secondsPerMetre, moderate, constants.of(Constant.EDGE_RUN_SEVERE) * run);
    }
    return null;
  }

  private static Domain ofPace(double pace, double moderateSlowerThan, double severeFasterThan) {
    if (Limit.below(pace, severeFasterThan)) {
      return Domain.SEVERE;
    }
    return Limit.above(pace, moderateSlowerThan) ? Domain.MODERATE : Domain.HEAVY;
  }

  private static @Nullable Domain ofHeartRate(
      double bpm, Sport sport, Calibration athlete, Constants constants) {
    Double most = athlete.maximumHeartRate();
    boolean edgesKnown = sport == Sport.RUN || sport == Sport.BIKE;
    if (most == null || !edgesKnown || !athlete.heartRateUsable()) {
      return null;
    }
    double lower = sport == Sport.BIKE ? constants.of(Constant.EDGE_HEART_BIKE) : 0;
    return between(bpm, lower, most, constants);
  }

  private static Domain between(double rate, double lower, double most, Constants constants) {
    if (Limit.above(rate, constants.of(Constant.EDGE_HEART_SEVERE) * most - lower)) {
      return Domain.SEVERE;
    }
    return Limit.above(rate, constants.of(Constant.EDGE_HEART_MODERATE) * most - lower)
        ? Domain.HEAVY
        : Domain.MODERATE;
  }

  private static Domain ofRating(double rating, Constants constants) {
    if (!Limit.below(rating, constants.of(Constant.EDGE_RATING_SEVERE))) {
      return Domain.SEVERE;
    }
    return Limit.above(rating, constants.of(Constant.EDGE_RATING_MODERATE))
        ? Domain.HEAVY
        : Domain.MODERATE;
  }
}
