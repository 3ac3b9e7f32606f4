package peakproof.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DigitsTest {
  @ParameterizedTest
  @CsvSource({
    "0, 0:00",
    "59.4, 0:59",
    "59.5, 1:00",
    "105, 1:45",
    "3599.4, 59:59",
    "3600, 1:00:00",
    "11884, 3:18:04",
    "36610, 10:10:10"
  })
  void writesAClock(double seconds, String clock) {
    assertThat(Digits.clock(seconds)).isEqualTo(clock);
  }

  @ParameterizedTest
  @CsvSource({
    "0.284, 2, 0.28",
    "0.285, 2, 0.29",
    "-0.285, 2, -0.29",
    "7, 1, 7.0",
    "7.5, 0, 8",
    "0.00004, 4, 0.0000",
    "-0.04, 1, 0.0",
    "12345678.94, 1, 12345678.9"
  })
  void writesSoManyDigits(double number, int digits, String written) {
    assertThat(Digits.fixed(number, digits)).isEqualTo(written);
  }

  @Test
  void roundsAsJavasFormatterDoes() {
    for (int i = 0; i < 20_000; i++) {
      double number = i * 0.005;
      assertThat(Digits.fixed(number, 2)).isEqualTo(String.format(Locale.ROOT, "%.2f", number));
    }
  }
}
