package peakproof.published;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import peakproof.document.Session;
import peakproof.document.Sport;
import peakproof.measure.Athletes;
import peakproof.measure.SessionLoad;

/**
 * Foster C 1998, Med Sci Sports Exerc 30:1164, and Foster C et al. 2001, J Strength Cond Res
 * 15:109: the load of a session is its minutes times the rating of the whole of it. Plain products,
 * hence exact.
 */
class Foster1998Test {
  @Test
  void minutesTimesRating() {
    assertThat(load(60, 4.0)).isEqualTo(240);
    assertThat(load(300, 3.0)).isEqualTo(900);
    assertThat(load(90, 7.0)).isEqualTo(630);
    assertThat(load(13 * 60, 7.0)).isEqualTo(5460);
  }

  @Test
  void twoSessionsOfADay() {
    assertThat(load(45, 3.0) + load(60, 6.0)).isEqualTo(495);
  }

  @Test
  void unknownWithoutRatingOrTime() {
    assertThat(load(60, null)).isNull();
    assertThat(SessionLoad.of(null, 4.0)).isNull();
    assertThat(load(60, 0.0)).isEqualTo(0);
  }

  private static Double load(double minutes, Double rpe) {
    return SessionLoad.logged(
        Athletes.logged(
            Sport.RUN, new Session.Recorded(60 * minutes, null, rpe, null, null, null, null)));
  }
}
