package peakproof.report;

import java.io.IOException;
import java.util.Locale;
import peakproof.audit.Workup;
import peakproof.measure.CutOffMargin;
import peakproof.measure.Forecast;
import peakproof.measure.Projected;

/** The race-day forecast for programs; times in seconds. */
public final class ForecastJson {
  private ForecastJson() {}

  /** The whole forecast. */
  public static String of(Workup workup, String program) {
    return Json.of(
        json -> {
          json.count("format", JsonReport.FORMAT);
          json.text("program", program);
          json.text("plan", workup.plan());
          json.text("log", workup.log());
          json.text("athlete", workup.athlete());
          json.text("event", workup.event());
          json.date("asOf", workup.asOf());
          json.date("raceDate", workup.raceDate());
          json.each("legs", workup.forecast().legs(), (inner, leg) -> write(inner, leg, workup));
          json.each("cutOffs", workup.forecast().cutOffs(), (inner, limit) -> write(inner, limit));
          Projected.Narrowing most = workup.forecast().narrowsMost();
          json.text("narrowsMost", most == null ? null : most.entry());
          json.number("narrowsBy", most == null ? null : (Double) most.seconds());
        });
  }

  private static void write(Json json, Forecast.Leg leg, Workup workup) throws IOException {
    Projected time = leg.time();
    json.text("leg", leg.name());
    range(json, time);
    json.number("goal", leg.goal());
    Forecast.Leg.Verdict verdict = leg.verdict();
    json.text("goalIs", verdict == null ? null : verdict.name().toLowerCase(Locale.ROOT));
    json.texts("arithmetic", time.arithmetic());
    json.text("unknown", time.range() == null ? time.because() : null);
    json.places("from", time.entries().stream().map(workup.positions()::of).toList());
  }

  private static void write(Json json, Forecast.CutOff limit) throws IOException {
    json.text("name", limit.name());
    json.number("limit", limit.limit());
    range(json, limit.reached());
    Projected.Range range = limit.reached().range();
    json.number(
        "marginShare",
        range == null ? null : CutOffMargin.of(limit.limit(), range.likely()).share().value());
    json.text("unknown", range == null ? limit.reached().because() : null);
  }

  private static void range(Json json, Projected time) throws IOException {
    Projected.Range range = time.range();
    json.number("low", range == null ? null : (Double) range.low());
    json.number("likely", range == null ? null : (Double) range.likely());
    json.number("high", range == null ? null : (Double) range.high());
  }
}
