package peakproof.document;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import peakproof.Golden;

/** Holds the schemas of {@code docs/schema} to the code they are made of. */
class DocumentSchemasTest {
  private static final Path FOLDER = Path.of("docs/schema");

  @ParameterizedTest
  @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "MAPPING")
  void keepsTheSchemaOfEachDocument(DocumentKind kind) {
    Golden.assertMatches(
        FOLDER.resolve(kind.key() + ".schema.json"),
        DocumentSchemas.text(DocumentSchemas.of(kind)));
  }

  @ParameterizedTest
  @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "MAPPING")
  void showsOnlyExamplesThatItsOwnPatternTakes(DocumentKind kind) {
    List<JsonNode> shown = new ArrayList<>();
    for (JsonNode node : DocumentSchemas.of(kind).findParents("examples")) {
      if (node.has("pattern")) {
        shown.add(node);
        for (JsonNode example : node.get("examples")) {
          assertThat(example.asText())
              .containsPattern(Pattern.compile(node.get("pattern").asText()));
        }
      }
    }
    assertThat(shown).hasSizeGreaterThan(3);
  }
}
