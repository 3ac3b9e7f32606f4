package peakproof.fact;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Event;
import peakproof.document.Plan;
import peakproof.measure.Constant;
import peakproof.measure.Median;
import peakproof.measure.Wbgt;

/**
 * How hot race day will be.
 *
 * @param wbgt wet-bulb globe temperature, °C: as forecast or measured, else estimated from air
 *     temperature and humidity
 * @param estimated true for the estimate, which has to be some degrees higher for the same caution
 * @param warm true from where heat is worth a word
 * @param hot true from where it asks for caution
 * @param hotFrom the temperature from which it would be hot, °C
 * @param warmerThanTraining by how many degrees the air of race day is warmer than the median of
 *     what the log gives for the last weeks; unknown without it
 */
public record Weather(
    String pointer,
    double wbgt,
    boolean estimated,
    boolean warm,
    boolean hot,
    double hotFrom,
    @Nullable Double warmerThanTraining)
    implements Fact {
  /** Fewer entries may all be of the same cool mornings. */
  private static final int ENTRIES_LEAST = 3;

  /** {@code forecast} or {@code estimated}. */
  public String kind() {
    return estimated ? "estimated" : "forecast";
  }

  /** How the air of race day stands to that of training, in words. */
  public String training() {
    if (warmerThanTraining == null) {
      return "the log does not say how warm training was";
    }
    return warmerThanTraining > 0
        ? "its air is " + Words.number(warmerThanTraining) + " °C warmer than that of training"
        : "its air is no warmer than that of training";
  }

  /** Null when the event gives neither the temperature nor air and humidity to estimate it from. */
  static @Nullable Weather of(Plan plan, Timeline timeline) {
    Event.Weather weather = plan.event().weather();
    Double given = weather.wbgt();
    Double wbgt = given == null ? estimate(weather, timeline) : given;
    if (wbgt == null) {
      return null;
    }
    boolean estimated = given == null;
    double more = estimated ? timeline.constant(Constant.WBGT_ESTIMATE_HIGHER) : 0;
    Wbgt.Caution caution = Wbgt.caution(wbgt, estimated, timeline.constants());
    return new Weather(
        plan.event().at() + "/weather",
        Exact.of(wbgt.doubleValue()),
        estimated,
        caution != Wbgt.Caution.NONE,
        caution == Wbgt.Caution.CAUTION || caution == Wbgt.Caution.STRONG,
        timeline.constant(Constant.WBGT_CAUTION) + more,
        warmer(weather.air(), timeline));
  }

  private static @Nullable Double estimate(Event.Weather weather, Timeline timeline) {
    Double air = weather.air();
    Double humidity = weather.humidity();
    return air == null || humidity == null
        ? null
        : Wbgt.estimated(air, humidity, timeline.constants()).value();
  }

  private static @Nullable Double warmer(@Nullable Double race, Timeline timeline) {
    LocalDate from = timeline.asOf().minusDays((long) timeline.constant(Constant.HEAT_DAYS));
    List<Double> airs = new ArrayList<>();
    timeline
        .sessions()
        .filter(session -> !session.planned() && session.date().isAfter(from))
        .forEach(
            session -> {
              Double air = session.written.scene().air();
              if (air != null) {
                airs.add(air);
              }
            });
    Double usual = Median.of(airs);
    return race == null || usual == null || airs.size() < ENTRIES_LEAST
        ? null
        : (Double) Exact.of(race - usual);
  }

  @Override
  public List<Where> where() {
    return List.of(new Where(pointer, null, null));
  }
}
