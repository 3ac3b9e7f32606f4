package peakproof.rule;

import java.util.Map;

/** Loads the classes the engine made of the rules, from memory. */
final class GeneratedClasses extends ClassLoader {
  private final Map<String, byte[]> classes;

  GeneratedClasses(Map<String, byte[]> classes) {
    super(GeneratedClasses.class.getClassLoader());
    this.classes = classes;
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
