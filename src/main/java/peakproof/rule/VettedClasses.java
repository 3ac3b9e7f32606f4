package peakproof.rule;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.Supplier;

/** The classes of rules that have passed {@link ClassVetting}: no others are ever defined. */
final class VettedClasses {
  private final Map<String, CompiledRule> rules = new TreeMap<>();
  private final Supplier<AllowedMembers> allowed;

  VettedClasses(Supplier<AllowedMembers> allowed) {
    this.allowed = allowed;
  }

  /**
   * Takes the classes of one rule unless there is something in them that must not be.
   *
   * @param ofHealth true when the rule finds something in health entries
   * @return what must not be, in words that go after "would"; empty when they were taken
   */
  List<String> add(String rule, Engine.Built built, boolean ofHealth) {
    String home = Engine.packageOf(rule);
    Map<String, byte[]> own = new TreeMap<>(built.classes());
    own.keySet().removeIf(name -> !name.startsWith(home + "."));
    List<String> refusals = ClassVetting.refusals(allowed.get(), home, own);
    if (refusals.isEmpty()) {
      List<String> models = built.models().stream().filter(own::containsKey).toList();
      rules.put(rule, new CompiledRule(own, models, ofHealth));
    }
    return refusals;
  }

  /** Takes a rule that was vetted where it was known from. */
  void addKnown(String rule, CompiledRule known) {
    rules.put(rule, known);
  }

  /** Leaves a rule out after all. */
  void leaveOut(String rule) {
    rules.remove(rule);
  }

  /** A rule that was taken. */
  CompiledRule of(String rule) {
    return Objects.requireNonNull(rules.get(rule), rule);
  }

  Map<String, byte[]> classes() {
    Map<String, byte[]> classes = new TreeMap<>();
    rules.values().forEach(rule -> classes.putAll(rule.classes()));
    return classes;
  }

  /** Names of the classes that describe the rules to the engine. */
  List<String> models() {
    return rules.values().stream().flatMap(rule -> rule.models().stream()).toList();
  }
}
