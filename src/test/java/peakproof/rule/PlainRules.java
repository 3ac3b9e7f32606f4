package peakproof.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import peakproof.fact.Settings;

/** Rules of which only the conditions and the report matter, with cards that say nothing. */
final class PlainRules {
  private final Map<String, Settings.Value> settings;
  private final List<RuleCompiler.Source> sources = new ArrayList<>();
  private final Map<String, Card> cards = new TreeMap<>();

  /**
   * @param settings what each card has
   */
  PlainRules(Map<String, Settings.Value> settings) {
    this.settings = settings;
  }

  /** Adds a rule; {@code RULE} in its conditions stands for its name. */
  void add(String slug, String conditions, String report) {
    String text =
        """
        // What it catches.
        // When it is silent.
        package peakproof.rules.swim
        import peakproof.fact.*
        rule "RULE"
        when
            $set : Settings( rule == "RULE" )
            CONDITIONS
        then
            findings.report(REPORT);
        end
        """
            .replace("CONDITIONS", conditions)
            .replace("REPORT", report)
            .replace("RULE", slug);
    sources.add(new RuleCompiler.Source(slug, "swim", new RuleText(slug + ".drl", text)));
    cards.put(slug, card(slug));
  }

  List<RuleCompiler.Source> sources() {
    return sources;
  }

  RuleCompiler.Compiled compile(FactTypes facts) {
    return RuleCompiler.compile(sources, cards, () -> facts);
  }

  private Card card(String slug) {
    Map<String, Card.Setting> its = new TreeMap<>();
    settings.forEach(
        (name, value) -> its.put(name, new Card.Setting(name, value, "", "", value, value, name)));
    return new Card(
        slug,
        "swim",
        slug,
        Severity.NOTE,
        List.of(),
        null,
        Grade.COMMON_PRACTICE,
        List.of(),
        Card.Applies.ALL,
        List.of(),
        false,
        null,
        true,
        its,
        new Template(""),
        new Template(""),
        null,
        null,
        List.of());
  }
}
