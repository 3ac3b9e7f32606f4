package peakproof.fact;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Session.Recorded;
import peakproof.document.Sport;
import peakproof.measure.Calibration;
import peakproof.measure.Constant;
import peakproof.measure.SetBreakdown;

/**
 * The last sessions that were planned easy and done, as the log gives them. A session counts when
 * its log has a rating, or a heart rate that says something of it.
 *
 * @param of how many sessions
 * @param tooHard how many of them were rated, or had a mean heart rate, above easy
 * @param entries what to change first, then the sessions done too hard
 */
public record EasySessions(double of, double tooHard, List<Where> entries) implements Fact {

  /** Null before enough sessions can be held against the log, and with no easy one to come. */
  static @Nullable EasySessions of(Timeline timeline, Followed followed) {
    Where next = nextEasy(timeline);
    if (next == null) {
      return null;
    }
    double most = timeline.constant(Constant.EASY_SESSIONS);
    double of = 0;
    List<Where> hard = new ArrayList<>();
    List<Followed.Pair> pairs = followed.pairs();
    for (int i = pairs.size() - 1; i >= 0 && of < most; i--) {
      Followed.Pair pair = pairs.get(i);
      Boolean tooHard = easy(pair.written(), timeline) ? tooHard(pair, timeline) : null;
      if (tooHard != null) {
        of++;
        hard.addAll(tooHard ? pair.done().where() : List.of());
      }
    }
    List<Where> entries = new ArrayList<>(List.of(next));
    entries.addAll(hard);
    return of < most ? null : new EasySessions(of, hard.size(), List.copyOf(entries));
  }

  /** The next session that is planned easy. */
  private static @Nullable Where nextEasy(Timeline timeline) {
    return timeline
        .sessions()
        .filter(Session::planned)
        .filter(session -> session.endurance() && easy(session.written, timeline))
        .map(session -> session.where().get(0))
        .findFirst()
        .orElse(null);
  }

  /** Easy as a whole by what the plan's words weigh: a steady or mixed session is not. */
  private static boolean easy(peakproof.document.Session written, Timeline timeline) {
    SetBreakdown breakdown = timeline.breakdown(written);
    Double rating = breakdown == null ? null : breakdown.rating();
    return rating != null && rating <= timeline.constant(Constant.RATING_EASY) + 1e-9;
  }

  /**
   * Null when the log says neither. Heat on purpose and medicine lift or hold the heart rate, and
   * in the water its edges are not known.
   */
  private static @Nullable Boolean tooHard(Followed.Pair pair, Timeline timeline) {
    Recorded recorded = pair.done().written.recorded();
    Calibration athlete = timeline.calibration();
    Double rating = recorded.rpe();
    Double beats = recorded.heartRate();
    Double most = athlete.maximumHeartRate();
    boolean heat = pair.written().scene().heat() || pair.done().written.scene().heat();
    boolean tells = athlete.heartRateUsable() && !heat && pair.done().sport() != Sport.SWIM;
    Double share = beats == null || most == null || !tells ? null : (Double) (beats / most);
    if (rating == null && share == null) {
      return null;
    }
    return rating != null && rating >= timeline.constant(Constant.EASY_DONE_RATING)
        || share != null && share > timeline.constant(Constant.EASY_DONE_HEART) + 1e-9;
  }

  @Override
  public List<Where> where() {
    return entries;
  }
}
