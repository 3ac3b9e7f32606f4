package peakproof.fact;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import peakproof.document.Athlete;
import peakproof.document.Log;
import peakproof.document.Sport;

/** Gathers the log's pain and illness entries into one fact per body part and per illness. */
final class Symptoms {
  /** Entries of one body part, and of one illness, that lie further apart are told apart. */
  private static final int APART_DAYS = 7;

  private static final Set<String> BONE = Set.of("swelling", "point-tender", "bone");
  private static final Set<String> SYSTEMIC =
      Set.of("cough", "chest", "tight-chest", "aches", "vomiting", "palpitations");
  private static final Set<String> BREATHING =
      Set.of("froth", "tight-chest", "breathless-in-water");
  private static final Set<String> COLD = Set.of("sore-throat", "runny-nose");

  private Symptoms() {}

  private record PainOn(LocalDate date, Log.Pain pain) {}

  private record IllOn(LocalDate date, Log.Ill ill, boolean swum) {}

  static List<Pain> pains(@Nullable Log log, LocalDate asOf, LocalDate race) {
    Map<String, List<PainOn>> bySite = new LinkedHashMap<>();
    if (log != null) {
      log.days()
          .headMap(asOf.plusDays(1))
          .forEach(
              (date, day) ->
                  day.pain()
                      .forEach(
                          pain ->
                              bySite
                                  .computeIfAbsent(pain.site(), site -> new ArrayList<>())
                                  .add(0, new PainOn(date, pain))));
    }
    return bySite.values().stream().map(on -> pain(on, race)).toList();
  }

  private static Pain pain(List<PainOn> newestFirst, LocalDate race) {
    LocalDate newest = newestFirst.get(0).date();
    List<PainOn> standing =
        newestFirst.stream().filter(on -> !on.date().isBefore(newest.minusDays(1))).toList();
    return new Pain(
        newestFirst.get(0).pain().site(),
        newest,
        ChronoUnit.DAYS.between(newest, race),
        standing.stream()
            .map(on -> on.pain().level())
            .filter(Objects::nonNull)
            .max(Double::compare)
            .orElse(null),
        standing.stream().anyMatch(on -> "worse".equals(on.pain().nextMorning())),
        standing.stream().anyMatch(on -> on.pain().signs().contains("limp")),
        standing.stream()
            .anyMatch(
                on ->
                    "night".equals(on.pain().when())
                        || on.pain().signs().stream().anyMatch(BONE::contains)),
        standing.stream().allMatch(on -> "swimming".equals(on.pain().when())),
        standing.stream().map(on -> new Where(on.pain().at(), on.date(), null)).toList());
  }

  static List<Illness> illnesses(
      @Nullable Log log, Athlete.Health health, LocalDate asOf, LocalDate race) {
    List<List<IllOn>> spells = new ArrayList<>();
    if (log != null) {
      LocalDate before = null;
      for (var day : log.days().headMap(asOf.plusDays(1)).entrySet()) {
        Log.Ill ill = day.getValue().ill();
        if (ill == null) {
          continue;
        }
        if (before == null || before.plusDays(APART_DAYS).isBefore(day.getKey())) {
          spells.add(new ArrayList<>());
        }
        spells.get(spells.size() - 1).add(0, new IllOn(day.getKey(), ill, swum(day.getValue())));
        before = day.getKey();
      }
    }
    return spells.stream().map(spell -> illness(spell, health, race)).toList();
  }

  private static Illness illness(List<IllOn> newestFirst, Athlete.Health health, LocalDate race) {
    LocalDate newest = newestFirst.get(0).date();
    LocalDate over = newestFirst.get(0).ill().over();
    boolean fever = newestFirst.stream().anyMatch(on -> Boolean.TRUE.equals(on.ill().fever()));
    boolean systemic =
        fever
            || newestFirst.stream()
                .anyMatch(on -> on.ill().signs().stream().anyMatch(SYSTEMIC::contains));
    boolean virus = newestFirst.stream().anyMatch(on -> "virus".equals(on.ill().kind()));
    return new Illness(
        newestFirst.get(newestFirst.size() - 1).date(),
        over == null ? newest : over,
        ChronoUnit.DAYS.between(over == null ? newest : over, race),
        fever,
        systemic,
        fever || virus && systemic,
        newestFirst.stream().anyMatch(Symptoms::breathing),
        over != null,
        health.cleared() != null && !health.cleared().isBefore(newest),
        newestFirst.stream()
            .map(on -> on.ill().kind())
            .filter(Objects::nonNull)
            .findFirst()
            .orElse(null),
        newestFirst.stream().map(on -> new Where(on.ill().at(), on.date(), null)).toList());
  }

  /**
   * A cough of a cold is no sign of water on the lungs; one after a swim and nothing else may be.
   */
  private static boolean breathing(IllOn on) {
    Set<String> signs = on.ill().signs();
    String kind = on.ill().kind();
    boolean cold = signs.stream().anyMatch(COLD::contains) || kind != null && !kind.equals("other");
    return signs.stream().anyMatch(BREATHING::contains)
        || on.swum() && !cold && signs.contains("cough");
  }

  private static boolean swum(Log.Day day) {
    return day.sessions().stream().anyMatch(Symptoms::swims);
  }

  private static boolean swims(peakproof.document.Session session) {
    peakproof.document.Session then = session.then();
    return session.sport() == Sport.SWIM || then != null && swims(then);
  }
}
