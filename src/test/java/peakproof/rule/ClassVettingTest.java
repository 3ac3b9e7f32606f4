package peakproof.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/** Classes as a rule's might be if everything before had let them pass. */
class ClassVettingTest {
  private static final String HOME = "peakproof.rules.rule_x";
  private static final AllowedMembers ALLOWED = AllowedMembers.of(FactTypes.shipped());

  @TempDir private Path folder;

  @Test
  void admitsWhatReadsComparesAndReports() {
    assertThat(
            refusals(
                """
                if (week.swims() > set.count("most") && week.phase() == Phase.PEAK) {
                  findings.report(set, week, week.swims());
                }
                """))
        .isEmpty();
  }

  @TestFactory
  Stream<DynamicTest> refusesCode() {
    return """
        System.exit(1);                                           | call System.exit
        System.out.println();                                     | read System.out, call PrintStream.println
        Runtime.getRuntime().exec("x");                           | call Runtime.getRuntime, call Runtime.exec
        new ProcessBuilder("x").start();                          | make a new ProcessBuilder
        new java.io.File("x").mkdirs();                           | make a new File, call File.mkdirs
        java.nio.file.Files.delete(java.nio.file.Path.of("x"));   | call Files.delete, call Path.of
        new Thread().start();                                     | make a new Thread, call Thread.start
        Thread.sleep(1);                                          | call Thread.sleep
        Class.forName("x");                                       | call Class.forName
        week.getClass().getClassLoader();                         | call Class.getClassLoader
        Object o = Runtime.class;                                 | name Runtime
        Object o = (Runnable) null;                               | name Runnable
        Runnable r = () -> { };                                   | hold a piece of code as a value
        Runnable r = week::swims;                                 | hold a piece of code as a value
        while (week.known()) { }                                  | jump back
        for (int i = 0; i < 9; i++) { }                           | jump back
        do { } while (week.known());                              | jump back
        try { week.swims(); } catch (RuntimeException e) { }      | catch an error
        try { week.swims(); } finally { week.runs(); }            | catch an error
        synchronized (week) { week.swims(); }                     | lock something
        int[] a = new int[2000000000];                            | make an array of numbers
        Object[] a = new Object[2000000000];                      | make an array of any size
        Object[] a = new Object[(int) week.swims()];              | make an array of any size
        Object[][] a = new Object[9][9];                          | make an array of any size
        run(findings, set, week);                                 | call itself
        other(findings, set, week);                               | call itself
        set.values().clear();                                     | call Settings.values, call Map.clear
        week.hashCode();                                          | call Object.hashCode
        week.toString();                                          | call Week.toString
        week.wait();                                              | call Object.wait
        String s = "a".repeat(9);                                 | call String.repeat
        String s = new String("a");                               | make a new String
        Math.random();                                            | call Math.random
        java.util.List.of();                                      | call List.of
        java.util.Locale.setDefault(java.util.Locale.ENGLISH);    | call Locale.setDefault
        peakproof.document.Documents.plansUnder(null);            | call Documents.plansUnder
        new peakproof.rule.Sprung();                              | make a new Sprung
        Object o = java.math.BigDecimal.TEN;                      | read BigDecimal.TEN
        throw new IllegalStateException();                        | make a new IllegalStateException
        org.drools.modelcompiler.dsl.pattern.D.query("x");        | call D.query
        System.setProperty("a", "b");                             | call System.setProperty
        System.arraycopy(null, 0, null, 0, 1); System.gc();       | call System.gc
        """
        .lines()
        .map(line -> line.split("\\s+\\|\\s+"))
        .map(
            row ->
                dynamicTest(
                    row[0],
                    () -> assertThat(refusals(row[0])).containsAll(List.of(row[1].split(", ")))));
  }

  @TestFactory
  Stream<DynamicTest> refusesMembers() {
    return """
        class A extends Thread { }                                          | be a kind of Thread
        class A implements java.util.Comparator<String> { public int compare(String a, String b) { return 0; } } | be a kind of Comparator
        class A { static { System.exit(1); } }                              | call System.exit
        class A { Object o = new java.net.Socket(); A() throws Exception { } } | make a new Socket
        class A { protected void finalize() { } }                           | run when it is thrown away
        class A { native void a(); }                                        | have a native or locking method
        class A { synchronized void a() { } }                               | have a native or locking method
        class A { void a() { b(); } void b() { c(); } void c() { a(); } }   | call itself
        @Deprecated class A { }                                             | name Deprecated
        record A(int a) { }                                                 | be a kind of Record
        """
        .lines()
        .map(line -> line.split("\\s+\\|\\s+"))
        .map(
            row ->
                dynamicTest(
                    row[0],
                    () ->
                        assertThat(vet(compile("package " + HOME + ";\n" + row[0])))
                            .contains(row[1])));
  }

  @Test
  void refusesAClassOfAnotherPackageOrName() {
    Map<String, byte[]> facts = compile("package peakproof.fact; class A { }");
    assertThat(vet(facts)).containsExactly("put a class outside its own package");
    byte[] bytes = Objects.requireNonNull(facts.get("peakproof.fact.A"));
    assertThat(vet(Map.of(HOME + ".A", bytes)))
        .containsExactly("put a class outside its own package");
  }

  @Test
  void refusesWhatIsNoClass() {
    assertThat(vet(Map.of(HOME + ".A", new byte[0])))
        .containsExactly("hold a class that cannot be read");
    byte[] cut = Arrays.copyOf(Objects.requireNonNull(code("").get(HOME + ".A")), 60);
    assertThat(vet(Map.of(HOME + ".A", cut))).containsExactly("hold a class that cannot be read");
  }

  @Test
  void refusesWhatNoCompilerWrites() {
    ClassWriter writer = new ClassWriter(0);
    writer.visit(Opcodes.V17, 0, HOME.replace('.', '/') + "/A", null, "java/lang/Object", null);
    MethodVisitor method = writer.visitMethod(0, "a", "()V", null, null);
    method.visitCode();
    method.visitLdcInsn(Type.getMethodType("()V"));
    method.visitInsn(Opcodes.MONITORENTER);
    method.visitFieldInsn(Opcodes.PUTSTATIC, "java/lang/System", "out", "Ljava/io/PrintStream;");
    method.visitEnd();
    writer.visitEnd();
    assertThat(vet(Map.of(HOME + ".A", writer.toByteArray())))
        .containsExactlyInAnyOrder(
            "hold the type of a method", "lock something", "change System.out");
  }

  @Test
  void saysWhichRuleAndWhatToDo() {
    RuleText text = new RuleText("rules/swim/x.drl", "// One.\n// Two.\n\nrule \"x\"\n");
    RuleCompiler.Source source = new RuleCompiler.Source("x", "swim", text);
    assertThat(SyntaxTrouble.refused(source, refusals("System.exit(1);").get(0)))
        .hasToString(
            "rules/swim/x.drl:4:1: the rule 'x' would call System.exit; a rule reads facts and"
                + " settings, compares and reports, and does nothing else; compare few fields at"
                + " once; what must be computed belongs into a fact");
  }

  private List<String> refusals(String code) {
    return vet(code(code));
  }

  private Map<String, byte[]> code(String code) {
    return compile(
        """
        package HOME;
        import peakproof.fact.*;
        class A {
          void run(Findings findings, Settings set, Week week) throws Throwable {
            CODE
          }
          void other(Findings findings, Settings set, Week week) throws Throwable {
            run(findings, set, week);
          }
        }
        """
            .replace("HOME", HOME)
            .replace("CODE", code));
  }

  private static List<String> vet(Map<String, byte[]> classes) {
    return ClassVetting.refusals(ALLOWED, HOME, classes);
  }

  private Map<String, byte[]> compile(String source) {
    Path made = fresh();
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    SimpleJavaFileObject written =
        new SimpleJavaFileObject(URI.create("mem:///A.java"), SimpleJavaFileObject.Kind.SOURCE) {
          @Override
          public CharSequence getCharContent(boolean ignoreEncodingErrors) {
            return source;
          }
        };
    List<String> options =
        List.of(
            "-proc:none",
            "-nowarn",
            "--release",
            "17",
            "-cp",
            TestClassPath.text(),
            "-d",
            made.toString());
    boolean compiled =
        Boolean.TRUE.equals(
            compiler
                .getTask(new StringWriter(), null, null, options, null, List.of(written))
                .call());
    assertThat(compiled).as(source).isTrue();
    Map<String, byte[]> classes = new TreeMap<>();
    try (Stream<Path> files = Files.walk(made)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        String name = made.relativize(file).toString().replace(".class", "");
        classes.put(name.replace('/', '.').replace('\\', '.'), Files.readAllBytes(file));
      }
    } catch (IOException unexpected) {
      throw new UncheckedIOException(unexpected);
    }
    return classes;
  }

  /** The tests of one table share the folder, and none may see the classes of another. */
  private Path fresh() {
    try {
      return Files.createTempDirectory(folder, "made");
    } catch (IOException unexpected) {
      throw new UncheckedIOException(unexpected);
    }
  }
}
