package peakproof.bench;

import java.util.List;
import java.util.stream.Stream;
import peakproof.fact.Fact;
import peakproof.fact.Race;
import peakproof.fact.Settings;
import peakproof.fact.SwimSet;
import peakproof.fact.Week;
import peakproof.fact.Window;

/** The rules of swimming among the twenty. */
final class SwimsByHand {
  private SwimsByHand() {}

  static Stream<Week> openWaterWeekly(Evidence all, Settings set) {
    return all.openWater() && all.knows("weeks.phase")
        ? all.wholePeakWeeks()
            .filter(week -> week.changeable() && !week.withoutOpenWater())
            .filter(week -> week.openWaterSwims() < set.count("swims-per-week"))
        : Stream.empty();
  }

  static Stream<Week> frequencyLow(Evidence all, Settings set) {
    if (!all.knows("weeks.phase")) {
      return Stream.empty();
    }
    List<Week> few =
        all.wholePeakWeeks()
            .filter(week -> !week.withoutSwim() && week.swims() < set.count("swims-per-week"))
            .toList();
    return few.size() < 2 ? Stream.empty() : few.stream().filter(Week::changeable);
  }

  static Stream<Window> wetsuitRehearsal(Evidence all, Settings set) {
    Window window = all.window(set);
    if (window == null
        || !all.openWater()
        || !Boolean.TRUE.equals(all.facts.race().wetsuitLikely())
        || all.facts.raceDay().withoutWetsuit()) {
      return Stream.empty();
    }
    return window.wetsuitSwims() < set.count("swims")
            || window.longestWetsuitSwimMinutes() < set.minutes("longest")
        ? Evidence.surely(window, "wetsuitSwims", "longestWetsuitSwimMinutes")
        : Stream.empty();
  }

  static Stream<Window> longestTooShort(Evidence all, Settings set) {
    Window window = all.window(set);
    Race race = all.facts.race();
    return window != null
            && race.distance() != null
            && race.swimMetres() != null
            && window.longestSwimMetres()
                < set.share("longest", race.distance()) * race.swimMetres()
        ? Evidence.surely(window, "longestSwimMetres")
        : Stream.empty();
  }

  static Stream<Window> sighting(Evidence all, Settings set) {
    Window window = all.window(set);
    return window != null && all.openWater() && window.sightingSwims() < set.count("swims")
        ? Evidence.surely(window, "sightingSwims")
        : Stream.empty();
  }

  static Stream<? extends Fact> setOverreach(Evidence all, Settings set) {
    return all.knows("tests.swim")
        ? all.swimSets.stream().filter(swimSet -> overreaches(swimSet, set))
        : Stream.empty();
  }

  private static boolean overreaches(SwimSet swimSet, Settings set) {
    Double reserve = swimSet.timesReserve();
    Double rest = swimSet.restShare();
    return swimSet.planned()
        && !swimSet.missesSendOff()
        && !swimSet.atGoalPace()
        && reserve != null
        && reserve > set.count("most")
        && rest != null
        && rest <= set.share("rest");
  }

  static Stream<Week> shoulderJump(Evidence all, Settings set) {
    return all.knows("weeks.swim")
        ? all.facts.weeks().stream()
            .filter(week -> week.changeable() && !week.camp() && !week.interrupted())
            .filter(
                week ->
                    ByHand.above(week.swimMetresChange(), set.share("jump"))
                        || ByHand.above(week.paddlesShare(), set.share("paddles")))
        : Stream.empty();
  }
}
