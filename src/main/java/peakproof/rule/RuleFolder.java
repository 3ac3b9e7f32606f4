package peakproof.rule;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import peakproof.document.Fault;
import peakproof.document.Place;
import peakproof.document.Tree;
import peakproof.document.YamlTree;
import peakproof.measure.Constant;

/** Reads folders of rules: three neighbours with one stem for each rule, in folders by theme. */
public final class RuleFolder {
  private static final String CASES = ".cases.yaml";
  private static final String CARD = ".yaml";
  private static final String LOGIC = ".drl";
  private static final String BASE = "base";
  private static final String MEASURES = "measures.yaml";

  private final List<Fault> faults = new ArrayList<>();
  private final Map<String, Card> cards = new TreeMap<>();
  private final Map<String, Path> origin = new TreeMap<>();
  private final Map<String, List<Case>> cases = new TreeMap<>();
  private final List<RuleCompiler.Source> sources = new ArrayList<>();
  private final FactTypes facts = FactTypes.shipped();
  private Map<String, Card.Setting> measures = Map.of();

  private RuleFolder() {}

  /**
   * Reads and compiles the rules of some folders.
   *
   * @param roots the shipped folder first, which also holds {@code measures.yaml} and the base
   *     document
   */
  public static Ruleset load(List<Path> roots) {
    RuleFolder folder = new RuleFolder();
    folder.measures = folder.readMeasures(roots.get(0).resolve(MEASURES));
    CaseReader reader = new CaseReader(CaseBase.read(roots.get(0).resolve(BASE)));
    roots.forEach(root -> folder.read(root, reader));
    return folder.compile();
  }

  private Ruleset compile() {
    RuleCompiler.Compiled compiled = RuleCompiler.compile(sources, cards, facts);
    faults.addAll(compiled.faults());
    Map<String, Card> sound = new TreeMap<>();
    compiled
        .rules()
        .forEach(
            (slug, result) -> {
              Card card = cards.get(slug);
              if (card != null) {
                sound.put(slug, card);
                faults.addAll(
                    CardUse.faults(card, result, facts, new Place(name(slug, CARD), 1, 1)));
              }
            });
    Map<String, String> former = new TreeMap<>();
    sound.values().forEach(card -> card.was().forEach(name -> former.put(name, card.rule())));
    return new Ruleset(
        sound,
        former,
        compiled.knowledge(),
        origin,
        measures,
        cases,
        faults.stream().sorted().toList());
  }

  private String name(String slug, String ending) {
    Path stem = origin.get(slug);
    return stem == null ? slug + ending : slashes(stem) + ending;
  }

  private static String slashes(Path path) {
    return path.toString().replace('\\', '/');
  }

  private void read(Path root, CaseReader reader) {
    if (!Files.isDirectory(root)) {
      fault(root, "there is no such folder", "a folder of rules", "check --rules");
      return;
    }
    for (Path theme : list(root)) {
      if (Files.isDirectory(theme) && !theme.getFileName().toString().equals(BASE)) {
        readTheme(theme, reader);
      }
    }
  }

  private void readTheme(Path theme, CaseReader reader) {
    Map<String, Set<String>> stems = new TreeMap<>();
    for (Path file : list(theme)) {
      String name = file.getFileName().toString();
      Stream.of(CASES, CARD, LOGIC)
          .filter(name::endsWith)
          .findFirst()
          .ifPresent(
              ending ->
                  stems
                      .computeIfAbsent(
                          name.substring(0, name.length() - ending.length()), s -> new HashSet<>())
                      .add(ending));
    }
    stems.forEach((slug, endings) -> readRule(theme, slug, endings, reader));
  }

  private void readRule(Path theme, String slug, Set<String> endings, CaseReader reader) {
    Path stem = theme.resolve(slug);
    if (origin.containsKey(slug)) {
      fault(
          Path.of(stem + CARD),
          "there is a rule '" + slug + "' already",
          "a name of its own; the other is " + slashes(origin.get(slug)),
          "rename one of them");
      return;
    }
    origin.put(slug, stem);
    for (String ending : Arrays.asList(LOGIC, CARD, CASES)) {
      if (!endings.contains(ending)) {
        fault(
            Path.of(stem + ending),
            "the rule '" + slug + "' has no " + ending + " file",
            "three files beside each other: " + LOGIC + ", " + CARD + ", " + CASES,
            "write " + slug + ending);
      }
    }
    String folder = theme.getFileName().toString();
    if (endings.contains(CARD)) {
      readCard(Path.of(stem + CARD), slug, folder);
    }
    if (endings.contains(LOGIC)) {
      Path file = Path.of(stem + LOGIC);
      String text = new String(bytes(file), StandardCharsets.UTF_8);
      sources.add(new RuleCompiler.Source(slug, folder, new RuleText(slashes(file), text)));
    }
    if (endings.contains(CASES)) {
      CaseReader.Read read = reader.read(slug, tree(Path.of(stem + CASES)));
      faults.addAll(read.faults());
      cases.put(slug, read.cases());
    }
  }

  private void readCard(Path file, String slug, String theme) {
    YamlTree.Parsed parsed = YamlTree.read(slashes(file), bytes(file));
    faults.addAll(parsed.faults());
    if (parsed.tree() == null || !parsed.faults().isEmpty()) {
      return;
    }
    CardReader.Read read = CardReader.read(slug, theme, parsed.tree());
    faults.addAll(read.faults());
    if (read.card() != null) {
      cards.put(slug, read.card());
    }
  }

  private YamlTree.Parsed tree(Path file) {
    return YamlTree.read(slashes(file), bytes(file));
  }

  private Map<String, Card.Setting> readMeasures(Path file) {
    YamlTree.Parsed parsed = tree(file);
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
              Card.Setting setting = CardReader.setting(name, entries.below(entry.value()));
              if (setting != null) {
                read.put(name, setting);
              }
            });
    return read;
  }

  private static List<Path> list(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files.sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static byte[] bytes(Path file) {
    try {
      return Files.readAllBytes(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void fault(Path file, String what, String expected, String instead) {
    faults.add(new Fault(new Place(slashes(file), 1, 1), what, expected, instead));
  }
}
