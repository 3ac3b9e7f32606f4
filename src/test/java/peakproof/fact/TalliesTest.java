package peakproof.fact;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class TalliesTest {
  private static final Timeline TIMELINE =
      Timelines.of(
          Timelines.plan(
              """
              weeks:
                - starts: 2027-05-31
                  days:
                    mon: [{swim: 2000 easy}]
                    wed: [{run: 40min easy}]
                    sat: [{bike: 2h, then: {run: 20min easy}}]
              """),
          null,
          "2027-05-30");

  @ParameterizedTest
  @ValueSource(strings = {"", "swims", "LongRides", "longrides", "restDays", "longRides "})
  void hasNoTallyOfANameThereIsNot(String name) {
    assertThat(week().get(name)).isNull();
  }

  @Test
  void stillHasNoneWhenAskedAgain() {
    Tallies tallies = week();
    assertThat(tallies.get("swims")).isNull();
    assertThat(tallies.get("swims")).isNull();
  }

  @Test
  void countsOnce() {
    Tallies tallies = week();
    assertThat(tallies.get("longestRunMinutes")).isSameAs(tallies.get("longestRunMinutes"));
  }

  @Test
  void tellsSwimsRidesRunsAndRehearsalsApart() {
    Tallies tallies = week();
    assertThat(tallies.get("longestSwimMetres")).isEqualTo(Tally.certain(2000));
    assertThat(tallies.get("longestRideMinutes")).isEqualTo(Tally.certain(120));
    assertThat(tallies.get("longestRunMinutes")).isEqualTo(Tally.certain(40));
    assertThat(tallies.get("transitionSessions")).isEqualTo(Tally.certain(0));
  }

  @Test
  void countsInItsOwnSpanAlone() {
    Tallies sunday = new Tallies(Timelines.span(TIMELINE, "2027-06-06", "2027-06-06"));
    assertThat(week().get("bricks")).isEqualTo(Tally.certain(1));
    assertThat(sunday.get("bricks")).isEqualTo(Tally.certain(0));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "openWaterSwims",
        "suitlessSwims",
        "wetsuitSwims",
        "longestWetsuitSwimMinutes",
        "longestSwimMetres",
        "longestRepetitionMetres",
        "goalPaceSwimMetres",
        "sightingSwims",
        "bothSidesSwims",
        "fastStartSwims",
        "briskSwims",
        "swimsInCompany",
        "longestRideMinutes",
        "longRideEffortShare",
        "longestRaceClothingRideMinutes",
        "raceBikeRides",
        "longRides",
        "briskRides",
        "aeroShare",
        "longRideClimbRate",
        "groupShare",
        "longestRunMinutes",
        "longestRunKm",
        "racePaceRuns",
        "fastRuns",
        "steepestRunDescent",
        "bricks",
        "offBikeShare",
        "raceShoeRuns",
        "raceShoeKm",
        "fuelledLongSessions",
        "fuelledRuns",
        "dressRehearsals",
        "transitionSessions",
        "heatDays",
      })
  void anEmptySpanHoldsNothingForCertain(String name) {
    Tallies none = new Tallies(Timelines.span(TIMELINE, "2027-06-06", "2027-06-06"));
    assertThat(none.get(name)).isEqualTo(Tally.certain(0));
  }

  @ParameterizedTest
  @MethodSource("amountsOfAWindow")
  void everyAmountOfAWindowCanBeAskedFor(Method amount) throws ReflectiveOperationException {
    Window window = new Window(week(), "boat-swims", "window");
    assertThat((double) amount.invoke(window)).isNotNegative();
  }

  static List<Method> amountsOfAWindow() {
    return Arrays.stream(Window.class.getMethods())
        .filter(method -> method.getReturnType() == double.class)
        .toList();
  }

  private static Tallies week() {
    return new Tallies(Timelines.span(TIMELINE, "2027-05-31", "2027-06-06"));
  }
}
