package peakproof.rule;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import peakproof.document.Sport;
import peakproof.fact.Phase;
import peakproof.fact.Settings;
import peakproof.measure.DistanceClass;

/** Cards that let in more plans, or fewer, than they should. */
final class AdmissionVariants {
  private final Card card;
  private final Card.Applies applies;
  private final Map<String, Card> made = new LinkedHashMap<>();

  private AdmissionVariants(Card card) {
    this.card = card;
    this.applies = card.applies();
  }

  /** The variants of a card by what was done. */
  static Map<String, Card> of(Card card) {
    AdmissionVariants variants = new AdmissionVariants(card);
    variants.needs();
    variants.athletes();
    variants.races();
    variants.absence();
    return variants.made;
  }

  private void needs() {
    for (Card.Need need : card.needs()) {
      List<Card.Need> rest = new ArrayList<>(card.needs());
      rest.remove(need);
      put("without need " + need.anyOf(), ChangedCard.of(card).needs(rest));
    }
  }

  private void races() {
    if (applies.raceWater() != null) {
      put("without race-water", admits(null, applies.distance(), applies.phase()));
    }
    fewer("distance", applies.distance(), its -> admits(applies.raceWater(), its, applies.phase()));
    fewer("phase", applies.phase(), its -> admits(applies.raceWater(), applies.distance(), its));
  }

  private void athletes() {
    fewer("sports", applies.sports(), its -> admits(its, applies.category()));
    fewer("category", applies.category(), its -> admits(applies.sports(), its));
  }

  /** Whether absence is judged shows in nothing but the windows. */
  private void absence() {
    boolean looksAtDays =
        card.settings().values().stream()
            .anyMatch(setting -> setting.value().kind() == Settings.Kind.WINDOW);
    if (looksAtDays) {
      put("judges-absence turned round", ChangedCard.of(card).judgesAbsence(!card.judgesAbsence()));
    }
  }

  /** All admitted, and each word admitted no more. */
  private <T extends Comparable<T>> void fewer(
      String key, Set<T> words, Function<Set<T>, ChangedCard> admits) {
    if (!words.isEmpty()) {
      put("without " + key, admits.apply(Set.of()));
    }
    for (T word : words) {
      Set<T> rest = new TreeSet<>(words);
      rest.remove(word);
      if (!rest.isEmpty()) {
        put("without " + key + " " + word, admits.apply(rest));
      }
    }
  }

  private ChangedCard admits(
      @Nullable String water, Set<DistanceClass> distance, Set<Phase> phase) {
    return ChangedCard.of(card)
        .applies(
            new Card.Applies(
                water,
                distance,
                applies.drafting(),
                phase,
                applies.sports(),
                applies.para(),
                applies.category()));
  }

  private ChangedCard admits(Set<Sport> sports, Set<String> category) {
    return ChangedCard.of(card)
        .applies(
            new Card.Applies(
                applies.raceWater(),
                applies.distance(),
                applies.drafting(),
                applies.phase(),
                sports,
                applies.para(),
                category));
  }

  private void put(String what, ChangedCard changed) {
    made.put(what, changed.in(card));
  }
}
