package peakproof.rule;

import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.objectweb.asm.AnnotationVisitor;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.Handle;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/** Everything some classes name, spelt as the lists of what is allowed spell it. */
final class NamedMembers extends ClassVisitor {
  private final Set<String> found = new TreeSet<>();

  NamedMembers() {
    super(Opcodes.ASM9);
  }

  Set<String> of(Iterable<byte[]> classes) {
    classes.forEach(bytes -> new ClassReader(bytes).accept(this, 0));
    return found;
  }

  @Override
  public void visit(
      int version, int access, String name, String signature, String parent, String[] interfaces) {
    found.add("above " + parent);
    for (String each : interfaces) {
      found.add("above " + each);
    }
  }

  @Override
  public @Nullable AnnotationVisitor visitAnnotation(String descriptor, boolean visible) {
    type(Type.getType(descriptor));
    return null;
  }

  private void type(Type type) {
    Type plain = type.getSort() == Type.ARRAY ? type.getElementType() : type;
    found.add("type " + plain.getInternalName());
  }

  @Override
  public MethodVisitor visitMethod(
      int access, String name, String descriptor, String signature, String[] exceptions) {
    return new MethodVisitor(Opcodes.ASM9) {
      @Override
      public void visitMethodInsn(
          int opcode, String owner, String method, String called, boolean isInterface) {
        found.add("call " + owner + "." + method + " " + called);
      }

      @Override
      public void visitFieldInsn(int opcode, String owner, String field, String kind) {
        found.add("read " + owner + "." + field + " " + kind);
      }

      @Override
      public void visitTypeInsn(int opcode, String type) {
        type(Type.getObjectType(type));
      }

      @Override
      public void visitLdcInsn(Object value) {
        if (value instanceof Type constant) {
          type(constant);
        }
      }

      @Override
      public void visitInvokeDynamicInsn(
          String method, String called, Handle bootstrap, Object... arguments) {
        found.add(
            "dynamic "
                + bootstrap.getOwner()
                + "."
                + bootstrap.getName()
                + " "
                + bootstrap.getDesc());
      }
    };
  }
}
