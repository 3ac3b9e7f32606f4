package peakproof.rule;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import peakproof.fact.Fact;
import peakproof.fact.Settings;

/** The facts a rule may name: one list for the vetting of rules and the words of cards. */
public final class FactTypes {
  private final Map<String, FactType> byName = new TreeMap<>();
  private final Map<String, FactType> byPlaceholder = new TreeMap<>();
  private final Map<String, Class<?>> wordLists = new TreeMap<>();

  private FactTypes(Collection<? extends Class<?>> types) {
    for (Class<?> type : types) {
      FactType fact = FactType.of(type);
      byName.put(fact.name(), fact);
      byPlaceholder.put(fact.placeholder(), fact);
      for (FieldType field : fact.fields().values()) {
        if (field.type().isEnum()) {
          wordLists.put(field.type().getSimpleName(), field.type());
        }
      }
    }
  }

  /** These classes and the settings. */
  public static FactTypes of(Collection<? extends Class<?>> types) {
    return new FactTypes(Stream.concat(types.stream(), Stream.of(Settings.class)).toList());
  }

  /** The facts of this program: every class beside {@link Fact} that implements it. */
  public static FactTypes shipped() {
    return of(
        classNames().stream()
            .map(FactTypes::load)
            .filter(type -> Fact.class.isAssignableFrom(type) && type != Fact.class)
            .toList());
  }

  /** A fact by its name in rules, or null. */
  public @Nullable FactType named(String name) {
    return byName.get(name);
  }

  /** A fact by its name in texts, or null. */
  public @Nullable FactType placeholder(String name) {
    return byPlaceholder.get(name);
  }

  /** All facts by their names in rules. */
  public Map<String, FactType> all() {
    return Map.copyOf(byName);
  }

  /** The closed lists of words the facts' fields hold, by the name of the list. */
  Map<String, Class<?>> wordLists() {
    return wordLists;
  }

  Collection<String> placeholders() {
    return byPlaceholder.keySet();
  }

  private static Class<?> load(String name) {
    try {
      return Class.forName(name, false, Fact.class.getClassLoader());
    } catch (ClassNotFoundException e) {
      throw new IllegalStateException(e);
    }
  }

  private static List<String> classNames() {
    String folder = Fact.class.getPackageName().replace('.', '/') + "/";
    try {
      URI place = Fact.class.getProtectionDomain().getCodeSource().getLocation().toURI();
      Path path = Path.of(place);
      if (Files.isDirectory(path)) {
        try (Stream<Path> files = Files.list(path.resolve(folder))) {
          return names(folder, files.map(file -> folder + file.getFileName()));
        }
      }
      try (JarFile jar = new JarFile(path.toFile())) {
        return names(folder, jar.stream().map(entry -> entry.getName()));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  private static List<String> names(String folder, Stream<String> entries) {
    return entries
        .filter(name -> name.startsWith(folder) && name.endsWith(".class") && !name.contains("$"))
        .filter(name -> !name.endsWith("package-info.class"))
        .map(name -> name.substring(0, name.length() - ".class".length()).replace('/', '.'))
        .sorted()
        .toList();
  }
}
