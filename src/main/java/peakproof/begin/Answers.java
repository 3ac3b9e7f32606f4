package peakproof.begin;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** What a coach answered, by the name of the item; what was left out is not there. */
public final class Answers {
  private final Map<String, String> given;

  /** Answers by the name of the item. */
  public Answers(Map<String, String> given) {
    this.given = Collections.unmodifiableMap(new LinkedHashMap<>(given));
  }

  /** The same with what is taken for whatever has no answer. */
  public Answers completed(List<Item> items) {
    Map<String, String> all = new LinkedHashMap<>(given);
    for (Item item : items) {
      if (item.fallback() != null) {
        all.putIfAbsent(item.name(), item.fallback());
      }
    }
    return new Answers(all);
  }

  /** The required items that have no answer. */
  public List<Item> missing(List<Item> items) {
    return items.stream()
        .filter(item -> item.required() && !given.containsKey(item.name()))
        .toList();
  }

  @Nullable String text(String name) {
    return given.get(name);
  }

  String required(String name) {
    return Objects.requireNonNull(given.get(name), name);
  }
}
