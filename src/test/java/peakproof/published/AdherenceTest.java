package peakproof.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import peakproof.document.Sport;
import peakproof.measure.Adherence;
import peakproof.measure.Constants;
import peakproof.measure.Domain;
import peakproof.measure.IntensityMatch;
import peakproof.measure.Matching;
import peakproof.measure.ShippedConstants;

/** Adherence as three numbers: common practice, no source; the values are plain fractions. */
class AdherenceTest {
  private static final Constants CONSTANTS = ShippedConstants.constants();
  private static final LocalDate MONDAY = LocalDate.of(2027, 5, 24);

  @Test
  void nineOfElevenSessions() {
    Adherence adherence = of(daily(11, 60.0), daily(9, 60.0));
    assertThat(adherence.sessions()).isCloseTo(0.818, within(0.0005));
  }

  @Test
  void tenAndAHalfOfTwelveHoursWithoutOverrun() {
    List<Matching.Entry> done = new ArrayList<>(daily(11, 60.0));
    done.set(10, entry(10, 30.0));
    assertThat(of(daily(12, 60.0), done).duration()).isCloseTo(0.875, within(1e-12));
    assertThat(of(daily(12, 60.0), done).excess()).isEqualTo(0);
  }

  @Test
  void aLongSessionDoesNotHideAMissedOne() {
    Adherence adherence = of(daily(2, 60.0), List.of(entry(0, 120.0)));
    assertThat(adherence.duration()).isCloseTo(0.50, within(1e-12));
    assertThat(adherence.excess()).isCloseTo(0.50, within(1e-12));
    assertThat(adherence.sessions()).isCloseTo(0.50, within(1e-12));
  }

  @Test
  void sessionsOfTheirOwnAreExcess() {
    Adherence adherence = of(List.of(entry(0, 60.0)), List.of(entry(0, 60.0), entry(5, 30.0)));
    assertThat(adherence).isEqualTo(new Adherence(1.0, 1.0, 0.5));
  }

  @Test
  void undefinedWithoutAPlanAndWithoutDurations() {
    assertThat(of(List.of(), daily(2, 60.0))).isEqualTo(new Adherence(null, null, null));
    assertThat(of(daily(1, 60.0), daily(1, null))).isEqualTo(new Adherence(1.0, null, null));
    assertThat(of(daily(1, null), List.of())).isEqualTo(new Adherence(0.0, null, null));
  }

  @Test
  void sessionsMayMoveByTwoDaysAndNoFurther() {
    assertThat(of(List.of(entry(3, 60.0)), List.of(entry(5, 60.0))).sessions()).isEqualTo(1);
    assertThat(of(List.of(entry(3, 60.0)), List.of(entry(1, 60.0))).sessions()).isEqualTo(1);
    assertThat(of(List.of(entry(3, 60.0)), List.of(entry(6, 60.0))).sessions()).isEqualTo(0);
  }

  @Test
  void matchesTheNearestDurationOfTheSameSport() {
    Matching.Entry run = new Matching.Entry("", MONDAY, Sport.RUN, 60.0);
    Matching matching =
        Matching.of(
            List.of(entry(0, 60.0)),
            List.of(run, entry(0, 20.0), entry(1, 55.0), entry(2, null)),
            CONSTANTS);
    assertThat(matching.pairs()).hasSize(1);
    assertThat(matching.pairs().get(0).done()).isEqualTo(entry(1, 55.0));
    assertThat(matching.extra()).containsExactly(run, entry(0, 20.0), entry(2, null));
  }

  @Test
  void orderOfTheEntriesDoesNotMatter() {
    List<Matching.Entry> planned = List.of(entry(0, 60.0), entry(1, 30.0), entry(3, 45.0));
    List<Matching.Entry> done = List.of(entry(0, 31.0), entry(2, 58.0), entry(4, 50.0));
    List<Matching.Entry> plannedBackwards = new ArrayList<>(planned);
    List<Matching.Entry> doneBackwards = new ArrayList<>(done);
    Collections.reverse(plannedBackwards);
    Collections.reverse(doneBackwards);
    assertThat(Matching.of(plannedBackwards, doneBackwards, CONSTANTS).pairs())
        .isEqualTo(Matching.of(planned, done, CONSTANTS).pairs());
  }

  @Test
  void nothingIsLostOrMatchedTwice() {
    Matching matching = Matching.of(daily(9, 60.0), daily(14, 40.0), CONSTANTS);
    assertThat(matching.pairs().size() + matching.missed().size()).isEqualTo(9);
    assertThat(matching.pairs().size() + matching.extra().size()).isEqualTo(14);
  }

  @Test
  void asHardAsPlannedIsTheDomainOrOneRatingPoint() {
    assertThat(match(pair(Domain.HEAVY, Domain.HEAVY, null, null))).isEqualTo(1);
    assertThat(match(pair(Domain.HEAVY, Domain.SEVERE, null, null))).isEqualTo(0);
    assertThat(match(pair(Domain.HEAVY, Domain.SEVERE, 6.0, 7.0))).isEqualTo(1);
    assertThat(match(pair(null, null, 6.0, 5.0))).isEqualTo(1);
    assertThat(match(pair(null, null, 6.0, 4.9))).isEqualTo(0);
    assertThat(match(pair(null, null, 6.0, 7.1))).isEqualTo(0);
    assertThat(match(pair(Domain.HEAVY, Domain.HEAVY, 6.0, 9.0))).isEqualTo(1);
  }

  @Test
  void sessionsThatCannotBeComparedAreCountedAndLeftOut() {
    IntensityMatch match =
        IntensityMatch.of(
            List.of(
                pair(Domain.HEAVY, Domain.HEAVY, null, null),
                pair(Domain.HEAVY, Domain.MODERATE, null, null),
                pair(Domain.HEAVY, null, 6.0, null),
                pair(null, Domain.HEAVY, null, 6.0)),
            CONSTANTS);
    assertThat(match.share().value()).isEqualTo(0.5);
    assertThat(match.compared()).isEqualTo(2);
    assertThat(match.sessions()).isEqualTo(4);
    assertThat(match(pair(Domain.HEAVY, null, null, null))).isNull();
    assertThat(IntensityMatch.of(List.of(), CONSTANTS).share().because()).contains("intensity");
  }

  @Test
  void oneUnknownDurationLeavesTheSharesUnknown() {
    List<Matching.Entry> planned = List.of(entry(0, 60.0), entry(3, 60.0));
    assertThat(of(planned, List.of(entry(0, null), entry(3, 60.0))).duration()).isNull();
    assertThat(of(planned, List.of(entry(0, 60.0), entry(3, null))).duration()).isNull();
    assertThat(of(List.of(entry(0, 60.0), entry(9, null)), List.of(entry(0, 60.0))).duration())
        .isNull();
    assertThat(of(List.of(entry(0, 60.0)), List.of(entry(0, 60.0), entry(9, null))).excess())
        .isNull();
    assertThat(of(List.of(entry(0, 0.0)), List.of(entry(0, 60.0))).excess()).isNull();
  }

  @Test
  void ofTwoAsLongTheNearerDayIsTheOne() {
    Matching matching =
        Matching.of(List.of(entry(3, 60.0)), List.of(entry(1, 60.0), entry(4, 60.0)), CONSTANTS);
    assertThat(matching.pairs().get(0).done()).isEqualTo(entry(4, 60.0));
  }

  private static Double match(IntensityMatch.Pair pair) {
    return IntensityMatch.of(List.of(pair), CONSTANTS).share().value();
  }

  private static IntensityMatch.Pair pair(
      Domain planned, Domain done, Double plannedRating, Double doneRating) {
    return new IntensityMatch.Pair(planned, done, plannedRating, doneRating);
  }

  private static Adherence of(List<Matching.Entry> planned, List<Matching.Entry> done) {
    return Adherence.of(Matching.of(planned, done, CONSTANTS));
  }

  private static List<Matching.Entry> daily(int days, Double minutes) {
    List<Matching.Entry> entries = new ArrayList<>();
    for (int day = 0; day < days; day++) {
      entries.add(entry(day, minutes));
    }
    return entries;
  }

  private static Matching.Entry entry(int day, Double minutes) {
    return new Matching.Entry("", MONDAY.plusDays(day), Sport.BIKE, minutes);
  }
}
