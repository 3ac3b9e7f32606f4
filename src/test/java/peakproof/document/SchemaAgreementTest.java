package peakproof.document;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Error;
import java.io.IOException;
import java.lang.reflect.Method;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import peakproof.Golden;
import peakproof.document.SchemaAgreement.Trees;

/**
 * The schemas say of a document what its reader says, but for the kinds that {@link
 * SchemaDifference} lists.
 */
class SchemaAgreementTest {
  private static final List<String> PROBES =
      List.of(
          "yes",
          "no",
          "true",
          "True",
          "off",
          "rest",
          "none",
          "am",
          "words of any kind",
          "0",
          "1",
          "3",
          "012",
          "6.5",
          "6.3",
          "10",
          "11",
          "-6",
          "+6",
          "1e1",
          "0x10",
          "3.0",
          "1988",
          "88",
          "10000000",
          "45s",
          "12min",
          "12 min",
          "1h",
          "1h30",
          "1h75",
          "1h10min30s",
          "1h 5s",
          "0min",
          "75min",
          "1min75s",
          "1:10:00",
          "1:75:00",
          "6:28",
          "6:78",
          "400m",
          "3.8km",
          "1500 yd",
          "13.1mi",
          "0km",
          "50m",
          "marathon",
          "1:50/100m",
          "4:55/km",
          "4:75/km",
          "0:00/km",
          "131bpm",
          "0bpm",
          "70%maxhr",
          "120%maxhr",
          "65%hrr",
          "120%cp",
          "205W",
          "205w",
          "rpe6",
          "rpe11",
          "62kg",
          "137lb",
          "62",
          "1.1l",
          "0l",
          "750ml",
          "24floz",
          "650ml/h",
          "0ml/h",
          "75g/h",
          "180mg",
          "17.5C",
          "-3C",
          "64F",
          "4m/s",
          "14km/h",
          "10mph",
          "60%",
          "100%",
          "101%",
          "1250m",
          "4100ft",
          "5mm",
          "0mm",
          "2027-05-31",
          "2027-06-01",
          "2027-02-29",
          "2027-02-30",
          "2027-13-01",
          "06:30",
          "24:30",
          "2027-07-02T14:00",
          "mon",
          "monday",
          "full",
          "swim",
          "400 easy, 8x50 drill r15s",
          "400 eesy",
          "40min walk",
          "wetsuit",
          "sighting",
          "illness",
          "rules",
          "world-triathlon",
          "own",
          "painkiller",
          "+62kg",
          "1,5h",
          "sleep 7h15",
          "@rpe6");

  /** For mappings whose keys the user chooses. */
  private static final Set<String> USERS_OWN =
      Set.of("a-rule", "Capital", "2027-05-31", "2027-06-01", "2027-02-30", "30-05-2027");

  private final SchemaAgreement agreement = new SchemaAgreement();
  private final Set<String> probed = new HashSet<>();
  private final Random random = new Random(20270704);

  @Test
  void agreesOnTheDocumentsOfTheOtherTests() throws Throwable {
    List<Texts.Given> given = new ArrayList<>();
    for (Class<?> tests : List.of(WrongDocumentsTest.class, WrongPlansTest.class)) {
      for (Method test : tests.getDeclaredMethods()) {
        CsvSource lines = test.getAnnotation(CsvSource.class);
        if (lines != null) {
          Object instance = tests.getDeclaredConstructor().newInstance();
          for (String line : lines.value()) {
            String[] columns = line.split("\\|", 2);
            Texts.watching(
                given::add, () -> test.invoke(instance, columns[0].strip(), columns[1].strip()));
          }
        }
      }
    }
    assertThat(given).hasSizeGreaterThan(150);
    given.addAll(examples());
    for (Texts.Given one : given) {
      compare(one);
    }
    assertThat(agreement.parted()).isEmpty();
    assertThat(agreement.refused()).isGreaterThan(150);
    assertThat(agreement.sound()).isGreaterThan(200);
  }

  private static List<Texts.Given> examples() throws Throwable {
    List<Texts.Given> given = new ArrayList<>();
    for (DynamicTest test : new FormatPageTest().readsEveryExample().toList()) {
      Texts.watching(given::add, () -> test.getExecutable().execute());
    }
    return given;
  }

  private void compare(Texts.Given given) {
    Map<DocumentKind, String> texts = texts(given);
    Map<DocumentKind, YamlTree.Parsed> parsed = parsed(texts);
    Trees trees = trees(parsed);
    if (trees.plan() != null) {
      texts.forEach(
          (kind, text) -> {
            JsonNode json = EditorYaml.json(text);
            if (json != null) {
              List<Fault> faults = new ArrayList<>(parsed.get(kind).faults());
              faults.addAll(SchemaAgreement.faults(kind, trees));
              agreement.compare(kind, faults, json, null, given.toString());
            }
          });
    }
  }

  private static Map<DocumentKind, String> texts(Texts.Given given) {
    Map<DocumentKind, String> texts = new EnumMap<>(DocumentKind.class);
    texts.put(DocumentKind.PLAN, given.plan());
    put(texts, DocumentKind.EVENT, given.event());
    put(texts, DocumentKind.LOG, given.log());
    put(texts, DocumentKind.HOUSE, given.house());
    return texts;
  }

  private static void put(
      Map<DocumentKind, String> texts, DocumentKind kind, @Nullable String text) {
    if (text != null) {
      texts.put(kind, text);
    }
  }

  private static Map<DocumentKind, YamlTree.Parsed> parsed(Map<DocumentKind, String> texts) {
    Map<DocumentKind, YamlTree.Parsed> parsed = new EnumMap<>(DocumentKind.class);
    texts.forEach(
        (kind, text) ->
            parsed.put(
                kind,
                YamlTree.read(SchemaAgreement.file(kind), text.getBytes(StandardCharsets.UTF_8))));
    return parsed;
  }

  private static Trees trees(Map<DocumentKind, YamlTree.Parsed> parsed) {
    return new Trees(
        tree(parsed.get(DocumentKind.PLAN)),
        tree(parsed.get(DocumentKind.EVENT)),
        tree(parsed.get(DocumentKind.LOG)),
        tree(parsed.get(DocumentKind.HOUSE)));
  }

  private static @Nullable Tree tree(YamlTree.@Nullable Parsed parsed) {
    return parsed == null ? null : parsed.tree();
  }

  /** Every key at every place it could stand, with every value that some key takes. */
  @Test
  void agreesOnEveryKeyAndEveryKindOfValue() throws Throwable {
    Set<String> keys = new TreeSet<>(FormatPageTest.keysRead());
    keys.addAll(List.of("zzz", "2027-05-30"));
    keys.addAll(Dates.WEEKDAYS);
    keys.addAll(Vocabulary.WITHOUT.all());
    Stream.of(Sport.values()).map(Sport::word).forEach(keys::add);
    List<Trees> documents = examples().stream().map(given -> trees(parsed(texts(given)))).toList();
    Set<String> done = new HashSet<>();
    for (Trees trees : documents) {
      for (DocumentKind kind : SchemaAgreement.KINDS) {
        Tree tree = trees.of(kind);
        if (tree != null) {
          for (TreePath path : TreePath.mappings(tree)) {
            if (done.add(kind + path.shape(tree))) {
              probe(kind, trees, path, path.takesAnyKey() ? USERS_OWN : keys);
            }
          }
        }
      }
    }
    assertThat(done).hasSizeGreaterThan(50);
    assertThat(agreement.parted()).isEmpty();
  }

  private void probe(DocumentKind kind, Trees trees, TreePath path, Set<String> keys) {
    Tree tree = trees.of(kind);
    Place place = tree.place();
    Tree.Mapping at = (Tree.Mapping) path.in(tree);
    Set<String> foreign = new TreeSet<>();
    for (String key : keys) {
      Tree odd = path.child(key).set(tree, odd(place));
      if (SchemaAgreement.faults(kind, trees.with(kind, odd)).stream()
          .anyMatch(fault -> fault.what().startsWith("'" + key + "' is not a key of"))) {
        foreign.add(key);
      }
    }
    foreign(kind, trees, path, foreign);
    for (String key : keys) {
      if (foreign.contains(key)) {
        continue;
      }
      List<Tree> values = new ArrayList<>();
      Tree none = new Tree.Sequence(place, List.of());
      values.add(odd(place));
      values.add(none);
      values.add(new Tree.Mapping(place, new LinkedHashMap<>()));
      boolean listed = refused(kind, trees, path.child(key).set(tree, none)) == 0;
      for (String probe : probes(kind + key)) {
        Tree.Scalar scalar = new Tree.Scalar(place, probe);
        values.add(listed ? new Tree.Sequence(place, List.of(scalar)) : scalar);
      }
      values.forEach(value -> compare(kind, trees, path.child(key).set(tree, value), path, key));
      if (at.entries().containsKey(key)) {
        compare(kind, trees, path.child(key).without(tree), path, key);
      }
    }
  }

  /** All probes where a key is met first, then some of them. */
  private List<String> probes(String key) {
    if (probed.add(key)) {
      return PROBES;
    }
    List<String> some = new ArrayList<>(PROBES);
    Collections.shuffle(some, random);
    return some.subList(0, 6);
  }

  /** Keys the reader does not know, all at once; those the schema lets pass then, one by one. */
  private void foreign(DocumentKind kind, Trees trees, TreePath path, Set<String> keys) {
    Tree tree = trees.of(kind);
    Tree strange = tree;
    for (String key : keys) {
      strange = path.child(key).set(strange, odd(tree.place()));
    }
    Set<String> told =
        SchemaAgreement.errors(kind, PlainJson.of(strange)).stream()
            .filter(error -> error.getKeyword().equals("additionalProperties"))
            .map(Error::getProperty)
            .collect(Collectors.toSet());
    for (String key : keys) {
      if (!told.contains(key)) {
        compare(kind, trees, path.child(key).set(tree, odd(tree.place())), path, key);
      }
    }
  }

  private static Tree odd(Place place) {
    return new Tree.Scalar(place, "?!");
  }

  private static int refused(DocumentKind kind, Trees trees, Tree changed) {
    return SchemaAgreement.faults(kind, trees.with(kind, changed)).size();
  }

  private void compare(DocumentKind kind, Trees trees, Tree changed, TreePath path, String key) {
    compare(kind, trees, changed, path.child(key));
  }

  private void compare(DocumentKind kind, Trees trees, Tree changed, TreePath path) {
    agreement.compare(
        kind,
        SchemaAgreement.faults(kind, trees.with(kind, changed)),
        PlainJson.of(changed),
        path.toString(),
        kind + " with another " + path);
  }

  /** The demo plans and the base of the cases, with anything in any place. */
  @Test
  void agreesOnSoundDocumentsSpoiledAtRandom() throws IOException {
    for (String folder : List.of("plans/mateus", "plans/tove", "rules/base")) {
      Trees trees = trees(parsed(files(Path.of(folder))));
      for (DocumentKind kind : SchemaAgreement.KINDS) {
        Tree tree = trees.of(kind);
        if (tree != null) {
          assertThat(SchemaAgreement.faults(kind, trees)).isEmpty();
          assertThat(SchemaAgreement.errors(kind, PlainJson.of(tree))).isEmpty();
          List<TreePath> ways = TreePath.all(tree);
          for (int i = 0; i < 150; i++) {
            TreePath way = ways.get(1 + random.nextInt(ways.size() - 1));
            compare(kind, trees, spoiled(tree, way, ways), way);
          }
        }
      }
    }
    assertThat(agreement.parted()).isEmpty();
    assertThat(agreement.refused()).isGreaterThan(500);
    assertThat(agreement.sound()).isGreaterThan(100);
  }

  private Tree spoiled(Tree tree, TreePath way, List<TreePath> ways) {
    Tree at = way.in(tree);
    return switch (random.nextInt(5)) {
      case 0 -> way.without(tree);
      case 1 -> way.set(tree, new Tree.Sequence(tree.place(), List.of(at)));
      case 2 -> way.set(tree, ways.get(random.nextInt(ways.size())).in(tree));
      case 3 -> way.set(tree, odd(tree.place()));
      default ->
          way.set(tree, new Tree.Scalar(tree.place(), PROBES.get(random.nextInt(PROBES.size()))));
    };
  }

  private static Map<DocumentKind, String> files(Path folder) throws IOException {
    Map<DocumentKind, String> texts = new EnumMap<>(DocumentKind.class);
    String plan = Files.readString(folder.resolve("plan.yaml"), StandardCharsets.UTF_8);
    texts.put(DocumentKind.PLAN, plan);
    texts.put(
        DocumentKind.LOG, Files.readString(folder.resolve("log.yaml"), StandardCharsets.UTF_8));
    Matcher event = Pattern.compile("(?m)^  event: (\\S+\\.yaml)$").matcher(plan);
    assertThat(event.find()).isTrue();
    texts.put(
        DocumentKind.EVENT,
        Files.readString(folder.resolve(event.group(1)), StandardCharsets.UTF_8));
    Path house = folder.resolveSibling("house.yaml");
    if (Files.isRegularFile(house)) {
      texts.put(DocumentKind.HOUSE, Files.readString(house, StandardCharsets.UTF_8));
    }
    return texts;
  }

  @ParameterizedTest
  @EnumSource
  void partsWhereThePageSaysSo(SchemaDifference kind) {
    compare(example(kind));
    assertThat(agreement.parted()).isEmpty();
    assertThat(agreement.met()).containsExactly(kind);
  }

  private static Texts.Given example(SchemaDifference kind) {
    String plan = Texts.PLAN + "  weeks: []\n";
    String weeks = Texts.PLAN + "  weeks:\n    - starts: 2027-05-31\n";
    String day = weeks + "      days: {mon: [{run: '40min easy'}]}\n";
    return switch (kind) {
      case CALENDAR -> given(plan + "  changes: [{date: 2027-02-29, what: saddle}]\n");
      case MONDAY -> given(weeks.replace("05-31", "06-01"));
      case ORDER ->
          given(
              plan.replace(
                  "Tove Lindqvist", "Tove Lindqvist, heart-rate: {max: 46bpm, resting: 182bpm}"));
      case WEEKS -> given(weeks + "      like: 2027-06-14\n");
      case SET_LINE -> given(day.replace("40min easy", "3x(40min easy"));
      case NAMED_SESSION ->
          new Texts.Given(
              day.replace("40min easy", "fives"),
              Texts.EVENT,
              null,
              "house: {format: 1, sessions: {tens: 10min easy}}\n");
      case SHORT_LEG -> new Texts.Given(plan, Texts.EVENT.replace("42.2km", "42m"), null, null);
      case SAID_TWICE -> logged("{sessions: [{run: 40min, time: 41min}]}");
      case DAY_LINE -> logged("run; sleep 7h15");
      case OWN_WORDS -> given(day.replace("easy'", "easy', kit: [visor]"));
      case FOLDERS ->
          new Texts.Given(
              plan, Texts.EVENT, null, "house: {format: 1, own-rules: [../elsewhere]}\n");
      case FILES -> new Texts.Given(plan, null, null, null);
      case SPELLING -> logged("{missed: {sessions: 0x10}}");
      case YAML -> given(plan.replace("athlete:", "athlete: &a"));
    };
  }

  private static Texts.Given given(String plan) {
    return new Texts.Given(plan, Texts.EVENT, null, null);
  }

  private static Texts.Given logged(String day) {
    return new Texts.Given(
        Texts.PLAN + "  weeks: []\n",
        Texts.EVENT,
        "log:\n  format: 1\n  days:\n    2027-05-30: " + day + "\n",
        null);
  }

  @Test
  void listsEveryDifferenceOnThePage() {
    StringBuilder rows = new StringBuilder("| what | why |\n|---|---|\n");
    for (SchemaDifference kind : SchemaDifference.values()) {
      rows.append(kind.row());
    }
    Golden.assertMatches(
        Path.of("docs/schema/README.md"),
        "<!-- Made by a test from the kinds it knows. -->",
        "<!-- So far. -->",
        rows.toString());
  }
}
