package peakproof.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import peakproof.document.WaterTable;
import peakproof.document.YamlTree;
import peakproof.measure.ShippedConstants;
import peakproof.measure.WaterTemperature;
import peakproof.measure.WaterTemperature.Ruled;
import peakproof.measure.WaterTemperature.Swim;
import peakproof.measure.WaterTemperature.Wetsuit;

/**
 * Tables of the sport's world body: the older edition as published about 2010 to 2013, the later
 * one (about 2017 on) by secondary texts, parts from memory. The event's own sheet decides.
 */
class WaterRulesTest {
  private static final WaterTable TABLE = shipped();

  @Test
  void ageGroupOver3800MetresByTheLaterEdition() {
    assertThat(later("age-group", 3800, 24.6).wetsuit()).isEqualTo(Wetsuit.OPTIONAL);
    assertThat(later("age-group", 3800, 24.6).allowed()).isTrue();
    assertThat(later("age-group", 3800, 24.7).wetsuit()).isEqualTo(Wetsuit.FORBIDDEN);
    assertThat(later("age-group", 3800, 24.7).allowed()).isFalse();
    assertThat(later("age-group", 3800, 15.9).wetsuit()).isEqualTo(Wetsuit.OPTIONAL);
    assertThat(later("age-group", 3800, 15.8).wetsuit()).isEqualTo(Wetsuit.MANDATORY);
    assertThat(later("age-group", 3800, 15.8).allowed()).isTrue();
    assertThat(later("age-group", 3800, 20).limitSeconds()).isEqualTo(135 * 60);
  }

  @Test
  void shortSwimsByTheLaterEdition() {
    assertThat(later("elite", 1500, 20.0).wetsuit()).isEqualTo(Wetsuit.OPTIONAL);
    assertThat(later("elite", 1500, 20.1).wetsuit()).isEqualTo(Wetsuit.FORBIDDEN);
    assertThat(later("age-group", 1500, 22.0).wetsuit()).isEqualTo(Wetsuit.OPTIONAL);
    assertThat(later("age-group", 1500, 22.1).wetsuit()).isEqualTo(Wetsuit.FORBIDDEN);
    assertThat(later("age-group", 1501, 22.1).wetsuit()).isEqualTo(Wetsuit.OPTIONAL);
    assertThat(later("elite", 300, 18).limitSeconds()).isEqualTo(10 * 60);
    assertThat(later("elite", 750, 18).limitSeconds()).isEqualTo(20 * 60);
    assertThat(later("elite", 1500, 18).limitSeconds()).isEqualTo(30 * 60);
    assertThat(later("elite", 3000, 22.1).wetsuit()).isEqualTo(Wetsuit.FORBIDDEN);
  }

  @Test
  void coldWaterShortensTheSwim() {
    Ruled cold = later("age-group", 3800, 14.5);
    assertThat(cold.swim()).isEqualTo(Swim.SHORTENED);
    assertThat(cold.longest()).isEqualTo(3000);
    assertThat(later("age-group", 3800, 15).swim()).isEqualTo(Swim.AS_PLANNED);
    assertThat(later("age-group", 3800, 15).longest()).isNull();
    assertThat(later("age-group", 3000, 14).swim()).isEqualTo(Swim.AS_PLANNED);
    assertThat(later("age-group", 3000, 13.9).longest()).isEqualTo(1500);
    assertThat(later("age-group", 1500, 13).swim()).isEqualTo(Swim.AS_PLANNED);
    assertThat(later("age-group", 1500, 12.9).longest()).isEqualTo(750);
    assertThat(later("age-group", 750, 12).swim()).isEqualTo(Swim.AS_PLANNED);
    assertThat(later("age-group", 750, 11.9).swim()).isEqualTo(Swim.NONE);
  }

  @Test
  void hotWaterShortensTheSwim() {
    assertThat(later("age-group", 1500, 30.9).swim()).isEqualTo(Swim.AS_PLANNED);
    assertThat(later("age-group", 1500, 31).swim()).isEqualTo(Swim.SHORTENED);
    assertThat(later("age-group", 1500, 31).longest()).isNull();
    assertThat(later("age-group", 1500, 32).swim()).isEqualTo(Swim.NONE);
  }

  @Test
  void theOlderEditionHasOtherEdges() {
    assertOlder(1500, 22, 14, 70);
    assertOlder(3000, 23, 15, 100);
    assertOlder(4000, 24, 16, 135);
    Ruled elite = (Ruled) of("older", "elite", 1500, 20.1);
    assertThat(elite.wetsuit()).isEqualTo(Wetsuit.FORBIDDEN);
  }

  @Test
  void anUnknownEditionCategoryOrLengthHasNoAnswer() {
    assertThat(of("next", "age-group", 1500, 18))
        .isInstanceOfSatisfying(
            WaterTemperature.Unknown.class,
            unknown -> assertThat(unknown.because()).contains("edition"));
    assertThat(of(null, "age-group", 1500, 18)).isInstanceOf(WaterTemperature.Unknown.class);
    assertThat(of("later", "para", 1500, 18))
        .isInstanceOfSatisfying(
            WaterTemperature.Unknown.class,
            unknown -> assertThat(unknown.because()).contains("category"));
    assertThat(of("later", "age-group", 5000, 18)).isInstanceOf(WaterTemperature.Unknown.class);
    assertThat(of("later", "age-group", 0, 18)).isInstanceOf(WaterTemperature.Unknown.class);
    assertThat(of("later", "age-group", 1500, Double.NaN))
        .isInstanceOf(WaterTemperature.Unknown.class);
  }

  @Test
  void coldAirLowersTheTemperatureThatCounts() {
    assertThat(adjusted(22, 15.0)).isCloseTo(18.5, within(1e-9));
    assertThat(adjusted(22, 15.1)).isEqualTo(22);
    assertThat(adjusted(12, 14.0)).isEqualTo(12);
    assertThat(adjusted(22, null)).isEqualTo(22);
    assertThat(adjusted(Double.NaN, 10.0)).isNull();
  }

  private static Double adjusted(double water, Double air) {
    return WaterTemperature.adjusted(water, air, ShippedConstants.constants()).value();
  }

  private static void assertOlder(double metres, double above, double below, double minutes) {
    Ruled warm = (Ruled) of("older", "age-group", metres, above);
    assertThat(warm.wetsuit()).isEqualTo(Wetsuit.OPTIONAL);
    assertThat(warm.limitSeconds()).isEqualTo(60 * minutes);
    assertThat(((Ruled) of("older", "age-group", metres, above + 0.1)).wetsuit())
        .isEqualTo(Wetsuit.FORBIDDEN);
    assertThat(((Ruled) of("older", "age-group", metres, below)).wetsuit())
        .isEqualTo(Wetsuit.OPTIONAL);
    assertThat(((Ruled) of("older", "age-group", metres, below - 0.1)).wetsuit())
        .isEqualTo(Wetsuit.MANDATORY);
  }

  private static Ruled later(String category, double metres, double celsius) {
    return (Ruled) of("later", category, metres, celsius);
  }

  private static WaterTemperature of(
      String edition, String category, double metres, double celsius) {
    return WaterTemperature.of(TABLE, edition, category, metres, celsius);
  }

  private static WaterTable shipped() {
    try {
      byte[] bytes = Files.readAllBytes(Path.of("rules", "water-temperature.yaml"));
      WaterTable.Read read = WaterTable.read(YamlTree.read("water-temperature.yaml", bytes));
      assertThat(read.faults()).isEmpty();
      return read.table();
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }
}
