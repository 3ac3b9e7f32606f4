package peakproof.rule;

import static peakproof.rule.RuleListing.CARD;
import static peakproof.rule.RuleListing.CASES;
import static peakproof.rule.RuleListing.LOGIC;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import peakproof.document.Fault;
import peakproof.document.Place;
import peakproof.document.Tree;
import peakproof.document.WaterTable;
import peakproof.document.YamlTree;
import peakproof.measure.Constant;
import peakproof.rule.RuleListing.Stem;

/** Reads folders of rules: three neighbours with one stem for each rule, in folders by theme. */
public final class RuleFolder {
  private static final String BASE = "base";
  private static final String MEASURES = "measures.yaml";
  private static final String WATER = "water-temperature.yaml";
  private static final String PRESETS = "presets.yaml";
  private static final String CAUTIONS = "cautions.yaml";

  private final List<Fault> faults = new ArrayList<>();
  private final Map<String, CardReader.Read> cards = new TreeMap<>();
  private final Map<String, Path> origin = new TreeMap<>();
  private final Map<String, List<Case>> cases = new TreeMap<>();
  private final List<RuleCompiler.Source> sources = new ArrayList<>();
  private final FactTypes facts = FactTypes.shipped();
  private Map<String, Card.Setting> measures = Map.of();
  private WaterTable waterTable = new WaterTable(List.of());
  private Map<String, String> cautions = Map.of();

  private RuleFolder() {}

  /**
   * Reads and compiles the rules of some folders.
   *
   * @param roots the shipped folder first, which also holds {@code measures.yaml}, {@code
   *     water-temperature.yaml}, {@code presets.yaml}, {@code cautions.yaml} and the base document
   */
  public static Ruleset load(List<Path> roots) {
    RuleFolder folder = new RuleFolder();
    folder.measures = folder.readMeasures(roots.get(0).resolve(MEASURES));
    folder.waterTable = folder.readWater(roots.get(0).resolve(WATER));
    folder.cautions = folder.readCautions(roots.get(0).resolve(CAUTIONS));
    CaseReader reader = new CaseReader(CaseBase.read(roots.get(0).resolve(BASE)));
    roots.forEach(root -> folder.read(root, reader));
    return folder.compile(roots.get(0).resolve(PRESETS));
  }

  private Ruleset compile(Path presetsFile) {
    Map<String, Card> drafts = new TreeMap<>();
    cards.forEach(
        (slug, read) -> {
          if (read.draft() != null) {
            drafts.put(slug, read.draft());
          }
        });
    RuleCompiler.Compiled compiled = RuleCompiler.compile(sources, drafts, facts);
    faults.addAll(compiled.faults());
    Map<String, Card> sound = new TreeMap<>();
    compiled.rules().forEach((slug, result) -> use(slug, result, sound));
    Map<String, String> former = former(sound);
    PresetReader.Read presets =
        PresetReader.read(
            tree(presetsFile, RuleListing.bytes(presetsFile)), sound, origin.keySet());
    faults.addAll(presets.faults());
    return new Ruleset(
        sound,
        former,
        compiled.knowledge(),
        origin,
        measures,
        waterTable,
        presets.presets(),
        cautions,
        cases,
        faults.stream().sorted().distinct().toList());
  }

  /** A rule whose card does not fit it judges nobody: its words could not be filled in. */
  private void use(String slug, RuleTyping.Result result, Map<String, Card> sound) {
    CardReader.Read read = Objects.requireNonNull(cards.get(slug));
    Card draft = Objects.requireNonNull(read.draft());
    List<Fault> unfit = CardUse.faults(draft, result, facts, read.places());
    faults.addAll(unfit);
    if (unfit.isEmpty() && read.card() != null) {
      sound.put(slug, read.card());
    }
  }

  /** Former names keep working, so each must lead to one rule. */
  private Map<String, String> former(Map<String, Card> sound) {
    Map<String, String> former = new TreeMap<>();
    for (Card card : sound.values()) {
      for (String name : card.was()) {
        String other = origin.containsKey(name) ? name : former.putIfAbsent(name, card.rule());
        if (other != null) {
          Map<String, Place> places = Objects.requireNonNull(cards.get(card.rule())).places();
          faults.add(
              new Fault(
                  Objects.requireNonNull(places.get("was")),
                  "'" + name + "' is a name of " + other + " already",
                  "a former name of this rule alone",
                  "take it out of one of the two"));
        }
      }
    }
    return former;
  }

  private void read(Path root, CaseReader reader) {
    if (!Files.isDirectory(root)) {
      fault(root, "there is no such folder", "a folder of rules", "check --rules");
      return;
    }
    RuleListing.of(root, faults).forEach(stem -> readRule(stem, reader));
  }

  private void readRule(Stem stem, CaseReader reader) {
    String slug = stem.slug();
    Path other = origin.putIfAbsent(slug, stem.path());
    if (other != null) {
      fault(
          stem.file(CARD),
          "there is a rule '" + slug + "' already",
          "a name of its own; the other is " + RuleListing.slashes(other),
          "rename one of them");
      return;
    }
    for (String ending : List.of(LOGIC, CARD, CASES)) {
      if (!stem.endings().contains(ending)) {
        fault(
            stem.file(ending),
            "the rule '" + slug + "' has no " + ending + " file",
            "three files beside each other: " + LOGIC + ", " + CARD + ", " + CASES,
            "write " + slug + ending);
      }
    }
    if (stem.endings().contains(CARD)) {
      readCard(stem);
    }
    byte[] logic = stem.endings().contains(LOGIC) ? bytes(stem.file(LOGIC)) : null;
    if (logic != null) {
      RuleText text =
          new RuleText(
              RuleListing.slashes(stem.file(LOGIC)), new String(logic, StandardCharsets.UTF_8));
      sources.add(new RuleCompiler.Source(slug, stem.theme(), text));
    }
    byte[] examples = stem.endings().contains(CASES) ? bytes(stem.file(CASES)) : null;
    if (examples != null) {
      CaseReader.Read read = reader.read(slug, tree(stem.file(CASES), examples));
      faults.addAll(read.faults());
      cases.put(slug, read.cases());
    }
  }

  private void readCard(Stem stem) {
    byte[] bytes = bytes(stem.file(CARD));
    if (bytes == null) {
      return;
    }
    YamlTree.Parsed parsed = tree(stem.file(CARD), bytes);
    faults.addAll(parsed.faults());
    if (parsed.tree() == null || !parsed.faults().isEmpty()) {
      return;
    }
    CardReader.Read read = CardReader.read(stem.slug(), stem.theme(), parsed.tree());
    faults.addAll(read.faults());
    cards.put(stem.slug(), read);
  }

  private byte @Nullable [] bytes(Path file) {
    return RuleListing.bytes(file, faults);
  }

  private static YamlTree.Parsed tree(Path file, byte[] bytes) {
    return YamlTree.read(RuleListing.slashes(file), bytes);
  }

  private Map<String, Card.Setting> readMeasures(Path file) {
    YamlTree.Parsed parsed = tree(file, RuleListing.bytes(file));
    faults.addAll(parsed.faults());
    Map<String, Card.Setting> read = new LinkedHashMap<>();
    if (!(parsed.tree() instanceof Tree.Mapping mapping)) {
      throw new IllegalStateException("the shipped " + MEASURES + " cannot be read");
    }
    CardEntries entries = new CardEntries(mapping, faults);
    Set<String> names =
        Arrays.stream(Constant.values()).map(Constant::word).collect(Collectors.toSet());
    entries.keys(names, names);
    mapping
        .entries()
        .forEach(
            (name, entry) -> {
              Card.Setting setting = CardSettings.one(name, entries.below(entry.value()));
              if (setting != null) {
                read.put(name, setting);
              }
            });
    return read;
  }

  private Map<String, String> readCautions(Path file) {
    YamlTree.Parsed parsed = tree(file, RuleListing.bytes(file));
    faults.addAll(parsed.faults());
    Map<String, String> read = new TreeMap<>();
    if (parsed.tree() instanceof Tree.Mapping mapping) {
      mapping
          .entries()
          .forEach(
              (condition, entry) -> {
                if (entry.value() instanceof Tree.Scalar text) {
                  read.put(condition, text.text().strip());
                }
              });
    }
    return read;
  }

  /** A table with a fault answers no question. */
  private WaterTable readWater(Path file) {
    WaterTable.Read read = WaterTable.read(RuleListing.slashes(file), RuleListing.bytes(file));
    faults.addAll(read.faults());
    return read.table() == null ? waterTable : read.table();
  }

  private void fault(Path file, String what, String expected, String instead) {
    faults.add(new Fault(RuleListing.place(file), what, expected, instead));
  }
}
