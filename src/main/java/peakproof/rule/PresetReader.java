package peakproof.rule;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import peakproof.document.Fault;
import peakproof.document.Place;
import peakproof.document.Tree;
import peakproof.document.YamlTree;
import peakproof.fact.Settings;
import peakproof.rule.Presets.Difference;

/** Reads what the presets change, and holds it against the cards as a house's settings are. */
final class PresetReader {
  private static final String BECAUSE = "because";

  private final Map<String, Card> cards;
  private final Set<String> known;
  private final List<Fault> faults = new ArrayList<>();
  private final Map<Preset, Map<String, Map<String, Difference>>> presets =
      new EnumMap<>(Preset.class);

  private PresetReader(Map<String, Card> cards, Set<String> known) {
    this.cards = cards;
    this.known = known;
  }

  /** What was read, and what is wrong with it. */
  record Read(Presets presets, List<Fault> faults) {}

  /**
   * Reads them.
   *
   * @param cards of the rules that can run
   * @param known slugs of all rules there are; one that is broken is told elsewhere
   */
  static Read read(YamlTree.Parsed parsed, Map<String, Card> cards, Set<String> known) {
    PresetReader reader = new PresetReader(cards, known);
    reader.faults.addAll(parsed.faults());
    if (parsed.tree() instanceof Tree.Mapping mapping) {
      reader.read(mapping);
    }
    return new Read(new Presets(reader.presets), reader.faults);
  }

  private void read(Tree.Mapping mapping) {
    Map<String, Preset> words =
        Stream.of(Preset.values())
            .filter(preset -> preset != Preset.DEFAULT)
            .collect(Collectors.toMap(Preset::word, preset -> preset));
    CardEntries entries = new CardEntries(mapping, faults).keys(words.keySet(), Set.of());
    words.forEach(
        (word, preset) -> {
          Map<String, Map<String, Difference>> its = new TreeMap<>();
          entries
              .map(word)
              .forEach(
                  (rule, tree) -> {
                    CardEntries below = entries.below(tree);
                    if (below != null) {
                      its.put(rule, rule(rule, tree.place(), below));
                    }
                  });
          presets.put(preset, its);
        });
  }

  private Map<String, Difference> rule(String rule, Place place, CardEntries entries) {
    Map<String, Difference> its = new LinkedHashMap<>();
    Card card = cards.get(rule);
    String because = entries.demand(BECAUSE);
    if (card == null) {
      if (!known.contains(rule)) {
        entries.fault(
            place,
            "there is no rule '" + rule + "'",
            "the name of a rule",
            Spelling.instead(rule, known));
      }
      return its;
    }
    for (String name : entries.names()) {
      String text = name.equals(BECAUSE) ? null : entries.text(name);
      if (text != null && because != null) {
        Settings.Value value = value(card, name, text, entries);
        if (value != null) {
          its.put(name, new Difference(value, text, because, entries.place(name)));
        }
      }
    }
    return its;
  }

  private static Settings.@Nullable Value value(
      Card card, String name, String text, CardEntries entries) {
    SettingCheck checked = SettingCheck.of(card.settings(), name, text, card.rule());
    if (checked.trouble() != null) {
      entries.fault(
          entries.place(name),
          checked.trouble().what(),
          checked.trouble().expected(),
          checked.trouble().instead());
    }
    return checked.value();
  }
}
