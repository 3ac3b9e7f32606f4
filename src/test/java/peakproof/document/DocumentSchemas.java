package peakproof.document;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** The schemas of the documents a club keeps, made of the words and units of the readers. */
public final class DocumentSchemas {
  /** Editors' YAML support goes up to this draft. */
  public static final String DRAFT = "http://json-schema.org/draft-07/schema#";

  private static final ObjectMapper MAPPER = new ObjectMapper();

  private DocumentSchemas() {}

  static ObjectNode of(DocumentKind kind) {
    ObjectNode definitions = JsonNodeFactory.instance.objectNode();
    ObjectNode content =
        switch (kind) {
          case PLAN -> PlanSchema.plan(definitions);
          case LOG -> LogSchema.log(definitions);
          case EVENT -> EventSchema.event();
          case HOUSE -> HouseSchema.house();
          case MAPPING -> throw new IllegalArgumentException("a mapping has no schema");
        };
    ObjectNode schema =
        begun(
            switch (kind) {
              case PLAN -> "A plan";
              case LOG -> "A log";
              case EVENT -> "An event";
              case HOUSE -> "A house";
              case MAPPING -> "A mapping";
            });
    schema.put("type", "object");
    schema.put("additionalProperties", false);
    schema.putArray("required").add(kind.key());
    schema.putObject("properties").set(kind.key(), content);
    if (!definitions.isEmpty()) {
      schema.set("definitions", definitions);
    }
    return schema;
  }

  /** A schema with what stands at the head of each. */
  public static ObjectNode begun(String title) {
    return JsonNodeFactory.instance
        .objectNode()
        .put("$schema", DRAFT)
        .put("title", title)
        .put("$comment", "Made from the code by a test; change the code, not this file.");
  }

  /** The schema as its file holds it. */
  public static String text(JsonNode schema) {
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter(
                Separators.createDefaultInstance()
                    .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
                    .withObjectEmptySeparator("")
                    .withArrayEmptySeparator(""))
            .withObjectIndenter(indenter);
    try {
      return MAPPER.writer(printer).writeValueAsString(schema) + "\n";
    } catch (JsonProcessingException impossible) {
      throw new AssertionError(impossible);
    }
  }
}
