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
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.kie.api.KieBase;
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
  private final Map<String, RuleKey> keys = new TreeMap<>();
  private final Map<String, CompiledRule> found = new TreeMap<>();
  private final Map<Stem, byte[]> cardFiles = new LinkedHashMap<>();
  private final Supplier<FactTypes> facts = Once.of(FactTypes::shipped);
  private final KnownRules known;
  private final @Nullable CaseReader caseReader;
  private Map<String, Card.Setting> measures = Map.of();
  private WaterTable waterTable = new WaterTable(List.of());
  private Map<String, String> cautions = Map.of();

  private RuleFolder(KnownRules known, @Nullable CaseReader caseReader) {
    this.known = known;
    this.caseReader = caseReader;
  }

  /** Reads and compiles the rules of some folders afresh, with the cases beside them. */
  public static Ruleset load(List<Path> roots) {
    CaseBase base = CaseBase.read(roots.get(0).resolve(BASE));
    return new RuleFolder(KnownRules.none(), new CaseReader(base)).read(roots);
  }

  /**
   * Reads the rules of some folders to judge by: without their cases, and compiled only where they
   * are not known.
   *
   * @param roots the shipped folder first, which also holds {@code measures.yaml}, {@code
   *     water-temperature.yaml}, {@code presets.yaml}, {@code cautions.yaml} and the base document
   */
  public static Ruleset toJudge(List<Path> roots, KnownRules known) {
    return new RuleFolder(known, null).read(roots);
  }

  /**
   * Rules that are all known go to the engine before their cards are read, since it takes longest.
   */
  private Ruleset read(List<Path> roots) {
    roots.forEach(this::list);
    Supplier<KieBase> knowledge = sources.isEmpty() ? knowledge(known()) : null;
    measures = readMeasures(roots.get(0).resolve(MEASURES));
    waterTable = readWater(roots.get(0).resolve(WATER));
    cautions = readCautions(roots.get(0).resolve(CAUTIONS));
    cardFiles.forEach(this::readCard);
    return compile(roots.get(0).resolve(PRESETS), knowledge);
  }

  private VettedClasses known() {
    VettedClasses classes = new VettedClasses(Once.of(() -> AllowedMembers.of(facts.get())));
    found.forEach(classes::addKnown);
    return classes;
  }

  private static Supplier<KieBase> knowledge(VettedClasses classes) {
    return Later.of("engine", () -> Engine.load(classes));
  }

  private Ruleset compile(Path presetsFile, @Nullable Supplier<KieBase> knowledge) {
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
    VettedClasses classes = compiled.classes();
    compiled.rules().forEach((slug, result) -> use(slug, result, classes, sound));
    found.forEach((slug, rule) -> use(slug, rule, classes, sound));
    Map<String, String> former = former(sound);
    PresetReader.Read presets =
        PresetReader.read(
            tree(presetsFile, RuleListing.bytes(presetsFile)), sound, origin.keySet());
    faults.addAll(presets.faults());
    return new Ruleset(
        sound,
        former,
        knowledge == null ? knowledge(classes) : knowledge,
        origin,
        new MeasureSettings(measures),
        waterTable,
        presets.presets(),
        cautions,
        cases,
        sound.values().stream()
            .filter(card -> isOfHealth(card, classes.of(card.rule())))
            .map(Card::rule)
            .collect(Collectors.toUnmodifiableSet()),
        faults.stream().sorted().distinct().toList());
  }

  private boolean isOfHealth(Card card, CompiledRule rule) {
    Boolean said = rule.ofHealth();
    if (said != null) {
      return said;
    }
    RuleKey key = Objects.requireNonNull(keys.get(card.rule()));
    return HealthRules.isOne(card, new String(key.logic(), StandardCharsets.UTF_8));
  }

  /** A rule whose card does not fit it judges nobody: its words could not be filled in. */
  private void use(
      String slug, RuleTyping.Result result, VettedClasses classes, Map<String, Card> sound) {
    CardReader.Read read = Objects.requireNonNull(cards.get(slug));
    Card draft = Objects.requireNonNull(read.draft());
    List<Fault> unfit = CardUse.faults(draft, result, facts.get(), read.places());
    faults.addAll(unfit);
    if (unfit.isEmpty() && read.card() != null) {
      sound.put(slug, read.card());
      known.keep(Objects.requireNonNull(keys.get(slug)), classes.of(slug));
    } else {
      classes.leaveOut(slug);
    }
  }

  /** A rule known from before was sound with the same card. */
  private void use(String slug, CompiledRule rule, VettedClasses classes, Map<String, Card> sound) {
    CardReader.Read read = cards.get(slug);
    if (read != null && read.card() != null) {
      sound.put(slug, read.card());
      classes.addKnown(slug, rule);
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

  private void list(Path root) {
    if (!Files.isDirectory(root)) {
      fault(root, "there is no such folder", "a folder of rules", "check --rules");
      return;
    }
    RuleListing.of(root, faults).forEach(this::readFiles);
  }

  private void readFiles(Stem stem) {
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
    byte[] card = stem.endings().contains(CARD) ? bytes(stem.file(CARD)) : null;
    if (card != null) {
      cardFiles.put(stem, card);
    }
    byte[] logic = stem.endings().contains(LOGIC) ? bytes(stem.file(LOGIC)) : null;
    if (logic != null) {
      readLogic(stem, card, logic);
    }
    byte[] examples =
        caseReader != null && stem.endings().contains(CASES) ? bytes(stem.file(CASES)) : null;
    if (caseReader != null && examples != null) {
      CaseReader.Read read = caseReader.read(slug, tree(stem.file(CASES), examples));
      faults.addAll(read.faults());
      cases.put(slug, read.cases());
    }
  }

  private void readLogic(Stem stem, byte @Nullable [] card, byte[] logic) {
    String slug = stem.slug();
    if (card != null) {
      RuleKey key = new RuleKey(stem.theme(), slug, card, logic);
      keys.put(slug, key);
      CompiledRule before = known.find(key);
      if (before != null) {
        found.put(slug, before);
        return;
      }
    }
    String written = new String(logic, StandardCharsets.UTF_8);
    RuleText text = new RuleText(RuleListing.slashes(stem.file(LOGIC)), written);
    sources.add(new RuleCompiler.Source(slug, stem.theme(), text));
  }

  private void readCard(Stem stem, byte[] card) {
    YamlTree.Parsed parsed = tree(stem.file(CARD), card);
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

  private YamlTree.Parsed tree(Path file, byte[] bytes) {
    return known.tree(RuleListing.slashes(file), bytes);
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
    WaterTable.Read read = WaterTable.read(tree(file, RuleListing.bytes(file)));
    faults.addAll(read.faults());
    return read.table() == null ? waterTable : read.table();
  }

  private void fault(Path file, String what, String expected, String instead) {
    faults.add(new Fault(RuleListing.place(file), what, expected, instead));
  }
}
