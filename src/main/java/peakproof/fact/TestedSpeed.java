package peakproof.fact;

import org.jspecify.annotations.Nullable;
import peakproof.document.Sport;
import peakproof.measure.Calibration;
import peakproof.measure.Constant;
import peakproof.measure.Reading;

/** Speeds an athlete has shown in tests, metres a second; a goal says nothing of them. */
final class TestedSpeed {
  private TestedSpeed() {}

  /** Of easy swimming or running; null without a test, and in other sports. */
  static @Nullable Double easy(Sport sport, Timeline timeline) {
    return switch (sport) {
      case SWIM -> swim(timeline, timeline.constant(Constant.SWIM_EASY));
      case RUN -> {
        Double run = tested(timeline.calibration().openMarathonPace());
        yield run == null ? null : (Double) (1000 / (run * timeline.constant(Constant.RUN_EASY)));
      }
      case BIKE, STRENGTH, OTHER -> null;
    };
  }

  /** Critical swim speed; null without tests. */
  static @Nullable Double criticalSwim(Timeline timeline) {
    return swim(timeline, 0);
  }

  /** So many seconds a 100 m slower than critical swim speed. */
  private static @Nullable Double swim(Timeline timeline, double slower) {
    Calibration athlete = timeline.calibration();
    Double critical = tested(athlete.thresholdSwimPace());
    return critical == null ? null : (Double) (100 / (critical + slower));
  }

  private static @Nullable Double tested(Reading reading) {
    return reading.tested() ? reading.value() : null;
  }
}
