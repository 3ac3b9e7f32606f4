package peakproof.rule;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.lang.reflect.Method;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import peakproof.document.Tree;
import peakproof.document.YamlTree;
import peakproof.fact.Fact;
import peakproof.fact.Grouped;
import peakproof.fact.Session;
import peakproof.fact.Where;

/** What each fact and field means, in the words of {@code facts.yaml}. */
public final class FactWords {
  private static final String FILE = "facts.yaml";

  private final Map<String, Described> facts;

  private FactWords(Map<String, Described> facts) {
    this.facts = facts;
  }

  /**
   * A fact in words.
   *
   * @param one what one of them is called, {@code ride}
   * @param many what several are called, {@code rides}
   * @param fields what each field means, by its name in rules
   */
  public record Described(String one, String many, String meaning, Map<String, String> fields) {}

  /** The descriptions of this program's facts. */
  public static FactWords shipped() {
    try (InputStream in = Objects.requireNonNull(FactWords.class.getResourceAsStream(FILE), FILE)) {
      YamlTree.Parsed parsed = YamlTree.read(FILE, in.readAllBytes());
      if (!(parsed.tree() instanceof Tree.Mapping types) || !parsed.faults().isEmpty()) {
        throw new IllegalStateException("cannot be read: " + parsed.faults());
      }
      Map<String, Described> facts = new TreeMap<>();
      types.entries().forEach((type, entry) -> facts.put(type, described(entry.value())));
      return new FactWords(facts);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Described described(Tree tree) {
    Map<String, String> fields = new LinkedHashMap<>();
    Tree.Entry listed = tree.entry("fields");
    if (listed != null && listed.value() instanceof Tree.Mapping mapping) {
      mapping.entries().forEach((name, entry) -> fields.put(name, text(entry)));
    }
    return new Described(
        text(tree.entry("one")), text(tree.entry("many")), text(tree.entry("meaning")), fields);
  }

  private static String text(Tree.@Nullable Entry entry) {
    if (entry == null || !(entry.value() instanceof Tree.Scalar scalar)) {
      throw new IllegalStateException(FILE + " lacks a text" + (entry == null ? "" : " in it"));
    }
    return scalar.text().strip();
  }

  /** The fields of a fact that a rule has a use for: not those that only tell where it stands. */
  public static Set<String> useful(FactType fact) {
    Set<String> useful = new TreeSet<>();
    fact.fields()
        .forEach(
            (name, field) -> {
              boolean place = field.type() == Where.class || name.equals("pointer");
              if (!place
                  && field.kind() != FieldType.Kind.OPAQUE
                  && !isOf(Fact.class, name)
                  && !isOf(Grouped.class, name)
                  && !isInherited(fact.type(), name)) {
                useful.add(name);
              }
            });
    return useful;
  }

  private static boolean isOf(Class<?> type, String name) {
    for (Method method : type.getMethods()) {
      if (method.getName().equals(name)) {
        return true;
      }
    }
    return false;
  }

  /** A swim has what every session has; it is told there. */
  private static boolean isInherited(Class<?> type, String name) {
    try {
      Class<?> parent = type.getMethod(name).getDeclaringClass();
      return parent != type && Fact.class.isAssignableFrom(parent);
    } catch (NoSuchMethodException e) {
      throw new IllegalStateException(e);
    }
  }

  /** A field's or fact's name as words: {@code openWaterSwims} is {@code open water swims}. */
  public static String plain(String name) {
    return name.replaceAll("([a-z0-9])(?=[A-Z])|([A-Z])(?=[A-Z][a-z])", "$1$2 ")
        .toLowerCase(Locale.ROOT);
  }

  /** What a field of a fact means; null for one that is told nowhere. */
  public @Nullable String meaning(String type, String field) {
    String own = of(type).fields().get(field);
    return own == null ? of(Session.class.getSimpleName()).fields().get(field) : own;
  }

  /** All facts by their names in rules. */
  public Map<String, Described> all() {
    return facts;
  }

  /** What one fact of a type is called. */
  public String one(String type) {
    return of(type).one();
  }

  /** What several facts of a type are called. */
  public String many(String type) {
    return of(type).many();
  }

  private Described of(String type) {
    return Objects.requireNonNull(facts.get(type), type);
  }
}
