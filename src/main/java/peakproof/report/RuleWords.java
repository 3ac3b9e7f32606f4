package peakproof.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Shown;
import peakproof.document.Sport;
import peakproof.fact.Need;
import peakproof.fact.Phase;
import peakproof.fact.Settings;
import peakproof.measure.DistanceClass;
import peakproof.rule.Card;
import peakproof.rule.FactWords;
import peakproof.rule.Hold;
import peakproof.rule.RuleInForce;
import peakproof.rule.Severity;

/** What a card says of its rule, in sentences for somebody who has never seen a card. */
final class RuleWords {
  private static final String WINDOW = "window.";

  private RuleWords() {}

  /** {@code ASK; FIX above 30%; HOLD above 100%, because someone could be hurt}. */
  static String severity(Card card) {
    StringBuilder words = new StringBuilder(card.severity().name());
    for (Card.Step step : card.steps()) {
      words.append("; ").append(step.severity());
      Settings.Value from = step.from();
      words.append(
          from == null
              ? " when " + FactWords.plain(String.valueOf(step.when()))
              : " above " + Shown.setting(from, "").text());
    }
    Hold hold = card.hold();
    return hold == null ? words.toString() : words + "; it holds because " + TextPage.spoken(hold);
  }

  /** The lightest and heaviest it can come to: {@code ASK to HOLD}. */
  static String range(RuleInForce rule) {
    Severity least =
        rule.severities().max(Comparator.naturalOrder()).orElseThrow(IllegalStateException::new);
    Severity most = heaviest(rule);
    return least == most ? least.name() : least + " to " + most;
  }

  /** The heaviest it can come to. */
  static Severity heaviest(RuleInForce rule) {
    return rule.severities().min(Comparator.naturalOrder()).orElseThrow(IllegalStateException::new);
  }

  /** How well it is founded. */
  static String grade(Card card) {
    return switch (card.grade()) {
      case EXPERT_PRACTICE -> "coaching convention: what experienced coaches do";
      case COMMON_PRACTICE -> "coaching convention: common practice, no source";
      case STANDARD -> "a published standard or rule book";
      case CONSENSUS -> "a consensus of experts";
      case TRIAL -> "controlled trials";
      case COHORT -> "studies that followed athletes";
      case ARITHMETIC -> "arithmetic";
    };
  }

  /** The plans it is for. */
  static String applies(Card card) {
    Card.Applies applies = card.applies();
    List<String> parts = new ArrayList<>();
    if (applies.raceWater() != null) {
      parts.add(applies.raceWater().equals("open") ? "races in open water" : "races in a pool");
    }
    if (!applies.distance().isEmpty()) {
      parts.add(sorted(applies.distance(), DistanceClass::word) + " distance");
    }
    add(parts, applies.drafting(), "races with drafting", "races without drafting");
    if (!applies.phase().isEmpty()) {
      parts.add(sorted(applies.phase(), Phase::word) + " weeks");
    }
    if (!applies.sports().isEmpty()) {
      parts.add("athletes who " + sorted(applies.sports(), RuleWords::verb));
    }
    add(parts, applies.para(), "athletes who race para", "athletes who do not race para");
    if (!applies.category().isEmpty()) {
      parts.add(String.join(" or ", applies.category().stream().sorted().toList()) + " athletes");
    }
    return parts.isEmpty() ? "every plan" : String.join("; ", parts);
  }

  private static void add(List<String> parts, @Nullable Boolean asked, String yes, String no) {
    if (asked != null) {
      parts.add(asked ? yes : no);
    }
  }

  private static String verb(Sport sport) {
    return sport == Sport.BIKE ? "ride" : sport.word();
  }

  private static <T extends Comparable<T>> String sorted(Set<T> words, Function<T, String> word) {
    return words.stream().sorted().map(word).collect(Collectors.joining(" or "));
  }

  /** The entries without which it cannot judge; empty when it needs none. */
  static List<String> needs(Card card) {
    return card.needs().stream()
        .map(
            need -> need.anyOf().stream().map(RuleWords::need).collect(Collectors.joining(", or ")))
        .toList();
  }

  private static String need(String key) {
    return key.startsWith(WINDOW)
        ? "its days written or logged, with what tells the "
            + FactWords.plain(key.substring(WINDOW.length()))
        : Need.of(key).entry();
  }

  /** A setting's range: {@code 0% to 50%}. */
  static String range(Card.Setting setting) {
    return Shown.setting(setting.from(), setting.unit()).text()
        + " to "
        + Shown.setting(setting.to(), setting.unit()).text();
  }

  /** A value with its unit where the spelling does not say it: {@code 3 swims}. */
  static String value(String text, Card.Setting setting) {
    return setting.value().kind() == Settings.Kind.COUNT ? text + " " + setting.unit() : text;
  }
}
