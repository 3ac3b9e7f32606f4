package peakproof.rule;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import peakproof.document.Place;
import peakproof.document.YamlTree;

/** A sound rule's own files, read again to explain what it does and where its words stand. */
public final class RuleSource {
  private final String rule;
  private final Path stem;
  private final RuleText text;
  private final Map<String, Place> places;

  private RuleSource(String rule, Path stem, RuleText text, Map<String, Place> places) {
    this.rule = rule;
    this.stem = stem;
    this.text = text;
    this.places = places;
  }

  /** Reads the files of a rule that can run. */
  public static RuleSource of(Ruleset rules, String rule) {
    Path stem = Objects.requireNonNull(rules.origin().get(rule), rule);
    Path logic = Path.of(stem + RuleListing.LOGIC);
    RuleText text =
        new RuleText(
            RuleListing.slashes(logic),
            new String(RuleListing.bytes(logic), StandardCharsets.UTF_8));
    Path card = Path.of(stem + RuleListing.CARD);
    YamlTree.Parsed parsed = YamlTree.read(RuleListing.slashes(card), RuleListing.bytes(card));
    CardReader.Read read =
        CardReader.read(rule, rules.card(rule).theme(), Objects.requireNonNull(parsed.tree()));
    return new RuleSource(rule, stem, text, read.places());
  }

  String rule() {
    return rule;
  }

  /** What it catches: the first line of its file, without the comment marks. */
  public String catches() {
    return comment(0);
  }

  /** When it stays silent: the second line. */
  public String silent() {
    return comment(1);
  }

  private String comment(int line) {
    List<String> lines = text.text().lines().toList();
    return lines.get(line).substring("//".length()).strip();
  }

  /** A file of the rule, named as in faults. */
  public String file(String ending) {
    return RuleListing.slashes(Path.of(stem + ending));
  }

  /** Where a key of the card stands; the card's beginning for a key it has not. */
  Place place(String key) {
    return places.getOrDefault(key, new Place(file(RuleListing.CARD), 1, 1));
  }

  /** What the engine's parser makes of the rule. */
  RuleShape.Rule logic() {
    try {
      return Engine.parse(text.text()).shape().rules().get(0);
    } catch (Engine.Unreadable e) {
      throw new IllegalStateException("the rule was checked: " + rule, e);
    }
  }
}
