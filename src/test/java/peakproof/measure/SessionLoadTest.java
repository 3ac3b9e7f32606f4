package peakproof.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static peakproof.measure.Lines.line;
import static peakproof.measure.Lines.minutes;
import static peakproof.measure.Lines.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import peakproof.document.Effort;
import peakproof.document.Session;
import peakproof.document.SetLine;
import peakproof.document.Sport;

class SessionLoadTest {
  private static final Constants CONSTANTS = ShippedConstants.constants();
  private static final Calibration TOVE = Athletes.tove().calibration();

  @Test
  void strengthGoesByItsLoad() {
    assertThat(strength("light")).isEqualTo(15 * 3.5);
    assertThat(strength("moderate")).isEqualTo(15 * 4.5);
    assertThat(strength("heavy")).isEqualTo(15 * 6);
    assertThat(strength(null)).isEqualTo(15 * 4);
  }

  @Test
  void plannedLoadIsThatOfItsSetLine() {
    assertThat(planned(Sport.RUN, part(minutes(60), Effort.EASY), null)).isEqualTo(180);
  }

  @Test
  void plannedLoadsAreScaledByTheMedianFromSixPairs() {
    List<SessionLoad.Pair> pairs = new ArrayList<>();
    for (double logged : new double[] {100, 110, 120, 130, 500}) {
      pairs.add(new SessionLoad.Pair(100, logged));
    }
    assertThat(SessionLoad.scale(pairs, CONSTANTS)).isEqualTo(1);
    pairs.add(new SessionLoad.Pair(200, 220));
    assertThat(SessionLoad.scale(pairs, CONSTANTS)).isEqualTo(1.15);
    assertThat(SessionLoad.scale(List.of(), CONSTANTS)).isEqualTo(1);
  }

  @Test
  void pairsWithoutAPlannedLoadAndAMedianOfNothingDoNotScale() {
    List<SessionLoad.Pair> pairs = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      pairs.add(new SessionLoad.Pair(0, 100));
    }
    assertThat(SessionLoad.scale(pairs, CONSTANTS)).isEqualTo(1);
    pairs.clear();
    for (int i = 0; i < 6; i++) {
      pairs.add(new SessionLoad.Pair(100, 0));
    }
    assertThat(SessionLoad.scale(pairs, CONSTANTS)).isEqualTo(1);
  }

  private static Double strength(String load) {
    Session.Strength work = new Session.Strength(Set.of(), load);
    return planned(Sport.STRENGTH, part(minutes(15), null), work);
  }

  private static Double planned(Sport sport, SetLine.Part part, Session.Strength strength) {
    SetBreakdown breakdown = SetBreakdown.of(line(part), sport, TOVE, CONSTANTS);
    return SessionLoad.planned(breakdown, strength, CONSTANTS);
  }
}
