package peakproof.measure;

import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Session;
import peakproof.document.SetLine;
import peakproof.document.Sport;
import peakproof.document.Target;

/**
 * What a ride asks to be held at, by power where it speaks of power and else by heart rate. Parts
 * with a word alone leave the athlete room and are left out, but for race effort, which is the
 * goal's. A rating is neither.
 *
 * @param powerMinutes minutes held by power
 * @param powerShare their mean as a share of critical power, 0.7 for 70 %; null without any
 * @param heartMinutes minutes held by heart rate
 * @param heartShare their mean as a share of the measured maximum; null without any
 * @param open true when some minutes are held at what cannot be told of this athlete, or race
 *     effort is not said
 */
public record HeldEffort(
    double powerMinutes,
    @Nullable Double powerShare,
    double heartMinutes,
    @Nullable Double heartShare,
    boolean open) {

  private static final class Sum {
    private double power;
    private double powerMinutes;
    private double heart;
    private double heartMinutes;
    private boolean open;

    HeldEffort held() {
      double powerShare = powerMinutes > 0 ? power / powerMinutes : 0;
      double heartShare = heartMinutes > 0 ? heart / heartMinutes : 0;
      if (!Double.isFinite(powerMinutes + powerShare + heartMinutes + heartShare)) {
        return new HeldEffort(0, null, 0, null, true);
      }
      return new HeldEffort(
          powerMinutes,
          powerMinutes > 0 ? (Double) powerShare : null,
          heartMinutes,
          heartMinutes > 0 ? (Double) heartShare : null,
          open);
    }
  }

  /** Of a planned ride. */
  public static HeldEffort planned(SetLine line, Calibration athlete, Constants constants) {
    Sum sum = new Sum();
    for (Piece piece : SetPieces.of(line, Sport.BIKE, athlete, constants).pieces()) {
      if (piece instanceof Piece.Work work) {
        add(work, athlete, sum);
      }
    }
    return sum.held();
  }

  private static void add(Piece.Work work, Calibration athlete, Sum sum) {
    Target target = work.intensity().race() ? athlete.bikeGoal() : work.target();
    Double minutes = SetPieces.minutes(List.of(work));
    Double power = target == null ? null : powerShare(target, athlete);
    Double heart = target == null ? null : heartShare(target, athlete);
    if (minutes != null && power != null) {
      sum.powerMinutes += minutes;
      sum.power += minutes * power;
    } else if (minutes != null && heart != null) {
      sum.heartMinutes += minutes;
      sum.heart += minutes * heart;
    } else {
      boolean asked = target == null ? work.intensity().race() : !(target instanceof Target.Rating);
      sum.open |= asked;
    }
  }

  /** Of a logged ride by its means; in heat on purpose a heart rate says nothing of effort. */
  public static HeldEffort logged(Session session, double minutes, Calibration athlete) {
    Sum sum = new Sum();
    Double watts = session.recorded().power();
    Double beats = session.scene().heat() ? null : session.recorded().heartRate();
    Double power = watts == null ? null : powerShare(new Target.Power(watts), athlete);
    Double heart = beats == null ? null : heartShare(new Target.HeartRate(beats), athlete);
    if (power != null) {
      sum.powerMinutes = minutes;
      sum.power = minutes * power;
    } else if (heart != null) {
      sum.heartMinutes = minutes;
      sum.heart = minutes * heart;
    }
    return sum.held();
  }

  private static @Nullable Double powerShare(Target target, Calibration athlete) {
    Double critical = athlete.criticalPower().value();
    if (target instanceof Target.ShareOfCriticalPower share) {
      return share.share();
    }
    return target instanceof Target.Power power && critical != null
        ? (Double) (power.watts() / critical)
        : null;
  }

  /** The formula by age is too far off for most to tell a hard ride by. */
  private static @Nullable Double heartShare(Target target, Calibration athlete) {
    Double most = athlete.maximumHeartRate();
    if (!athlete.heartRateUsable()) {
      return null;
    }
    if (target instanceof Target.ShareOfMaximum share) {
      return share.share();
    }
    Double beats = DomainEdges.heartRate(target, athlete);
    return most == null || beats == null ? null : (Double) (beats / most);
  }
}
