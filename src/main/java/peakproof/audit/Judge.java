package peakproof.audit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.kie.api.runtime.KieSession;
import peakproof.document.Plan;
import peakproof.fact.Facts;
import peakproof.fact.Need;
import peakproof.fact.Settings;
import peakproof.fact.Window;
import peakproof.rule.Card;
import peakproof.rule.Ruleset;

/**
 * Runs the rules over the facts of one plan and gives each rule one of the four outcomes. What a
 * rule needs and what plans it is for is decided before it fires; whether an absence can be called
 * one, after.
 */
final class Judge {
  private static final String WINDOW = "window.";

  /** More firings of one rule than any plan of a year could need; one that goes on is broken. */
  private static final int MOST_FIRINGS = 100_000;

  private final Ruleset rules;
  private final Plan plan;
  private final Facts facts;
  private final Map<String, Settings> settings;
  private final Watchdog watchdog;
  private final Map<String, List<Window>> windows = new TreeMap<>();
  private final Map<String, Outcome> outcomes = new TreeMap<>();

  Judge(Ruleset rules, Plan plan, Facts facts, Map<String, Settings> settings, Watchdog watchdog) {
    this.rules = rules;
    this.plan = plan;
    this.facts = facts;
    this.settings = settings;
    this.watchdog = watchdog;
  }

  /**
   * What a rule that found something could not judge beside it.
   *
   * @param weeks that are not written yet
   * @param entries that some weeks or sessions lack
   */
  record Open(List<String> weeks, List<String> entries) {}

  /** What came of a rule. */
  sealed interface Outcome {
    /** It reported. */
    record Found(List<Reports.Report> reports, Open open) implements Outcome {}

    /** It had nothing to report. */
    record Clear() implements Outcome {}

    /** It could not be judged for want of these entries. */
    record NotJudged(List<String> missing) implements Outcome {}

    /** It is not for this plan. */
    record NotFor(String because) implements Outcome {}
  }

  /** Judges the rules whose settings are given; each gets one outcome. */
  Map<String, Outcome> judge() throws RunawayRule {
    List<String> judged = new ArrayList<>();
    for (String rule : settings.keySet()) {
      Card card = rules.card(rule);
      Outcome before = before(card);
      if (before == null) {
        judged.add(rule);
      } else {
        outcomes.put(rule, before);
      }
    }
    Reports reports = watchdog.run(doing -> fire(judged, doing));
    String endless = reports.endless();
    if (endless != null) {
      throw watchdog.bite(
          new RunawayRule(
              endless, "reported more than " + MOST_FIRINGS + " times", Auditor.Stop.RAN_AWAY));
    }
    judged.forEach(rule -> outcomes.put(rule, after(rules.card(rule), reports.of(rule))));
    return outcomes;
  }

  /**
   * A rule is evaluated once its settings are there, so they come one after the other: then it is
   * known which rule is at it.
   */
  private Reports fire(List<String> judged, Consumer<String> doing) {
    Reports reports = new Reports(MOST_FIRINGS);
    if (judged.isEmpty()) {
      return reports;
    }
    KieSession session = rules.knowledge().get().newKieSession();
    try {
      session.setGlobal("findings", reports);
      facts.all().forEach(session::insert);
      for (String rule : judged) {
        doing.accept(rule);
        session.insert(settings.get(rule));
        windows.getOrDefault(rule, List.of()).forEach(session::insert);
        session.fireAllRules(MOST_FIRINGS);
      }
      return reports;
    } finally {
      session.dispose();
    }
  }

  private @Nullable Outcome before(Card card) {
    String because = Applicability.notFor(card, facts, plan);
    if (because != null) {
      return new Outcome.NotFor(because);
    }
    Integer from = card.fromDay();
    if (card.judgesAbsence() && from != null && facts.race().daysToGo() > from) {
      return new Outcome.NotFor("what it looks for matters from D-" + from + " on");
    }
    List<Window> its = windowsOf(card);
    windows.put(card.rule(), its);
    for (Window window : its) {
      if (!window.evidenceOnly() && !window.changeable()) {
        return new Outcome.NotFor("its days, " + window.label() + ", are over");
      }
    }
    Set<String> missing = new LinkedHashSet<>();
    card.needs().forEach(need -> missing.addAll(missing(need, its)));
    return missing.isEmpty() ? null : new Outcome.NotJudged(List.copyOf(missing));
  }

  private List<Window> windowsOf(Card card) {
    return windows(facts, settings(card));
  }

  /** The windows of one rule's settings. */
  static List<Window> windows(Facts facts, Settings settings) {
    List<Window> made = new ArrayList<>();
    settings
        .values()
        .forEach(
            (name, value) -> {
              if (value.kind() == Settings.Kind.WINDOW) {
                made.add(facts.window(settings.rule(), name, value.number(), value.until()));
              }
            });
    return made;
  }

  private Settings settings(Card card) {
    return Objects.requireNonNull(settings.get(card.rule()));
  }

  /** The entries that would settle a need; none when one of its alternatives is known. */
  private List<String> missing(Card.Need need, List<Window> its) {
    List<String> entries = new ArrayList<>();
    for (String key : need.anyOf()) {
      List<String> unknown = key.startsWith(WINDOW) ? unknown(key, its) : unmet(Need.of(key));
      if (unknown.isEmpty()) {
        return List.of();
      }
      entries.addAll(unknown);
    }
    return List.of(String.join(" or ", entries));
  }

  private static List<String> unknown(String key, List<Window> its) {
    Set<String> unknown = new LinkedHashSet<>();
    its.forEach(window -> unknown.addAll(window.unknown(key.substring(WINDOW.length()))));
    return List.copyOf(unknown);
  }

  private List<String> unmet(Need need) {
    return facts.needs().met(need) ? List.of() : List.of(need.entry());
  }

  private Outcome after(Card card, List<Reports.Report> reports) {
    List<String> unwritten = List.copyOf(facts.openWeeks().notWritten(card.applies().phase()));
    List<String> partly = partly(card);
    if (!reports.isEmpty()) {
      List<String> doubts = card.judgesAbsence() ? doubts(card) : List.of();
      return doubts.isEmpty()
          ? new Outcome.Found(
              reports, new Open(card.applies().phase().isEmpty() ? List.of() : unwritten, partly))
          : new Outcome.NotJudged(doubts);
    }
    if (card.judgesAbsence() && !windows.getOrDefault(card.rule(), List.of()).isEmpty()) {
      return new Outcome.Clear();
    }
    Set<String> open = new LinkedHashSet<>(partly);
    windows.getOrDefault(card.rule(), List.of()).forEach(w -> open.addAll(w.notWritten()));
    if (!card.applies().phase().isEmpty()) {
      open.addAll(unwritten);
    }
    return open.isEmpty() ? new Outcome.Clear() : new Outcome.NotJudged(List.copyOf(open));
  }

  /** The entries of needs that some of the weeks or sessions to be judged leave open. */
  private List<String> partly(Card card) {
    List<String> entries = new ArrayList<>();
    for (Card.Need need : card.needs()) {
      String key = need.anyOf().get(0);
      if (need.anyOf().size() == 1
          && !key.startsWith(WINDOW)
          && !facts.needs().metEverywhere(Need.of(key))) {
        entries.add(Need.of(key).entry());
      }
    }
    return entries;
  }

  private List<String> doubts(Card card) {
    Set<String> fields = new LinkedHashSet<>();
    for (Card.Need need : card.needs()) {
      need.anyOf().stream()
          .filter(key -> key.startsWith(WINDOW))
          .forEach(key -> fields.add(key.substring(WINDOW.length())));
    }
    Set<String> doubts = new LinkedHashSet<>();
    windows.getOrDefault(card.rule(), List.of()).stream()
        .filter(window -> !window.evidenceOnly())
        .forEach(window -> doubts.addAll(window.doubts(fields)));
    return List.copyOf(doubts);
  }
}
