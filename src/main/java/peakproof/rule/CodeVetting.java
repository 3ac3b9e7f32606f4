package peakproof.rule;

import java.util.HashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.objectweb.asm.ConstantDynamic;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/**
 * Judges the code of one method of a rule's classes: straight ahead, no way back, nothing caught,
 * nothing locked, no large array, and only calls that are on the lists.
 */
final class CodeVetting extends MethodVisitor {
  private final ClassVetting vetting;
  private final String method;
  private final Set<Label> passed = new HashSet<>();
  private int last = -1;
  private int lastButOne = -1;
  private int lastButTwo = -1;

  CodeVetting(ClassVetting vetting, String method) {
    super(Opcodes.ASM9);
    this.vetting = vetting;
    this.method = method;
  }

  private void step(int opcode) {
    lastButTwo = lastButOne;
    lastButOne = last;
    last = opcode;
  }

  @Override
  public void visitInsn(int opcode) {
    step(opcode);
    if (opcode == Opcodes.MONITORENTER || opcode == Opcodes.MONITOREXIT) {
      vetting.refuse("lock something");
    }
  }

  @Override
  public void visitIntInsn(int opcode, int operand) {
    step(opcode);
    if (opcode == Opcodes.NEWARRAY) {
      vetting.refuse("make an array of numbers");
    }
  }

  @Override
  public void visitVarInsn(int opcode, int index) {
    step(opcode);
    if (opcode == Opcodes.RET) {
      vetting.refuse("jump back");
    }
  }

  @Override
  public void visitIincInsn(int index, int increment) {
    step(Opcodes.IINC);
  }

  @Override
  public void visitTypeInsn(int opcode, String type) {
    if (opcode == Opcodes.ANEWARRAY && !knownSize()) {
      vetting.refuse("make an array of any size");
    }
    step(opcode);
    vetting.type(Type.getObjectType(type));
  }

  /** A small constant, or the length of an array that is there already. */
  private boolean knownSize() {
    return (last >= Opcodes.ICONST_0 && last <= Opcodes.ICONST_5)
        || last == Opcodes.BIPUSH
        || (lastButTwo == Opcodes.ARRAYLENGTH
            && lastButOne == Opcodes.DUP
            && last == Opcodes.ISTORE);
  }

  @Override
  public void visitMultiANewArrayInsn(String descriptor, int dimensions) {
    vetting.refuse("make an array of any size");
  }

  @Override
  public void visitFieldInsn(int opcode, String owner, String name, String descriptor) {
    step(opcode);
    if (vetting.isOwn(owner)) {
      return;
    }
    if (opcode != Opcodes.GETSTATIC || !vetting.allowed().read(owner, name, descriptor)) {
      vetting.refuse(
          (opcode == Opcodes.GETSTATIC || opcode == Opcodes.GETFIELD ? "read " : "change ")
              + ClassVetting.shown(owner)
              + "."
              + name);
    }
  }

  @Override
  public void visitMethodInsn(
      int opcode, String owner, String name, String descriptor, boolean isInterface) {
    step(opcode);
    if (vetting.isOwn(owner)) {
      vetting.calls(method, owner + "." + name + descriptor);
    } else if (!vetting.allowed().call(owner, name, descriptor)) {
      vetting.refuse(
          name.equals("<init>")
              ? "make a new " + ClassVetting.shown(owner)
              : "call " + ClassVetting.shown(owner) + "." + name);
    }
  }

  @Override
  public void visitInvokeDynamicInsn(
      String name, String descriptor, Handle bootstrap, Object... arguments) {
    step(Opcodes.INVOKEDYNAMIC);
    boolean texts = true;
    for (Object argument : arguments) {
      texts &= argument instanceof String;
    }
    if (!texts
        || bootstrap.getTag() != Opcodes.H_INVOKESTATIC
        || !vetting
            .allowed()
            .dynamic(bootstrap.getOwner(), bootstrap.getName(), bootstrap.getDesc())) {
      vetting.refuse("hold a piece of code as a value");
    }
  }

  @Override
  public void visitLdcInsn(Object value) {
    step(Opcodes.LDC);
    if (value instanceof Type type) {
      vetting.type(type);
    } else if (value instanceof Handle || value instanceof ConstantDynamic) {
      vetting.refuse("hold a piece of code as a value");
    }
  }

  @Override
  public void visitLabel(Label label) {
    passed.add(label);
  }

  @Override
  public void visitJumpInsn(int opcode, Label label) {
    step(opcode);
    forward(label);
    if (opcode == Opcodes.JSR) {
      vetting.refuse("jump back");
    }
  }

  @Override
  public void visitTableSwitchInsn(int min, int max, Label otherwise, Label... labels) {
    switches(otherwise, labels);
  }

  @Override
  public void visitLookupSwitchInsn(Label otherwise, int[] keys, Label[] labels) {
    switches(otherwise, labels);
  }

  private void switches(Label otherwise, Label... labels) {
    step(Opcodes.LOOKUPSWITCH);
    forward(otherwise);
    for (Label label : labels) {
      forward(label);
    }
  }

  private void forward(Label label) {
    if (passed.contains(label)) {
      vetting.refuse("jump back");
    }
  }

  @Override
  public void visitTryCatchBlock(Label start, Label end, Label handler, @Nullable String type) {
    vetting.refuse("catch an error");
  }
}
