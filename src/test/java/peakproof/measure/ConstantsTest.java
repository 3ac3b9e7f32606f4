package peakproof.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ConstantsTest {
  @Test
  void everyConstantIsShippedAndNothingElse() {
    assertThat(ShippedConstants.entries().keySet())
        .containsExactlyElementsOf(Arrays.stream(Constant.values()).map(Constant::word).toList());
  }

  @Test
  void everyShippedValueLiesInItsRangeAndSaysWhatItMeansAndWhereItComesFrom() {
    ShippedConstants.entries()
        .forEach(
            (name, entry) -> {
              assertThat(entry.value()).as(name).isBetween(entry.from(), entry.to());
              assertThat(entry.meaning()).as(name).hasSizeGreaterThan(10);
              assertThat(entry.source()).as(name).isNotBlank();
            });
  }

  @Test
  void spellingAgreesWithTheUnit() {
    Map<String, ShippedConstants.Entry> entries = ShippedConstants.entries();
    for (Constant constant : Constant.values()) {
      String spelling =
          switch (constant.unit()) {
            case NUMBER -> "[0-9.]+";
            case SHARE -> "[0-9.]+%";
            case SECONDS, MINUTES -> "[0-9].*(h|min|s|[0-9]{2})";
            case METRES -> "[0-9.]+km";
          };
      assertThat(entries.get(constant.word()).text()).as(constant.word()).matches(spelling);
    }
  }

  @Test
  void secondsAreGivenInSecondsAndMinutesInMinutes() {
    Constants constants = ShippedConstants.constants();
    assertThat(constants.of(Constant.SWIM_EASY)).isEqualTo(12);
    assertThat(constants.of(Constant.LONG_RIDE)).isEqualTo(180);
    assertThat(constants.of(Constant.SWIM_TRIAL_SHORTEST)).isEqualTo(90);
  }

  @Test
  void refusesAMissingAStrangeAndAnInfiniteValue() {
    Map<String, Double> missing = ShippedConstants.values();
    missing.remove("long-ride");
    assertThatThrownBy(() -> new Constants(missing)).hasMessageContaining("long-ride");
    Map<String, Double> strange = ShippedConstants.values();
    strange.put("long-swim", 1.0);
    assertThatThrownBy(() -> new Constants(strange)).hasMessageContaining("long-swim");
    assertThatThrownBy(() -> ShippedConstants.with(Constant.LONG_RUN, Double.POSITIVE_INFINITY))
        .hasMessageContaining("long-run");
  }

  @Test
  void durationsOfSecondsAreHandedInAsMinutes() {
    assertThat(new Constants(ShippedConstants.values()).of(Constant.SWIM_EASY)).isEqualTo(12);
    assertThat(new Constants(ShippedConstants.values()).of(Constant.LONG_RUN)).isEqualTo(75);
  }
}
