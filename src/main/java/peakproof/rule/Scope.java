package peakproof.rule;

import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import peakproof.fact.Settings;

/**
 * What a condition can name: the fields of its own fact and the variables bound so far; and what
 * earlier conditions of the same pattern made sure of.
 */
final class Scope {
  private final FactType fact;
  private final Map<String, FieldType> outer;
  private final Set<String> lost;
  private final boolean absent;
  private final Map<String, FieldType> own = new LinkedHashMap<>();
  private final Map<String, String> fields = new LinkedHashMap<>();
  private final Set<String> known = new HashSet<>();
  private boolean tied;

  /**
   * @param lost variables whose binding is a fault already, so that their use is none
   * @param absent true when the fact must not be there
   */
  Scope(FactType fact, Map<String, FieldType> outer, Set<String> lost, boolean absent) {
    this.fact = fact;
    this.outer = outer;
    this.lost = lost;
    this.absent = absent;
  }

  FactType fact() {
    return fact;
  }

  boolean isBound(String variable) {
    return outer.containsKey(variable) || own.containsKey(variable);
  }

  void bind(String variable, String field, FieldType type) {
    own.put(variable, type);
    fields.put(variable, field);
  }

  void lose(String variable) {
    lost.add(variable);
  }

  boolean isLost(String variable) {
    return lost.contains(variable);
  }

  /**
   * What a variable holds, null when nothing is bound to it. The settings are the same for every
   * fact, so they tie nothing together.
   */
  @Nullable FieldType use(String variable) {
    FieldType type = outer.get(variable);
    if (type != null) {
      tied |= type.type() != Settings.class;
      return type;
    }
    return own.get(variable);
  }

  /** Notes that from here on a field or variable cannot be unknown. */
  void makeSure(String name) {
    known.add(name);
    fields.forEach(
        (variable, field) -> {
          if (field.equals(name)) {
            known.add(variable);
          }
        });
  }

  /** What is sure now; given back to {@link #restore} when an alternative begins. */
  Set<String> sure() {
    return Set.copyOf(known);
  }

  void restore(Set<String> sure) {
    known.retainAll(sure);
  }

  boolean isSure(String name) {
    return known.contains(name);
  }

  /** True where comparing with an unknown variable would find nothing and pass for an absence. */
  boolean needsKnown(String variable) {
    return absent && isOfEarlierFact(variable);
  }

  boolean isOfEarlierFact(String variable) {
    return outer.containsKey(variable);
  }

  /** True when a variable of an earlier fact was used. */
  boolean isTied() {
    return tied;
  }

  /** The variables bound in this pattern. */
  Map<String, FieldType> own() {
    Map<String, FieldType> types = new LinkedHashMap<>();
    own.forEach((name, type) -> types.put(name, isSure(name) ? type.nowKnown() : type));
    return types;
  }

  Collection<String> variables() {
    Set<String> names = new LinkedHashSet<>(outer.keySet());
    names.addAll(own.keySet());
    return names;
  }
}
