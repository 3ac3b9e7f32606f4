package peakproof.rule;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.objectweb.asm.Type;
import peakproof.fact.Settings;

/**
 * Everything outside its own package that the classes of a rule may name: the lists in the folder
 * {@code allowed}, member for member, and the fields of facts and words of closed lists that a rule
 * may name as well.
 */
final class AllowedMembers {
  static final List<String> LISTS = List.of("comparing", "language", "model", "rule");

  private final Set<String> entries = new HashSet<>();

  private AllowedMembers() {}

  /** The members for rules about these facts. */
  static AllowedMembers of(FactTypes facts) {
    AllowedMembers allowed = new AllowedMembers();
    LISTS.forEach(list -> allowed.entries.addAll(listed(list)));
    facts.all().values().forEach(allowed::fact);
    facts.wordLists().values().forEach(allowed::words);
    return allowed;
  }

  /** The lines of a list that are no comment, such as {@code type java/lang/Double}. */
  static List<String> listed(String list) {
    try (InputStream in = AllowedMembers.class.getResourceAsStream("allowed/" + list + ".txt")) {
      String text = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
      return text.lines().filter(line -> !line.startsWith("#")).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The settings are read by name and kind, which the list for rules says member for member. */
  private void fact(FactType fact) {
    String owner = Type.getInternalName(fact.type());
    if (fact.type() == Settings.class || !entries.add("type " + owner)) {
      return;
    }
    fact.fields()
        .forEach(
            (name, field) -> {
              entries.add("call " + owner + "." + name + " " + descriptor(fact, name));
              FactType below = field.fields();
              if (below != null) {
                fact(below);
              }
            });
  }

  private static String descriptor(FactType fact, String field) {
    try {
      return Type.getMethodDescriptor(fact.type().getMethod(field));
    } catch (NoSuchMethodException e) {
      throw new IllegalStateException(e);
    }
  }

  private void words(Class<?> list) {
    String owner = Type.getInternalName(list);
    entries.add("type " + owner);
    entries.addAll(
        Arrays.stream(list.getEnumConstants())
            .map(word -> "read " + owner + "." + ((Enum<?>) word).name() + " L" + owner + ";")
            .collect(Collectors.toSet()));
  }

  boolean call(String owner, String name, String descriptor) {
    return entries.contains("call " + owner + "." + name + " " + descriptor);
  }

  boolean read(String owner, String name, String descriptor) {
    return entries.contains("read " + owner + "." + name + " " + descriptor);
  }

  /** What a call may be linked to when it first runs. */
  boolean dynamic(String owner, String name, String descriptor) {
    return entries.contains("dynamic " + owner + "." + name + " " + descriptor);
  }

  /** A class that may be named, made or cast to. */
  boolean type(String name) {
    return entries.contains("type " + name);
  }

  /** A class or interface that a rule's class may be a kind of. */
  boolean above(String name) {
    return entries.contains("above " + name);
  }
}
