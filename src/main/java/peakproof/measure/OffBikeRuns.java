package peakproof.measure;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Log;
import peakproof.document.Session;
import peakproof.document.Sport;

/**
 * Logged runs straight off the bike of the last weeks, which a forecast of the run is held beside.
 *
 * @param count how many
 * @param pace their median, s/km; null without one
 */
record OffBikeRuns(int count, @Nullable Double pace) {

  static OffBikeRuns of(@Nullable Log log, LocalDate asOf, Constants constants) {
    List<Double> paces = new ArrayList<>();
    if (log != null) {
      LocalDate first = asOf.minusWeeks((long) constants.of(Constant.RIDE_WEEKS)).plusDays(1);
      for (Log.Day day : log.days().subMap(first, asOf.plusDays(1)).values()) {
        for (Session session : day.sessions()) {
          collect(session, paces, constants);
        }
      }
    }
    return new OffBikeRuns(paces.size(), Median.of(paces));
  }

  private static void collect(Session first, List<Double> paces, Constants constants) {
    double least = constants.of(Constant.OFF_BIKE_LEAST) * SetPieces.SECONDS_A_MINUTE;
    for (Session ride = first; ride != null; ride = ride.then()) {
      Session run = ride.sport() == Sport.BIKE ? ride.then() : null;
      Double metres = run == null ? null : run.recorded().metres();
      Double seconds = run == null ? null : run.recorded().seconds();
      if (metres != null && seconds != null && !Limit.below(seconds, least)) {
        Double pace = Pace.perKm(metres, seconds).value();
        if (pace != null) {
          paces.add(pace);
        }
      }
    }
  }

  /** One line of a forecast; empty without such a run. */
  String inWords() {
    return pace == null
        ? ""
        : "for comparison, median pace of "
            + count
            + (count == 1 ? " logged run" : " logged runs")
            + " off the bike: "
            + Digits.clock(pace)
            + "/km";
  }
}
