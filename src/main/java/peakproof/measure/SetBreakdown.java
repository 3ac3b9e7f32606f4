package peakproof.measure;

import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.SetLine;
import peakproof.document.Sport;

/**
 * A planned session by its set line. Distances, times and ratings of the words are common practice,
 * no source; each number is null when a part it needs cannot be known.
 *
 * @param minutes in all, passive rest with them
 * @param metres in all
 * @param restMinutes of passive rest
 * @param domains minutes in each intensity domain, passive rest in none
 * @param raceMinutes at race effort
 * @param raceMetres at race effort
 * @param longestRepetition metres of the longest single repetition
 * @param longestContinuous metres of the longest stretch without rest, or with rest of at most 10 s
 *     that is at most 10 % of the time
 * @param longestRaceMinutes minutes at race effort of the longest such stretch at race effort
 * @param fastestRacePace the fastest pace asked for beside the word race, s/100 m for swims and
 *     s/km for runs; null when no part asks for one
 * @param hard whether 6 min or more are severe; never of strength work
 * @param rating expected of the whole session, 0 to 10
 * @param load minutes times rating, after Foster 1998
 * @param sets the sets of equal repetitions
 */
public record SetBreakdown(
    @Nullable Double minutes,
    @Nullable Double metres,
    @Nullable Double restMinutes,
    DomainMinutes domains,
    @Nullable Double raceMinutes,
    @Nullable Double raceMetres,
    @Nullable Double longestRepetition,
    @Nullable Double longestContinuous,
    @Nullable Double longestRaceMinutes,
    @Nullable Double fastestRacePace,
    @Nullable Boolean hard,
    @Nullable Double rating,
    @Nullable Double load,
    List<RepeatSet> sets) {

  /**
   * Works a set line out.
   *
   * @param sport of the session; strength and other sport without an effort word weigh as strength
   *     of unsaid load
   */
  public static SetBreakdown of(
      SetLine line, Sport sport, Calibration athlete, Constants constants) {
    SetPieces.Layout layout = SetPieces.of(line, sport, athlete, constants);
    List<Piece> pieces = layout.pieces();
    List<Piece.Work> work = kept(pieces, Piece.Work.class);
    List<Piece.Work> race = work.stream().filter(each -> each.intensity().race()).toList();
    Double minutes = SetPieces.minutes(pieces);
    Double rest = SetPieces.minutes(kept(pieces, Piece.Pause.class));
    DomainMinutes domains = DomainMinutes.of(work);
    Double rating = PlannedRating.of(work, rest, domains, constants);
    return new SetBreakdown(
        minutes,
        SetPieces.metres(pieces),
        rest,
        domains,
        SetPieces.minutes(race),
        SetPieces.metres(race),
        longestRepetition(work),
        Continuity.longest(pieces, each -> true, Piece.Work::metres, constants),
        longestRace(pieces, constants),
        fastest(work, sport),
        !sport.racing() ? Boolean.FALSE : domains.severeFor(constants.of(Constant.HARD_SEVERE)),
        rating,
        minutes == null || rating == null ? null : Amount.finite(minutes * rating),
        layout.sets());
  }

  private static <T> List<T> kept(List<Piece> pieces, Class<T> kind) {
    return pieces.stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  private static @Nullable Double longestRepetition(List<Piece.Work> work) {
    double longest = 0;
    for (Piece.Work each : work) {
      Double metres = each.metres();
      if (metres == null) {
        return null;
      }
      longest = Math.max(longest, metres);
    }
    return longest;
  }

  private static @Nullable Double longestRace(List<Piece> pieces, Constants constants) {
    Double seconds =
        Continuity.longest(pieces, each -> each.intensity().race(), Piece.Work::seconds, constants);
    return seconds == null ? null : seconds / SetPieces.SECONDS_A_MINUTE;
  }

  private static @Nullable Double fastest(List<Piece.Work> work, Sport sport) {
    Double fastest = null;
    for (Piece.Work each : work) {
      Double pace = each.labelledPace();
      if (pace != null && (fastest == null || pace < fastest)) {
        fastest = pace;
      }
    }
    if (fastest == null || sport == Sport.SWIM) {
      return fastest == null ? null : Amount.finite(100 * fastest);
    }
    return sport == Sport.RUN ? Amount.finite(1000 * fastest) : null;
  }
}
