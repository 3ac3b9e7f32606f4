package peakproof.measure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import peakproof.document.Event;

class DistanceClassTest {
  @ParameterizedTest
  @CsvSource(
      nullValues = "-",
      value = {
        "150, -, FULL", "200, -, FULL", "149.9, -, -", "200.1, -, -",
        "70, -, HALF", "110, -, HALF", "69.9, -, -", "110.1, -, -",
        "35, -, STANDARD", "50, -, STANDARD", "34.9, -, -", "50.1, -, -",
        "15, -, SPRINT", "25, -, SPRINT", "14.9, -, -", "25.1, -, -",
        "120, half, HALF", "90, full, HALF", "-, sprint, SPRINT", "-, -, -"
      })
  void goesByTheBikeLegElseByTheWord(Double km, String word, DistanceClass expected) {
    Event.Legs legs = new Event.Legs(null, km == null ? null : 1000 * km, null);
    Event event = Athletes.tove().withLegs(legs, word).plan().event();
    assertThat(DistanceClass.of(event, ShippedConstants.constants())).isEqualTo(expected);
  }

  @Test
  void wordsOfSettings() {
    assertThat(DistanceClass.FULL.word()).isEqualTo("full");
    assertThat(DistanceClass.SPRINT.suffix()).isEqualTo("-sprint");
    assertThat(Domain.SEVERE.word()).isEqualTo("severe");
  }
}
