package peakproof.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.objectweb.asm.AnnotationVisitor;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.FieldVisitor;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/**
 * Judges the classes the engine made of one rule before any of them is defined, as if nobody had
 * looked at the rule itself: they may name what is on the lists and each other, and nothing in them
 * may run for long.
 */
final class ClassVetting {
  private final AllowedMembers allowed;
  private final String home;
  private final Set<String> refusals = new TreeSet<>();

  /** Which method of the rule's classes calls which others of them. */
  private final Map<String, Set<String>> calls = new TreeMap<>();

  private ClassVetting(AllowedMembers allowed, String home) {
    this.allowed = allowed;
    this.home = home;
  }

  /**
   * What the classes must not hold, in words that go after "would"; empty when they may be defined.
   *
   * @param home the package of the rule, in which all its classes lie
   */
  static List<String> refusals(AllowedMembers allowed, String home, Map<String, byte[]> classes) {
    ClassVetting vetting = new ClassVetting(allowed, home.replace('.', '/') + "/");
    classes.forEach(vetting::read);
    vetting.recursion();
    return List.copyOf(vetting.refusals);
  }

  private void read(String name, byte[] bytes) {
    try {
      ClassReader reader = new ClassReader(bytes);
      if (!reader.getClassName().equals(name.replace('.', '/')) || !isOwn(reader.getClassName())) {
        refuse("put a class outside its own package");
      }
      reader.accept(new Members(), ClassReader.SKIP_FRAMES);
    } catch (IllegalArgumentException | IndexOutOfBoundsException | NegativeArraySizeException e) {
      refuse("hold a class that cannot be read");
    }
  }

  boolean isOwn(String internalName) {
    return internalName.startsWith(home);
  }

  AllowedMembers allowed() {
    return allowed;
  }

  void refuse(String what) {
    refusals.add(what);
  }

  void calls(String from, String to) {
    calls.computeIfAbsent(from, method -> new TreeSet<>()).add(to);
  }

  /** The name of an array's members or of a class; primitives are always named. */
  void type(Type type) {
    Type plain = type.getSort() == Type.ARRAY ? type.getElementType() : type;
    if (plain.getSort() == Type.METHOD) {
      refuse("hold the type of a method");
    } else if (plain.getSort() == Type.OBJECT
        && !isOwn(plain.getInternalName())
        && !allowed.type(plain.getInternalName())) {
      refuse("name " + shown(plain.getInternalName()));
    }
  }

  /** A class as its author knows it. */
  static String shown(String internalName) {
    return internalName.substring(internalName.lastIndexOf('/') + 1).replace('$', '.');
  }

  private void recursion() {
    Set<String> done = new TreeSet<>();
    for (String method : calls.keySet()) {
      if (circles(method, new ArrayList<>(), done)) {
        refuse("call itself");
        return;
      }
    }
  }

  private boolean circles(String method, List<String> path, Set<String> done) {
    if (path.contains(method)) {
      return true;
    }
    if (!done.add(method)) {
      return false;
    }
    path.add(method);
    for (String next : calls.getOrDefault(method, Set.of())) {
      if (circles(next, path, done)) {
        return true;
      }
    }
    path.remove(path.size() - 1);
    return false;
  }

  /** Looks at one class. */
  private final class Members extends ClassVisitor {
    private String name = "";

    private Members() {
      super(Opcodes.ASM9);
    }

    @Override
    public void visit(
        int version,
        int access,
        String itself,
        @Nullable String signature,
        @Nullable String parent,
        String @Nullable [] interfaces) {
      name = itself;
      above(parent);
      for (String each : interfaces == null ? new String[0] : interfaces) {
        above(each);
      }
    }

    private void above(@Nullable String kind) {
      if (kind == null || !allowed.above(kind)) {
        refuse("be a kind of " + (kind == null ? "nothing" : shown(kind)));
      }
    }

    @Override
    public @Nullable AnnotationVisitor visitAnnotation(String descriptor, boolean visible) {
      type(Type.getType(descriptor));
      return null;
    }

    @Override
    public @Nullable FieldVisitor visitField(
        int access,
        String field,
        String descriptor,
        @Nullable String signature,
        @Nullable Object value) {
      return null;
    }

    @Override
    public @Nullable MethodVisitor visitMethod(
        int access,
        String method,
        String descriptor,
        @Nullable String signature,
        String @Nullable [] exceptions) {
      if ((access & (Opcodes.ACC_NATIVE | Opcodes.ACC_SYNCHRONIZED)) != 0) {
        refuse("have a native or locking method");
      }
      if (method.equals("finalize")) {
        refuse("run when it is thrown away");
      }
      return new CodeVetting(ClassVetting.this, name + "." + method + descriptor);
    }
  }
}
