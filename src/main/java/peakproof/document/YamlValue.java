package peakproof.document;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What a document says without where it says it; equal when the same would be read. */
public sealed interface YamlValue {
  /** A piece of text. */
  record Text(String text) implements YamlValue {}

  /** A list. */
  record Items(List<YamlValue> items) implements YamlValue {
    /** The list with one more, so many items from its beginning. */
    public Items with(int index, YamlValue item) {
      List<YamlValue> more = new ArrayList<>(items);
      more.add(index, item);
      return new Items(Collections.unmodifiableList(more));
    }

    /** The list with another item in the place of one. */
    public Items replacing(int index, YamlValue item) {
      List<YamlValue> other = new ArrayList<>(items);
      other.set(index, item);
      return new Items(Collections.unmodifiableList(other));
    }
  }

  /** Keys and values in the order they are written. */
  record Keys(Map<String, YamlValue> entries) implements YamlValue {
    /** No key at all. */
    public static final Keys NONE = new Keys(Map.of());

    /** The value of a key; null when it is not written. */
    public @Nullable YamlValue get(String key) {
      return entries.get(key);
    }

    /** The keys with one more at the end, or with another value for one of them. */
    public Keys with(String key, YamlValue value) {
      Map<String, YamlValue> more = new LinkedHashMap<>(entries);
      more.put(key, value);
      return new Keys(Collections.unmodifiableMap(more));
    }

    /** As {@link #with(String, YamlValue)}, with plain text. */
    public Keys with(String key, String text) {
      return with(key, new Text(text));
    }

    /**
     * The keys with one more in front of the first that comes after it, such as a later date; with
     * another value for the key when it is there.
     */
    public Keys inOrder(String key, YamlValue value, Comparator<String> order) {
      if (entries.containsKey(key)) {
        return with(key, value);
      }
      Map<String, YamlValue> more = new LinkedHashMap<>();
      for (Map.Entry<String, YamlValue> entry : entries.entrySet()) {
        if (!more.containsKey(key) && order.compare(entry.getKey(), key) > 0) {
          more.put(key, value);
        }
        more.put(entry.getKey(), entry.getValue());
      }
      more.putIfAbsent(key, value);
      return new Keys(Collections.unmodifiableMap(more));
    }
  }

  /** A list of its items. */
  static Items items(List<? extends YamlValue> items) {
    return new Items(List.copyOf(items));
  }

  /** What a tree says. */
  static YamlValue of(Tree tree) {
    if (tree instanceof Tree.Mapping mapping) {
      Map<String, YamlValue> entries = new LinkedHashMap<>();
      mapping.entries().forEach((key, entry) -> entries.put(key, of(entry.value())));
      return new Keys(Collections.unmodifiableMap(entries));
    }
    if (tree instanceof Tree.Sequence sequence) {
      return new Items(sequence.items().stream().map(YamlValue::of).toList());
    }
    return new Text(((Tree.Scalar) tree).text());
  }

  /**
   * True when this says all that the other says and perhaps more: further keys, further items
   * between its items, further words after its text.
   */
  default boolean saysMoreThan(YamlValue other) {
    if (this instanceof Keys mine && other instanceof Keys its) {
      return its.entries().entrySet().stream()
          .allMatch(
              entry -> {
                YamlValue value = mine.get(entry.getKey());
                return value != null && value.saysMoreThan(entry.getValue());
              });
    }
    if (this instanceof Items mine && other instanceof Items its) {
      int met = 0;
      for (YamlValue item : mine.items()) {
        met += met < its.items().size() && item.saysMoreThan(its.items().get(met)) ? 1 : 0;
      }
      return met == its.items().size();
    }
    return this instanceof Text mine
        && other instanceof Text its
        && mine.text().startsWith(its.text());
  }
}
