package peakproof.rule;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import peakproof.Golden;
import peakproof.document.DocumentSchemas;
import peakproof.document.Fault;
import peakproof.document.PlainJson;
import peakproof.document.Tree;
import peakproof.document.TreePath;
import peakproof.document.YamlTree;

/** Holds the schema of cards to their reader, on the shipped cards as they are and spoiled. */
class CardSchemaTest {
  /** What the reader refuses and no schema tells, in words of the page. */
  private static final Map<String, String> DIFFERENCES = differences();

  private static final List<String> PROBES =
      List.of("none", "3", "75%", "D-21", "yes", "off", "HOLD", "words", "race.water", "", "Run");

  private final Schema schema =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7)
          .getSchema(CardSchema.schema());
  private final Random random = new Random(20270704);
  private final Set<String> met = new TreeSet<>();

  private static Map<String, String> differences() {
    Map<String, String> all = new LinkedHashMap<>();
    all.put(
        "value of another kind or out of its range", "out of range|of another kind|is no value");
    all.put("list of steps out of order", "not past the step before");
    all.put(
        "caution, source or reason to hold that the rest of the card asks for",
        "no caution|has no source|that can HOLD must|cannot HOLD says|'from-day' is for");
    all.put("name that is not the file's", "the card is of");
    return all;
  }

  @Test
  void keepsTheSchemaOfCards() {
    Golden.assertMatches(
        Path.of("docs/schema/card.schema.json"), DocumentSchemas.text(CardSchema.schema()));
  }

  @Test
  void agreesOnEveryCardSoundAndSpoiled() throws IOException {
    List<String> parted = new ArrayList<>();
    List<Path> cards;
    try (Stream<Path> files = Files.walk(Path.of("rules"))) {
      cards =
          files
              .filter(file -> file.toString().endsWith(".drl"))
              .map(file -> Path.of(file.toString().replace(".drl", ".yaml")))
              .sorted()
              .toList();
    }
    for (Path card : cards) {
      Tree tree =
          Objects.requireNonNull(YamlTree.read(card.toString(), Files.readAllBytes(card)).tree());
      compare(card, tree, "as it is", parted);
      List<TreePath> ways = TreePath.all(tree);
      TreePath step = new TreePath(List.of("steps", 0, "from"));
      if (ways.contains(step)) {
        Tree late = new Tree.Scalar(tree.place(), "900%");
        compare(card, step.set(tree, late), step.toString(), parted);
      }
      for (int i = 0; i < 60; i++) {
        TreePath way = ways.get(1 + random.nextInt(ways.size() - 1));
        Tree spoiled =
            switch (random.nextInt(4)) {
              case 0 -> way.without(tree);
              case 1 -> way.set(tree, ways.get(random.nextInt(ways.size())).in(tree));
              case 2 -> way.set(tree, new Tree.Sequence(tree.place(), List.of(way.in(tree))));
              default -> way.set(tree, probe(tree));
            };
        compare(card, spoiled, way.toString(), parted);
      }
    }
    assertThat(parted).isEmpty();
    assertThat(met).containsExactlyInAnyOrderElementsOf(DIFFERENCES.keySet());
    String page = Files.readString(Path.of("docs/schema/README.md"));
    assertThat(DIFFERENCES.keySet()).allSatisfy(kind -> assertThat(page).contains("- a " + kind));
  }

  private Tree probe(Tree tree) {
    String text = PROBES.get(random.nextInt(PROBES.size()));
    return text.isEmpty()
        ? new Tree.Mapping(tree.place(), Map.of())
        : new Tree.Scalar(tree.place(), text);
  }

  private void compare(Path card, Tree tree, String how, List<String> parted) {
    String slug = card.getFileName().toString().replace(".yaml", "");
    String theme = card.getParent().getFileName().toString();
    List<Fault> faults = CardReader.read(slug, theme, tree).faults();
    List<?> errors = schema.validate(PlainJson.of(tree));
    String name = card + " " + how + ": ";
    if (faults.isEmpty() && !errors.isEmpty()) {
      parted.add(name + "only the schema: " + errors);
    }
    if (errors.isEmpty()) {
      for (Fault fault : faults) {
        String kind =
            DIFFERENCES.entrySet().stream()
                .filter(known -> fault.what().matches(".*(" + known.getValue() + ").*"))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse(null);
        if (kind == null) {
          parted.add(name + "only the reader: " + fault);
        } else {
          met.add(kind);
        }
      }
    }
  }
}
