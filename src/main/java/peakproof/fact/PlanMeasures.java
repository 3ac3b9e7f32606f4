package peakproof.fact;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Athlete;
import peakproof.document.Dossier;
import peakproof.document.Plan;
import peakproof.measure.Amount;
import peakproof.measure.Calibration;
import peakproof.measure.Carbohydrate;
import peakproof.measure.Constants;
import peakproof.measure.CutOffMargin;
import peakproof.measure.Forecast;
import peakproof.measure.HeartRateRange;
import peakproof.measure.Projected;
import peakproof.measure.Reading;
import peakproof.measure.Sweat;
import peakproof.measure.Wbgt;

/** The numbers of a plan as a whole: the athlete, the taper, and race day leg by leg. */
final class PlanMeasures {
  private static final Measured.Scope PLAN = Measured.Scope.PLAN;

  private final Facts facts;
  private final Plan plan;
  private final Timeline timeline;
  private final Constants constants;
  private final List<Measured> values = new ArrayList<>();

  private PlanMeasures(Facts facts, Dossier dossier, Timeline timeline) {
    this.facts = facts;
    this.plan = dossier.plan();
    this.timeline = timeline;
    this.constants = timeline.constants();
  }

  static List<Measured> of(Facts facts, Dossier dossier, Timeline timeline) {
    PlanMeasures measures = new PlanMeasures(facts, dossier, timeline);
    measures.athlete(facts.calibration());
    measures.sweat();
    measures.taper();
    measures.weather();
    measures.gaps();
    measures.runLeg(facts.ofRace().runLegCost());
    facts.forecast().legs().forEach(measures::leg);
    facts.forecast().cutOffs().forEach(measures::cutOff);
    measures.fuel();
    return measures.values;
  }

  private void athlete(Calibration athlete) {
    add("critical-swim-speed", PLAN, athlete.criticalSwimSpeed(), "m/s");
    add("swim-reserve", PLAN, athlete.swimReserve(), "m");
    add("threshold-swim-pace", PLAN, athlete.thresholdSwimPace(), "s/100m");
    add("open-marathon-pace", PLAN, athlete.openMarathonPace(), "s/km");
    add("critical-power", PLAN, athlete.criticalPower(), "W");
    add("ride-speed", PLAN, athlete.rideSpeed(), "km/h");
    Double age = facts.athlete().age();
    String at = plan.athlete().at();
    add("age", PLAN, age, "years", at, "the athlete's `born`");
    HeartRateRange rates =
        HeartRateRange.of(athlete.restingHeartRate(), athlete.maximumHeartRate(), age, constants);
    String name = rates.estimated() ? "maximum-heart-rate-by-age" : "maximum-heart-rate";
    add(name, PLAN, rates.maximum(), "bpm", at, rates.because());
    add("load-scale", PLAN, timeline.loads().scale(), "ratio", plan.at() + "/weeks", "");
  }

  private void sweat() {
    plan.athlete()
        .sweatRates()
        .forEach(
            weighed -> {
              Sweat sweat =
                  Sweat.of(
                      new Sweat.Weighing(
                          weighed.beforeKg(),
                          weighed.afterKg(),
                          weighed.drunkLitres(),
                          weighed.urineLitres(),
                          weighed.seconds() / 3600));
              Measured.Scope scope = scope(weighed);
              add("sweat-rate", scope, sweat.litresAnHour(), "l/h", weighed.at());
              add("mass-lost", scope, sweat.massLost(), "share", weighed.at());
            });
  }

  private static Measured.Scope scope(Athlete.SweatRate weighed) {
    Measured.Scope scope = weighed.date() == null ? PLAN : PLAN.and("day", weighed.date());
    return weighed.sport() == null ? scope : scope.and("sport", weighed.sport().word());
  }

  private void taper() {
    List<Day> days =
        timeline.weeks().all().stream()
            .filter(week -> week.phase() == Phase.TAPER)
            .flatMap(week -> week.days().stream())
            .toList();
    add(
        "taper-reduction",
        PLAN,
        timeline.weeks().reduction(days),
        "share",
        plan.at() + "/weeks",
        "the taper weeks, and a log of the weeks before them");
    Taper taper = facts.training().taper();
    add(
        "taper-length",
        PLAN,
        taper == null ? null : taper.lengthDays(),
        "days",
        plan.at() + "/weeks",
        "a taper to come, and a log of the weeks before it");
  }

  private void gaps() {
    for (Gap gap : facts.training().gaps()) {
      Measured.Scope scope = PLAN.and("day", gap.from());
      String at = gap.where().get(0).pointer();
      add("gap-days", scope, gap.days(), "days", at, "");
      add("gap-cost-low", scope, gap.costLow(), "share", at, "");
      add("gap-cost-high", scope, gap.costHigh(), "share", at, "");
    }
  }

  private void runLeg(@Nullable RunLegCost cost) {
    String because = "goal.run and a run race or test of the last weeks";
    String at = plan.goal() == null ? plan.at() : plan.goal().at();
    Measured.Scope scope = PLAN.and("leg", "run");
    Double usual = cost == null ? null : (Double) (1 + cost.costShare());
    Double cautious = cost == null ? null : (Double) (1 + cost.costCautiousShare());
    add("run-leg-ratio", scope, usual, "ratio", at, because);
    add("run-leg-ratio-cautious", scope, cautious, "ratio", at, because);
  }

  private void weather() {
    var weather = plan.event().weather();
    Double forecast = weather.wbgt();
    Double air = weather.air();
    Double humidity = weather.humidity();
    Amount estimate =
        air == null || humidity == null ? null : Wbgt.estimated(air, humidity, constants);
    Double value = forecast != null ? forecast : estimate == null ? null : estimate.value();
    add(
        forecast == null ? "wbgt-estimated" : "wbgt",
        PLAN,
        value,
        "°C",
        plan.event().at() + "/weather",
        "the event's weather: wbgt, or air and humidity");
  }

  private void leg(Forecast.Leg leg) {
    Measured.Scope scope = PLAN.and("leg", leg.name());
    Projected time = leg.time();
    Projected.Range range = time.range();
    for (String end : List.of("low", "likely", "high")) {
      Double seconds =
          range == null
              ? null
              : switch (end) {
                case "low" -> range.low();
                case "likely" -> range.likely();
                default -> range.high();
              };
      values.add(
          Measured.of(
              "forecast-" + end,
              scope,
              seconds == null ? null : seconds / 60,
              "min",
              null,
              time.entries(),
              time.because()));
    }
  }

  private void cutOff(Forecast.CutOff limit) {
    Projected.Range range = limit.reached().range();
    Double share =
        range == null ? null : CutOffMargin.of(limit.limit(), range.likely()).share().value();
    values.add(
        Measured.of(
            "cut-off-margin",
            PLAN.and("leg", limit.name()),
            share,
            "share",
            null,
            limit.reached().entries(),
            limit.reached().because()));
  }

  private void fuel() {
    RaceDay day = facts.raceDay();
    fuel("bike", day.bikeCarbohydrate(), day.bikeFluid(), facts.goal().bikeMinutes());
    fuel("run", day.runCarbohydrate(), day.runFluid(), facts.goal().runMinutes());
  }

  private void fuel(
      String leg, @Nullable Double rate, @Nullable Double fluid, @Nullable Double minutes) {
    Measured.Scope scope = PLAN.and("leg", leg);
    String at = facts.raceDay().pointer();
    add("carbohydrate", scope, rate, "g/h", at, "race-day.fuel." + leg + ".carbohydrate");
    Amount grams =
        rate == null || minutes == null
            ? null
            : Carbohydrate.grams(List.of(new Carbohydrate.Stretch(rate, minutes / 60)));
    add(
        "carbohydrate-total",
        scope,
        grams == null ? null : grams.value(),
        "g",
        at,
        rate == null ? "race-day.fuel." + leg + ".carbohydrate" : "goal." + leg);
    add("fluid", scope, fluid, "l/h", at, "race-day.fuel." + leg + ".fluid");
  }

  private void add(String name, Measured.Scope scope, Reading reading, String unit) {
    values.add(
        Measured.of(
            name, scope, reading.value(), unit, null, reading.entries(), reading.because()));
  }

  private void add(String name, Measured.Scope scope, Amount amount, String unit, String at) {
    add(name, scope, amount.value(), unit, at, amount.because());
  }

  private void add(
      String name,
      Measured.Scope scope,
      @Nullable Double value,
      String unit,
      String at,
      String because) {
    values.add(Measured.of(name, scope, value, unit, null, List.of(at), because));
  }
}
