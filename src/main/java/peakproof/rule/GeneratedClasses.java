package peakproof.rule;

import java.util.Map;

/** Loads the classes the engine made of the rules, from memory; see {@link VettedClasses}. */
final class GeneratedClasses extends ClassLoader {
  private final Map<String, byte[]> classes;

  GeneratedClasses(VettedClasses vetted) {
    super(GeneratedClasses.class.getClassLoader());
    this.classes = vetted.classes();
  }

  @Override
  protected Class<?> findClass(String name) throws ClassNotFoundException {
    byte[] bytes = classes.get(name);
    if (bytes == null) {
      throw new ClassNotFoundException(name);
    }
    return defineClass(name, bytes, 0, bytes.length);
  }
}
