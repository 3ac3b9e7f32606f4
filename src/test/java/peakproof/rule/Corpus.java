package peakproof.rule;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import peakproof.document.Place;
import peakproof.document.Tree;
import peakproof.document.YamlTree;

/**
 * Sound plans, and what becomes of them: each entry of a corpus file is a case, written below the
 * names of the plans it is a change of.
 */
public final class Corpus {
  private static final Path FOLDER = Path.of("src/test/resources/peakproof/corpus");

  private final Map<String, CaseReader> readers = new TreeMap<>();
  private final Map<String, CaseBase> bases = new TreeMap<>();

  private Corpus() {}

  /**
   * A changed plan.
   *
   * @param named the rules it is about
   * @param item the entry as it is written
   */
  public record Entry(String base, Case tried, Set<String> named, Tree.Mapping item) {
    /** The plan and what was done to it. */
    public String name() {
      return base + ": " + tried.name();
    }
  }

  /** Reads the sound plans; the one all cases beside the rules are changes of is {@code full}. */
  public static Corpus read() {
    Corpus corpus = new Corpus();
    corpus.base("full", Path.of("rules/base"));
    for (String name : List.of("half", "standard", "masters")) {
      corpus.base(name, FOLDER.resolve(name));
    }
    return corpus;
  }

  private void base(String name, Path folder) {
    CaseBase base = CaseBase.read(folder);
    bases.put(name, base);
    readers.put(name, new CaseReader(base));
  }

  /** The sound plans as they are. */
  public List<Entry> sound() {
    Place place = new Place("corpus", 1, 1);
    Tree name = new Tree.Scalar(place, "as it is");
    Tree.Mapping item = mapping(place, Map.of("case", name));
    return bases.keySet().stream().map(base -> entry(base, "fine", item)).toList();
  }

  /** The plans with something wrong. */
  public List<Entry> faults() {
    return entries("faults.yaml", "wrong");
  }

  /** The plans that look odd. */
  public List<Entry> fine() {
    return entries("fine.yaml", "fine");
  }

  /** Two faults at once, of the same plan. */
  public List<Entry> pairs() {
    List<Entry> faults = faults();
    List<Entry> pairs = new ArrayList<>();
    file("pairs.yaml")
        .forEach(
            (base, list) -> {
              for (Tree pair : ((Tree.Sequence) list).items()) {
                List<String> names = texts(pair);
                Tree.Mapping one = named(faults, base, names.get(0)).item;
                Tree.Mapping other = named(faults, base, names.get(1)).item;
                pairs.add(entry(base, "wrong", both(one, other)));
              }
            });
    return pairs;
  }

  private static Entry named(List<Entry> faults, String base, String name) {
    return faults.stream()
        .filter(fault -> fault.base.equals(base) && fault.tried.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException(base + " has no fault " + name));
  }

  private static Tree.Mapping both(Tree.Mapping one, Tree.Mapping other) {
    Map<String, Tree> both = new LinkedHashMap<>();
    for (String key : List.of("change", "finds", "also")) {
      Map<String, Tree> merged = new LinkedHashMap<>(below(one, key));
      below(other, key).forEach(merged::put);
      if (key.equals("change")
          && merged.size() < below(one, key).size() + below(other, key).size()) {
        throw new IllegalStateException("both faults change the same entry: " + other.place());
      }
      both.put(key, mapping(one.place(), merged));
    }
    String name = text(one, "case") + " + " + text(other, "case");
    both.put("case", new Tree.Scalar(one.place(), name));
    return mapping(one.place(), both);
  }

  private List<Entry> entries(String file, String expectation) {
    List<Entry> entries = new ArrayList<>();
    file(file)
        .forEach(
            (names, list) -> {
              for (Tree item : ((Tree.Sequence) list).items()) {
                for (String base : names.split(" ")) {
                  entries.add(entry(base, expectation, (Tree.Mapping) item));
                }
              }
            });
    return entries;
  }

  private Entry entry(String base, String expectation, Tree.Mapping item) {
    CaseReader reader = readers.get(base);
    if (reader == null) {
      throw new IllegalStateException("no sound plan is called " + base);
    }
    Set<String> named = below(item, "finds").keySet();
    Map<String, Tree> file = new LinkedHashMap<>();
    for (String kind : List.of("wrong", "fine")) {
      List<Tree> items = kind.equals(expectation) ? List.of(item) : List.of();
      file.put(kind, new Tree.Sequence(item.place(), items));
    }
    String rule = named.isEmpty() ? "none" : named.iterator().next();
    CaseReader.Read read =
        reader.read(rule, new YamlTree.Parsed(mapping(item.place(), file), List.of()));
    if (!read.faults().isEmpty()) {
      throw new IllegalStateException(base + ": " + read.faults());
    }
    return new Entry(base, read.cases().get(0), named, item);
  }

  private static Map<String, Tree> file(String name) {
    Path path = FOLDER.resolve(name);
    YamlTree.Parsed parsed = YamlTree.read(RuleListing.slashes(path), RuleListing.bytes(path));
    if (parsed.tree() == null || !parsed.faults().isEmpty()) {
      throw new IllegalStateException("" + parsed.faults());
    }
    return plain((Tree.Mapping) parsed.tree());
  }

  private static Map<String, Tree> below(Tree tree, String key) {
    Tree.Entry entry = tree.entry(key);
    return entry == null ? Map.of() : plain((Tree.Mapping) entry.value());
  }

  private static Map<String, Tree> plain(Tree.Mapping mapping) {
    Map<String, Tree> plain = new LinkedHashMap<>();
    mapping.entries().forEach((key, entry) -> plain.put(key, entry.value()));
    return plain;
  }

  private static Tree.Mapping mapping(Place place, Map<String, Tree> values) {
    Map<String, Tree.Entry> entries = new LinkedHashMap<>();
    values.forEach((key, value) -> entries.put(key, new Tree.Entry(value.place(), value)));
    return new Tree.Mapping(place, entries);
  }

  private static List<String> texts(Tree list) {
    return ((Tree.Sequence) list)
        .items().stream().map(item -> ((Tree.Scalar) item).text()).toList();
  }

  private static @Nullable String text(Tree tree, String key) {
    Tree.Entry entry = tree.entry(key);
    return entry == null ? null : ((Tree.Scalar) entry.value()).text();
  }
}
