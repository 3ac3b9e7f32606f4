package peakproof.measure;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Effort;
import peakproof.document.SetLine;
import peakproof.document.Sport;
import peakproof.document.Target;

/**
 * Lays a set line out as the pieces an athlete does. Rest is taken when something follows; a
 * send-off fixes the time of every repetition but the last, unless the work takes longer than it.
 * Words after a bracket hold for the parts inside that have none of their own.
 */
final class SetPieces {
  static final double SECONDS_A_MINUTE = 60;

  private final Sport sport;
  private final Calibration athlete;
  private final Constants constants;
  private final List<Piece> pieces = new ArrayList<>();
  private final List<RepeatSet> sets = new ArrayList<>();

  private SetPieces(Sport sport, Calibration athlete, Constants constants) {
    this.sport = sport;
    this.athlete = athlete;
    this.constants = constants;
  }

  /** What is asked of a part: its own words, or those around it. */
  private record Asked(@Nullable Effort effort, @Nullable Target target, Effort unsaid) {
    Asked by(SetLine.Part part) {
      return part.effort() == null && part.target() == null
          ? this
          : new Asked(part.effort(), part.target(), unsaid);
    }
  }

  /** The pieces in order, and the sets of equal repetitions among them. */
  record Layout(List<Piece> pieces, List<RepeatSet> sets) {}

  static Layout of(SetLine line, Sport sport, Calibration athlete, Constants constants) {
    SetPieces layout = new SetPieces(sport, athlete, constants);
    List<SetLine.Part> parts = line.parts();
    for (int i = 0; i < parts.size(); i++) {
      boolean last = i == parts.size() - 1;
      boolean edge = parts.size() > 1 && (i == 0 || last);
      Asked unsaid = new Asked(null, null, edge ? Effort.EASY : Effort.STEADY);
      layout.part(parts.get(i), unsaid, !last, true);
    }
    return new Layout(List.copyOf(layout.pieces), List.copyOf(layout.sets));
  }

  private void part(SetLine.Part part, Asked around, boolean followed, boolean first) {
    Asked asked = around.by(part);
    for (int repetition = 1; repetition <= part.count(); repetition++) {
      boolean more = repetition < part.count();
      int from = pieces.size();
      work(part.work(), asked, followed || more, first && repetition == 1);
      if (first && repetition == 1 && part.count() > 1) {
        set(part, pieces.subList(from, pieces.size()));
      }
      if (part.rest() instanceof SetLine.After after && (followed || more)) {
        pieces.add(new Piece.Pause(Amount.finite(after.seconds())));
      } else if (part.rest() instanceof SetLine.SendOff sendOff && more) {
        Double worked = seconds(pieces.subList(from, pieces.size()));
        pieces.add(
            new Piece.Pause(
                worked == null ? null : Amount.finite(Math.max(0, sendOff.seconds() - worked))));
      }
    }
  }

  private void work(SetLine.Work work, Asked asked, boolean followed, boolean first) {
    if (work instanceof SetLine.Group group) {
      List<SetLine.Part> parts = group.parts();
      for (int i = 0; i < parts.size(); i++) {
        part(parts.get(i), asked, followed || i < parts.size() - 1, first);
      }
      return;
    }
    Double pace = pace(asked);
    Double labelledPace =
        asked.effort == Effort.RACE && asked.target instanceof Target.Pace held
            ? Amount.finite(held.secondsPerMetre())
            : null;
    boolean paced = asked.effort == Effort.RACE || asked.target instanceof Target.Pace;
    Double seconds = null;
    Double metres = null;
    if (work instanceof SetLine.Distance distance) {
      metres = Amount.finite(distance.metres());
      seconds = pace == null ? null : Amount.finite(pace * distance.metres());
    } else if (work instanceof SetLine.Time time) {
      seconds = Amount.finite(time.seconds());
      metres = pace == null ? null : Amount.finite(time.seconds() / pace);
    }
    pieces.add(
        new Piece.Work(seconds, metres, intensity(asked), labelledPace, asked.target, paced));
  }

  private void set(SetLine.Part part, List<Piece> repetition) {
    if (part.rest() instanceof SetLine.SendOff || !(part.work() instanceof SetLine.Group)) {
      Double metres = metres(repetition);
      if (metres != null) {
        RepeatSet set =
            RepeatSet.of(part.count(), metres, seconds(repetition), part.rest(), constants);
        if (set != null) {
          sets.add(paced(repetition) ? set : set.leftToTheSwimmer());
        }
      }
    }
  }

  private static boolean paced(List<Piece> repetition) {
    return repetition.stream()
        .allMatch(piece -> !(piece instanceof Piece.Work work) || work.paced());
  }

  private Intensity intensity(Asked asked) {
    boolean race = asked.effort == Effort.RACE;
    if (asked.target != null) {
      Intensity held = Intensity.of(asked.target, race, sport, athlete, constants);
      if (held != null) {
        return held;
      }
      if (asked.effort == null) {
        return new Intensity(null, null, false);
      }
    }
    if (asked.effort == null && !sport.racing()) {
      return new Intensity(null, constants.of(Constant.RATING_STRENGTH_UNSAID), false);
    }
    Effort effort = asked.effort == null ? asked.unsaid : asked.effort;
    return Intensity.of(effort, sport, athlete, constants);
  }

  /** Seconds per metre: the pace asked for, else that of the effort the words come nearest to. */
  private @Nullable Double pace(Asked asked) {
    if (asked.target instanceof Target.Pace pace) {
      return pace.secondsPerMetre();
    }
    Effort effort = asked.effort == null ? asked.unsaid : asked.effort;
    if (asked.effort == null && asked.target != null) {
      Intensity held = Intensity.of(asked.target, false, sport, athlete, constants);
      effort = held == null ? asked.unsaid : nearest(held);
    }
    return PlannedPace.of(effort, sport, athlete, constants);
  }

  private static Effort nearest(Intensity held) {
    if (held.race() || held.domain() == null) {
      return Effort.RACE;
    }
    return switch (held.domain()) {
      case MODERATE -> Effort.STEADY;
      case HEAVY -> Effort.THRESHOLD;
      case SEVERE -> Effort.HARD;
    };
  }

  /** Seconds of some pieces together, finite; null when one is unknown. */
  static @Nullable Double seconds(List<? extends Piece> pieces) {
    double sum = 0;
    for (Piece piece : pieces) {
      Double seconds = piece.seconds();
      if (seconds == null) {
        return null;
      }
      sum += seconds;
    }
    return Amount.finite(sum);
  }

  /** Minutes of some pieces together; null when one is unknown. */
  static @Nullable Double minutes(List<? extends Piece> pieces) {
    Double seconds = seconds(pieces);
    return seconds == null ? null : seconds / SECONDS_A_MINUTE;
  }

  /** Metres of some pieces together, finite; null when one is unknown. */
  static @Nullable Double metres(List<? extends Piece> pieces) {
    double sum = 0;
    for (Piece piece : pieces) {
      if (piece instanceof Piece.Work work) {
        Double metres = work.metres();
        if (metres == null) {
          return null;
        }
        sum += metres;
      }
    }
    return Amount.finite(sum);
  }
}
