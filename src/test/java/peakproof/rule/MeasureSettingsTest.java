package peakproof.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import peakproof.fact.Settings;
import peakproof.measure.Constant;
import peakproof.measure.Constants;

/** A file whose constants are 1, 2, 3 and so on, the last of them first. */
class MeasureSettingsTest {
  private static final MeasureSettings MEASURES = new MeasureSettings(settings());

  @ParameterizedTest
  @EnumSource(Constant.class)
  void shipsTheValueOfEachSettingAndNotItsRange(Constant constant) {
    assertThat(MEASURES.shipped().of(constant)).isEqualTo(value(constant));
  }

  @Test
  void keepsTheSettingsInTheOrderOfTheFile() {
    List<String> words = new ArrayList<>();
    for (Constant constant : Constant.values()) {
      words.add(constant.word());
    }
    Collections.reverse(words);
    assertThat(MEASURES.settings().keySet()).containsExactlyElementsOf(words);
  }

  @Test
  void makesWhatIsShippedOnce() {
    assertThat(MEASURES.shipped()).isSameAs(MEASURES.shipped());
  }

  @Test
  void aPlanThatChangesNothingHasWhatIsShipped() {
    assertThat(MEASURES.changed(Map.of())).isSameAs(MEASURES.shipped());
  }

  @Test
  void aPlanChangesWhatItNamesAndNothingElse() {
    Constants changed = MEASURES.changed(Map.of(Constant.LONG_SHARE.word(), 0.5));
    assertThat(changed.of(Constant.LONG_SHARE)).isEqualTo(0.5);
    for (Constant constant : Constant.values()) {
      if (constant != Constant.LONG_SHARE) {
        assertThat(changed.of(constant)).as(constant.word()).isEqualTo(value(constant));
      }
    }
  }

  @Test
  void whatOnePlanChangesIsNothingToAnother() {
    MeasureSettings measures = new MeasureSettings(settings());
    measures.changed(Map.of(Constant.LONG_RIDE.word(), 500.0));
    Constants other = measures.changed(Map.of(Constant.LONG_RUN.word(), 600.0));
    assertThat(other.of(Constant.LONG_RIDE)).isEqualTo(value(Constant.LONG_RIDE));
    assertThat(measures.shipped().of(Constant.LONG_RIDE)).isEqualTo(value(Constant.LONG_RIDE));
    assertThat(measures.shipped().of(Constant.LONG_RUN)).isEqualTo(value(Constant.LONG_RUN));
  }

  @Test
  void refusesAChangeOfWhatIsNoSetting() {
    Map<String, Double> change = Map.of("long-rides", 3.0);
    assertThatThrownBy(() -> MEASURES.changed(change))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("long-rides");
  }

  @Test
  void asksForAMissingSettingNoSoonerThanForTheConstants() {
    Map<String, Card.Setting> settings = settings();
    settings.remove(Constant.LONG_RIDE.word());
    MeasureSettings measures = new MeasureSettings(settings);
    assertThat(measures.settings()).hasSize(Constant.values().length - 1);
    assertThatThrownBy(measures::shipped)
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("long-ride");
  }

  /** A file gives seconds in minutes. */
  private static double value(Constant constant) {
    return (constant.ordinal() + 1) * (constant.unit() == Constant.Unit.SECONDS ? 60 : 1);
  }

  private static Map<String, Card.Setting> settings() {
    Map<String, Card.Setting> settings = new LinkedHashMap<>();
    Constant[] constants = Constant.values();
    for (int i = constants.length - 1; i >= 0; i--) {
      String word = Objects.requireNonNull(constants[i]).word();
      settings.put(
          word,
          new Card.Setting(word, count(i + 1), "", "", count(-1), count(9999), "some number"));
    }
    return settings;
  }

  private static Settings.Value count(double number) {
    return new Settings.Value(Settings.Kind.COUNT, number, number);
  }
}
