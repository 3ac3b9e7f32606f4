package peakproof.audit;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Dossier;
import peakproof.document.Positions;
import peakproof.fact.Measured;
import peakproof.measure.Calibration;
import peakproof.measure.Constants;
import peakproof.measure.Forecast;

/**
 * What is computed of one plan, before anything is judged.
 *
 * @param plan the plan's path as the user gave it
 * @param log the log's path, or null
 * @param values every computed number
 * @param forecast of race day
 * @param positions where the entries stand that all of it rests on
 * @param dossier the documents it was read from
 * @param calibration what turns the plan's words into numbers for this athlete
 * @param constants of the measures, as they count for this plan
 */
public record Workup(
    String plan,
    @Nullable String log,
    String athlete,
    String event,
    LocalDate raceDate,
    LocalDate asOf,
    List<Measured> values,
    Forecast forecast,
    Positions positions,
    Dossier dossier,
    Calibration calibration,
    Constants constants) {

  /** What came of one plan. */
  public sealed interface Outcome {
    /** It was read and worked out. */
    record Done(Workup workup) implements Outcome {}

    /** A document of it is wrong, or the house asks for what the rules do not have. */
    record Wrong(List<peakproof.document.Fault> faults) implements Outcome {}
  }
}
