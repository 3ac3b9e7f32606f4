package peakproof.fact;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What is planned for the day itself.
 *
 * @param bikeCarbohydrate grams per hour on the bike
 * @param runCarbohydrate grams per hour on the run
 * @param bikeFluid litres per hour on the bike
 * @param runFluid litres per hour on the run
 * @param bikeOneSugar true when a single source of sugar is named for the bike
 * @param runOneSugar true when a single source of sugar is named for the run
 * @param wetsuitWorn whether the athlete means to wear one
 */
public record RaceDay(
    String pointer,
    @Nullable Double bikeCarbohydrate,
    @Nullable Double runCarbohydrate,
    @Nullable Double bikeFluid,
    @Nullable Double runFluid,
    boolean bikeOneSugar,
    boolean runOneSugar,
    @Nullable Boolean wetsuitWorn)
    implements Fact {

  /** True when grams and fluid per hour are written for the bike and the run. */
  public boolean fuelWritten() {
    return bikeCarbohydrate != null
        && runCarbohydrate != null
        && bikeFluid != null
        && runFluid != null;
  }

  /** What is not written yet, in words. */
  public String fuelMissing() {
    return String.join(
        ", ",
        Stream.of(
                bikeCarbohydrate == null ? "carbohydrate on the bike" : null,
                bikeFluid == null ? "fluid on the bike" : null,
                runCarbohydrate == null ? "carbohydrate on the run" : null,
                runFluid == null ? "fluid on the run" : null)
            .filter(Objects::nonNull)
            .toList());
  }

  /** The rates with the sources of sugar they name, in words. */
  public String carbohydrate() {
    return "bike "
        + rate(bikeCarbohydrate, bikeOneSugar)
        + ", run "
        + rate(runCarbohydrate, runOneSugar);
  }

  private static String rate(@Nullable Double rate, boolean oneSugar) {
    return rate == null
        ? "not written"
        : Words.number(rate) + " g/h" + (oneSugar ? " from a single sugar" : "");
  }

  /** True when the plan says the athlete races without a wetsuit. */
  public boolean withoutWetsuit() {
    return Boolean.FALSE.equals(wetsuitWorn);
  }

  @Override
  public List<Where> where() {
    return List.of(new Where(pointer, null, null));
  }
}
