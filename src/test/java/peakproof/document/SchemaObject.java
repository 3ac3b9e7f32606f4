package peakproof.document;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/**
 * One mapping of a schema: its keys, each with what it takes and the format page's words for it.
 */
final class SchemaObject {
  private final FormatSentences sentences;
  private final ObjectNode node = JsonNodeFactory.instance.objectNode();
  private final ObjectNode properties;

  SchemaObject(FormatSentences sentences) {
    this.sentences = sentences;
    node.put("type", "object");
    node.put("additionalProperties", false);
    this.properties = node.putObject("properties");
  }

  SchemaObject key(String key, JsonNode takes) {
    ObjectNode described = JsonNodeFactory.instance.objectNode();
    String sentence = sentences.of(key);
    if (sentence != null) {
      described.put("description", sentence);
    }
    if (takes.has("$ref") && sentence != null) {
      // A sibling of $ref counts for nothing in draft-07.
      described.putArray("allOf").add(takes);
    } else {
      described.setAll((ObjectNode) takes);
    }
    properties.set(key, described);
    return this;
  }

  /** The keys of a mapping below a key, with that key's words. */
  FormatSentences within(String key) {
    return sentences.within(key);
  }

  SchemaObject keys(List<String> keys, JsonNode takes) {
    keys.forEach(key -> key(key, takes));
    return this;
  }

  SchemaObject required(String... keys) {
    for (String key : keys) {
      node.withArray("required").add(key);
    }
    return this;
  }

  /** A key that stands only beside one of others. */
  SchemaObject beside(String key, String... others) {
    ObjectNode dependencies = node.withObject("/dependencies");
    if (others.length == 1) {
      dependencies.putArray(key).add(others[0]);
    } else {
      for (String other : others) {
        dependencies.withObject("/" + key).withArray("anyOf").add(SchemaObject.having(other));
      }
    }
    return this;
  }

  /** Keys of which exactly one stands. */
  SchemaObject oneOf(List<String> keys) {
    for (String key : keys) {
      node.withArray("oneOf").add(having(key));
    }
    return this;
  }

  /** Keys that do not stand together. */
  SchemaObject notBoth(String one, String other) {
    node.withArray("allOf").addObject().set("not", having(one, other));
    return this;
  }

  /** What holds of the mapping when something else does. */
  SchemaObject when(ObjectNode condition, ObjectNode then) {
    ObjectNode both = node.withArray("allOf").addObject();
    both.set("if", condition);
    both.set("then", then);
    return this;
  }

  ObjectNode node() {
    return node;
  }

  static ObjectNode having(String... keys) {
    ObjectNode having = JsonNodeFactory.instance.objectNode();
    for (String key : keys) {
      having.withArray("required").add(key);
    }
    return having;
  }

  static ObjectNode reference(String definition) {
    return JsonNodeFactory.instance.objectNode().put("$ref", "#/definitions/" + definition);
  }

  /** A mapping with keys of the user's own. */
  static ObjectNode free(JsonNode values) {
    ObjectNode node = JsonNodeFactory.instance.objectNode().put("type", "object");
    node.set("additionalProperties", values);
    return node;
  }
}
