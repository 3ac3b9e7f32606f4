package peakproof.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The classes of rules that have passed {@link ClassVetting}: no others are ever defined. */
final class VettedClasses {
  private final Map<String, byte[]> classes = new TreeMap<>();
  private final List<String> models = new ArrayList<>();
  private final AllowedMembers allowed;

  VettedClasses(AllowedMembers allowed) {
    this.allowed = allowed;
  }

  /**
   * Takes the classes of one rule unless there is something in them that must not be.
   *
   * @return what must not be, in words that go after "would"; empty when they were taken
   */
  List<String> add(String rule, Engine.Built built) {
    String home = Engine.packageOf(rule);
    Map<String, byte[]> own = new TreeMap<>(built.classes());
    own.keySet().removeIf(name -> !name.startsWith(home + "."));
    List<String> refusals = ClassVetting.refusals(allowed, home, own);
    if (refusals.isEmpty()) {
      classes.putAll(own);
      built.models().stream().filter(own::containsKey).forEach(models::add);
    }
    return refusals;
  }

  Map<String, byte[]> classes() {
    return classes;
  }

  /** Names of the classes that describe the rules to the engine. */
  List<String> models() {
    return models;
  }
}
