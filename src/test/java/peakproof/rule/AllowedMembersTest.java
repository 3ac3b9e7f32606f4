package peakproof.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.objectweb.asm.Type;
import peakproof.fact.Settings;

/** The lists of what the classes of a rule may name: all of it there, needed, and harmless. */
class AllowedMembersTest {
  private static final Pattern ENTRY =
      Pattern.compile("(above|call|dynamic|read|type) ([\\w/$]+)(?:\\.(<init>|\\w+) (\\S+))?");

  /** What no rule may ever reach, by the beginning of the class's name. */
  private static final List<String> NEVER =
      List.of(
          "java/io/",
          "java/lang/Class",
          "java/lang/Process",
          "java/lang/Runtime ",
          "java/lang/Runtime.",
          "java/lang/System",
          "java/lang/Thread",
          "java/lang/foreign/",
          "java/lang/instrument/",
          "java/lang/invoke/Method",
          "java/lang/ref/",
          "java/lang/reflect/",
          "java/net/",
          "java/nio/",
          "java/rmi/",
          "java/security/",
          "java/util/ServiceLoader",
          "java/util/Timer",
          "java/util/concurrent/",
          "java/util/jar/",
          "java/util/zip/",
          "javax/",
          "jdk/",
          "sun/",
          "com/",
          "org/drools/core/",
          "org/drools/compiler/builder",
          "org/drools/model/codegen/",
          "org/drools/util/Class",
          "org/drools/util/IoUtils",
          "org/kie/",
          "org/mvel",
          "org/objectweb/",
          "peakproof/Main",
          "peakproof/audit/",
          "peakproof/cli/",
          "peakproof/document/",
          "peakproof/report/",
          "peakproof/rule/");

  /** The one member of System, which only moves what is in one array to another. */
  private static final String COPY =
      "call java/lang/System.arraycopy (Ljava/lang/Object;ILjava/lang/Object;II)V";

  private static Set<String> used = Set.of();

  @BeforeAll
  static void build() throws Engine.Unreadable, IOException {
    FactTypes facts = FactTypes.shipped();
    Map<String, Engine.Parsed> parsed = new TreeMap<>();
    List<RuleCompiler.Source> sources = new ArrayList<>(legal().sources());
    sources.addAll(ConditionTest.rules().sources());
    for (RuleCompiler.Source source : sources) {
      parsed.put(source.slug(), Engine.parse(source.text().text()));
    }
    try (Stream<Path> files = Files.walk(Path.of("rules"))) {
      for (Path file : files.filter(path -> path.toString().endsWith(".drl")).toList()) {
        String text = Files.readString(file, StandardCharsets.UTF_8);
        parsed.put(file.getFileName().toString().replace(".drl", ""), Engine.parse(text));
      }
    }
    Engine.Built built = Objects.requireNonNull(Engine.build(parsed, facts.wordLists().values()));
    used = new NamedMembers().of(built.classes().values());
  }

  /** What a rule may well say, though none of the shipped ones does. */
  private static PlainRules legal() {
    Map<String, Settings.Value> settings = new TreeMap<>();
    Map.of(
            "n", Settings.Kind.COUNT,
            "s", Settings.Kind.SHARE,
            "t", Settings.Kind.DURATION,
            "d", Settings.Kind.DISTANCE,
            "c", Settings.Kind.TEMPERATURE,
            "g", Settings.Kind.CARBOHYDRATE,
            "f", Settings.Kind.FLUID,
            "day", Settings.Kind.DAY,
            "window", Settings.Kind.WINDOW)
        .forEach(
            (name, kind) -> {
              for (String of : List.of("", "-full", "-half", "-standard", "-sprint")) {
                settings.put(name + of, new Settings.Value(kind, 1, 1));
              }
            });
    PlainRules rules = new PlainRules(settings);
    for (String block : FaultTable.text("legal-rules.txt").split("(?m)^== ")) {
      if (!block.startsWith("#")) {
        String name = block.substring(0, block.indexOf('\n'));
        int report = block.lastIndexOf("\n> ");
        rules.add(
            name, block.substring(name.length(), report), block.substring(report + 3).strip());
      }
    }
    return rules;
  }

  @Test
  void admitEveryLegalRule() {
    RuleCompiler.Compiled compiled = legal().compile(FactTypes.shipped());
    assertThat(compiled.faults()).isEmpty();
    assertThat(compiled.rules()).hasSizeGreaterThan(25);
  }

  @Test
  void areAllNeeded() {
    Set<String> entries = new TreeSet<>();
    AllowedMembers.LISTS.forEach(list -> entries.addAll(AllowedMembers.listed(list)));
    entries.removeAll(used);
    assertThat(entries).isEmpty();
  }

  @Test
  void areSortedAndSayWhy() {
    for (String list : AllowedMembers.LISTS) {
      List<String> entries = AllowedMembers.listed(list);
      assertThat(entries).isSorted().doesNotHaveDuplicates().allMatch(ENTRY.asMatchPredicate());
      assertThat(FaultTable.text("allowed/" + list + ".txt")).startsWith("# ");
    }
  }

  @Test
  void holdNothingThatReachesOutOfARule() {
    for (String list : AllowedMembers.LISTS) {
      assertThat(AllowedMembers.listed(list))
          .filteredOn(entry -> !entry.equals(COPY))
          .allSatisfy(
              entry -> {
                String named = entry.substring(entry.indexOf(' ') + 1) + " ";
                assertThat(NEVER).noneMatch(named::startsWith);
              });
    }
  }

  @Test
  void canAllBeFound() throws ReflectiveOperationException {
    for (String list : AllowedMembers.LISTS) {
      for (String entry : AllowedMembers.listed(list)) {
        Matcher matcher = ENTRY.matcher(entry);
        assertThat(matcher.matches()).isTrue();
        Class<?> owner = Class.forName(matcher.group(2).replace('/', '.'));
        String name = matcher.group(3);
        String descriptor = matcher.group(4);
        if (name != null) {
          assertThat(descriptors(owner, name)).as(entry).contains(descriptor);
        }
      }
    }
  }

  private static List<String> descriptors(Class<?> owner, String name) {
    return Stream.of(
            Stream.of(owner.getDeclaredConstructors())
                .filter(each -> name.equals("<init>"))
                .map(Type::getConstructorDescriptor),
            Stream.of(owner.getMethods())
                .filter(each -> each.getName().equals(name))
                .map(Type::getMethodDescriptor),
            Stream.of(owner.getFields())
                .filter(each -> each.getName().equals(name))
                .map(each -> Type.getDescriptor(each.getType())))
        .flatMap(each -> each)
        .toList();
  }
}
