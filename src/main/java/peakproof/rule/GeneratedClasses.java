package peakproof.rule;

import java.util.Map;

/**
 * Loads the classes the engine made of the rules, from memory; see {@link VettedClasses}. Its own
 * go before those of the same name in the program: a shipped rule may have been changed since.
 */
final class GeneratedClasses extends ClassLoader {
  private final Map<String, byte[]> classes;

  GeneratedClasses(VettedClasses vetted) {
    super(GeneratedClasses.class.getClassLoader());
    this.classes = vetted.classes();
  }

  @Override
  protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
    byte[] bytes = classes.get(name);
    if (bytes == null) {
      return super.loadClass(name, resolve);
    }
    synchronized (getClassLoadingLock(name)) {
      Class<?> loaded = findLoadedClass(name);
      return loaded == null ? defineClass(name, bytes, 0, bytes.length) : loaded;
    }
  }
}
