package peakproof.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import peakproof.audit.Finding.Value;

class ShownTest {
  private static final Value LIMIT = new Value(0.45, "45%", "share");

  @ParameterizedTest
  @CsvSource({
    "0.453, 45%, 45.3%",
    "0.447, 45%, 44.7%",
    "0.4503, 45%, 45.03%",
    "0.45, 45%, 45%",
    "0.45001, 45%, 45%",
    "0.46, 46%, 46%"
  })
  void tellsAShareFromTheLimitBesideIt(double share, String text, String told) {
    Value value = new Value(share, text, "share");
    assertThat(Shown.apart(value, List.of(LIMIT))).isEqualTo(new Value(share, told, "share"));
    assertThat(Shown.apart(value, List.of())).isEqualTo(value);
  }

  @ParameterizedTest
  @CsvSource({"45, 45%, ''", "0.453, 45%, min", ", 45%, share"})
  void leavesOtherValuesAlone(Double number, String text, String unit) {
    Value value = new Value(number, text, unit);
    assertThat(Shown.apart(value, List.of(LIMIT))).isEqualTo(value);
  }
}
