package peakproof.fact;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class WordsTest {
  @Test
  void tellsWeeksThatAreNotWrittenTogether() {
    assertThat(
            Words.missing(
                List.of(
                    "the week of 31 May is not written",
                    "the week of 7 Jun is not written",
                    "the week of 14 Jun is not written",
                    "a log of all days since 9 May")))
        .isEqualTo(
            "the weeks of 31 May, 7 Jun and 14 Jun are not written, a log of all days since 9 May");
  }

  @Test
  void leavesASingleWeekAsItIs() {
    assertThat(Words.missing(List.of("event.cut-offs", "the week of 31 May is not written")))
        .isEqualTo("event.cut-offs, the week of 31 May is not written");
  }

  @Test
  void writesDurationsAsACoachDoes() {
    assertThat(List.of(0.0, 0.5, 45.0, 60.0, 95.0, -12.0).stream().map(Words::minutes))
        .containsExactly("0min", "30s", "45min", "1h", "1h35", "-12min");
  }
}
