package peakproof.report;

import java.io.IOException;
import java.util.Map;
import peakproof.audit.Workup;
import peakproof.fact.Measured;

/** Every computed number for programs, as one flat list. */
public final class MeasuresJson {
  private MeasuresJson() {}

  /** The whole list. */
  public static String of(Workup workup) {
    return Json.of(
        json -> {
          json.count("format", JsonReport.FORMAT);
          json.text("plan", workup.plan());
          json.date("asOf", workup.asOf());
          json.date("raceDate", workup.raceDate());
          json.each("values", workup.values(), (inner, value) -> write(inner, value, workup));
        });
  }

  private static void write(Json json, Measured value, Workup workup) throws IOException {
    json.text("name", value.name());
    json.object(
        "scope",
        scope -> {
          for (Map.Entry<String, String> key : value.scope().entrySet()) {
            scope.text(key.getKey(), key.getValue());
          }
        });
    json.number("value", value.value());
    json.text("unit", value.unit());
    json.number("coverage", value.coverage());
    json.places("from", value.from().stream().map(workup.positions()::of).toList());
    json.text("unknown", value.unknown());
  }
}
