package peakproof.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import peakproof.audit.Pliable.Spot;

/** A change to one part of a dossier, with the rules that have nothing to do with that part. */
enum Meddling {
  STRENGTH_WORK("strength", Set.of(), "swim-", "bike-", "run-", "brick-", "fuel-", "rules-"),
  SWIMS("swim", Set.of(), "bike-", "run-", "strength-", "fuel-"),
  RUNS("run", Set.of("bike-run-weekend-pile-up"), "swim-", "bike-"),
  RIDES("bike", Set.of(), "swim-", "strength-"),
  THE_WATER_OF_THE_RACE("/event/swim", Set.of(), "bike-", "run-", "strength-", "taper-", "load-"),
  FUEL_OF_RACE_DAY("/race-day/fuel", Set.of(), "swim-", "bike-", "run-", "strength-", "taper-"),
  MORNINGS("/morning", Set.of(), "swim-", "bike-", "brick-", "fuel-", "rules-", "strength-");

  /** What leads to other sessions, or says which day it is, is more than this part. */
  private static final Set<String> KEPT = Set.of("then", "race", "at", "planned");

  private final String part;
  private final Set<String> concerned;
  private final List<String> unconcerned;

  Meddling(String part, Set<String> concerned, String... unconcerned) {
    this.part = part;
    this.concerned = concerned;
    this.unconcerned = List.of(unconcerned);
  }

  boolean mayConcern(String rule) {
    return concerned.contains(rule) || unconcerned.stream().noneMatch(rule::startsWith);
  }

  /** Takes an entry of the part away or scales its numbers, a few times. */
  void with(PliableDossier dossier, Random random) {
    for (int i = 0; i < 5; i++) {
      List<Spot> spots = spots(dossier);
      Spot spot = Mutation.pick(spots, random);
      if (!spot.key().equals(part) && random.nextBoolean()) {
        spot.map().remove(spot.key());
      } else if (spot.value() instanceof String text) {
        spot.set(Mutation.scaled(text, Mutation.pick(List.of(0.8, 1.25), random)));
      }
    }
  }

  private List<Spot> spots(PliableDossier dossier) {
    List<Spot> spots = new ArrayList<>();
    parts(dossier).forEach(map -> map.keySet().forEach(key -> spots.add(new Spot(map, key))));
    return spots.stream().filter(spot -> !KEPT.contains(spot.key())).toList();
  }

  private Stream<Map<String, Object>> parts(PliableDossier dossier) {
    return switch (part) {
      case "/event/swim" -> Stream.of(Pliable.map(dossier.event().get("swim")));
      case "/race-day/fuel" -> {
        Map<String, Object> fuel =
            Pliable.map(Pliable.map(dossier.plan().get("race-day")).get("fuel"));
        yield fuel.values().stream().map(Pliable::map);
      }
      case "/morning" ->
          dossier.logDays().values().stream()
              .map(day -> Pliable.map(day).get("morning"))
              .filter(Map.class::isInstance)
              .map(Pliable::map);
      default ->
          dossier.spots(spot -> spot.key().equals(part) && isSession(spot.map())).stream()
              .map(Spot::map);
    };
  }

  /** The sports are also keys of goals, legs and tests. */
  private boolean isSession(Map<String, Object> map) {
    return map.get(part) instanceof String
        && Stream.of("where", "load", "rpe", "for", "purpose", "kit", "distance")
            .anyMatch(map::containsKey)
        && !map.containsKey("date")
        && !map.containsKey("total");
  }
}
