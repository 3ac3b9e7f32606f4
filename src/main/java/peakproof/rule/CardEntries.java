package peakproof.rule;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import peakproof.document.Fault;
import peakproof.document.Nearest;
import peakproof.document.Place;
import peakproof.document.Tree;

/** Reads the keys of one mapping and collects what is wrong with it. */
final class CardEntries {
  private final Tree.Mapping mapping;
  private final List<Fault> faults;

  CardEntries(Tree.Mapping mapping, List<Fault> faults) {
    this.mapping = mapping;
    this.faults = faults;
  }

  /** Checks that the keys are the ones there are, and that none of these is missing. */
  CardEntries keys(Set<String> known, Set<String> required) {
    mapping
        .entries()
        .forEach(
            (key, entry) -> {
              if (!known.contains(key)) {
                fault(
                    entry.key(),
                    "'" + key + "' is not a key here",
                    "one of: " + String.join(", ", new TreeSet<>(known)),
                    Nearest.advice(key, known, "take it out"));
              }
            });
    for (String key : new TreeSet<>(required)) {
      if (!mapping.entries().containsKey(key)) {
        fault(
            mapping.place(),
            "'" + key + "' is missing",
            "it is never left out",
            "add '" + key + ":'");
      }
    }
    return this;
  }

  void fault(Place place, String what, String expected, String instead) {
    faults.add(new Fault(place, what, expected, instead));
  }

  Place place(String key) {
    Tree.Entry entry = mapping.entries().get(key);
    return entry == null ? mapping.place() : entry.value().place();
  }

  @Nullable Tree tree(String key) {
    Tree.Entry entry = mapping.entries().get(key);
    return entry == null ? null : entry.value();
  }

  /** The text of a key; null when it is absent or no text, which is then a fault. */
  @Nullable String text(String key) {
    Tree tree = tree(key);
    if (tree == null) {
      return null;
    }
    if (tree instanceof Tree.Scalar scalar) {
      return scalar.style() == Tree.Style.FAULTY ? null : scalar.text();
    }
    fault(tree.place(), "'" + key + "' is no text", "one line of text", key + ": …");
    return null;
  }

  /** The same; its absence is a fault too. */
  @Nullable String demand(String key) {
    keys(mapping.entries().keySet(), Set.of(key));
    return text(key);
  }

  /** The keys, in the order of the file. */
  List<String> names() {
    return List.copyOf(mapping.entries().keySet());
  }

  /** A word of a closed list, or null with a fault. */
  <T> @Nullable T word(String key, Map<String, T> words) {
    String text = text(key);
    if (text == null) {
      return null;
    }
    T found = words.get(text);
    if (found == null) {
      unknown(place(key), text, words.keySet());
    }
    return found;
  }

  /** The words of a list, each of a closed list; a single word counts as a list of one. */
  <T> List<T> words(String key, Map<String, T> words) {
    List<T> found = new ArrayList<>();
    for (Tree.Scalar scalar : scalars(tree(key))) {
      T word = words.get(scalar.text());
      if (word == null) {
        unknown(scalar.place(), scalar.text(), words.keySet());
      } else {
        found.add(word);
      }
    }
    return found;
  }

  /** The texts of a list; a single text counts as a list of one. */
  List<String> texts(String key) {
    return scalars(tree(key)).stream().map(Tree.Scalar::text).toList();
  }

  private List<Tree.Scalar> scalars(@Nullable Tree tree) {
    if (tree instanceof Tree.Scalar scalar) {
      return scalar.style() == Tree.Style.FAULTY ? List.of() : List.of(scalar);
    }
    List<Tree.Scalar> found = new ArrayList<>();
    for (Tree item : items(tree)) {
      if (item instanceof Tree.Scalar scalar) {
        found.add(scalar);
      } else {
        fault(item.place(), "this is no text", "a list of texts", "write one text an item");
      }
    }
    return found;
  }

  /** The items of a list; a fault when it is none. */
  List<Tree> items(@Nullable Tree tree) {
    if (tree == null) {
      return List.of();
    }
    if (tree instanceof Tree.Sequence sequence) {
      return sequence.items();
    }
    fault(tree.place(), "this is no list", "a list in [ ]", "[]");
    return List.of();
  }

  /** The mappings below a key, by name; a fault when it is no mapping. */
  Map<String, Tree> map(String key) {
    Tree tree = tree(key);
    Map<String, Tree> found = new LinkedHashMap<>();
    if (tree instanceof Tree.Mapping below) {
      below.entries().forEach((name, entry) -> found.put(name, entry.value()));
    } else if (tree != null) {
      fault(tree.place(), "'" + key + "' is no list of keys", "keys with values", key + ": {}");
    }
    return found;
  }

  /** Reads a mapping below this one, or null with a fault. */
  @Nullable CardEntries below(Tree tree) {
    if (tree instanceof Tree.Mapping below) {
      return new CardEntries(below, faults);
    }
    fault(tree.place(), "this is no list of keys", "keys with values", "{key: value}");
    return null;
  }

  private void unknown(Place place, String word, Collection<String> known) {
    fault(
        place,
        "'" + word + "' is not known here",
        "one of: " + String.join(", ", new TreeSet<>(known)),
        Nearest.advice(word, known, "take one of these"));
  }
}
