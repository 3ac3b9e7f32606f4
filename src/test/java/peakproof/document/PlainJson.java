package peakproof.document;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.regex.Pattern;

/**
 * A document as an editor hands it to a schema: plain texts become what the core schema of YAML 1.2
 * (section 10.3.2 of its specification, from memory) makes of them, quoted ones stay text.
 */
public final class PlainJson {
  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
  static final Pattern FLAG = Pattern.compile("true|True|TRUE|false|False|FALSE");
  static final Pattern WHOLE = Pattern.compile("[-+]?[0-9]+");
  static final Pattern HEXADECIMAL = Pattern.compile("0x[0-9a-fA-F]+");
  static final Pattern FLOAT =
      Pattern.compile("[-+]?(?:\\.[0-9]+|[0-9]+(?:\\.[0-9]*)?)(?:[eE][-+]?[0-9]+)?");

  private PlainJson() {}

  public static JsonNode of(Tree tree) {
    if (tree instanceof Tree.Mapping mapping) {
      ObjectNode node = JSON.objectNode();
      mapping.entries().forEach((key, entry) -> node.set(key, of(entry.value())));
      return node;
    }
    if (tree instanceof Tree.Sequence sequence) {
      ArrayNode node = JSON.arrayNode();
      sequence.items().forEach(item -> node.add(of(item)));
      return node;
    }
    Tree.Scalar scalar = (Tree.Scalar) tree;
    return switch (scalar.style()) {
      case FAULTY -> JSON.nullNode();
      case PLAIN -> plain(scalar.text());
      default -> JSON.textNode(scalar.text());
    };
  }

  private static JsonNode plain(String text) {
    if (FLAG.matcher(text).matches()) {
      return JSON.booleanNode(text.equalsIgnoreCase("true"));
    }
    if (WHOLE.matcher(text).matches()) {
      return JSON.numberNode(new BigInteger(text.startsWith("+") ? text.substring(1) : text));
    }
    if (HEXADECIMAL.matcher(text).matches()) {
      return JSON.numberNode(new BigInteger(text.substring(2), 16));
    }
    return FLOAT.matcher(text).matches()
        ? JSON.numberNode(new BigDecimal(text.endsWith(".") ? text + "0" : text))
        : JSON.textNode(text);
  }
}
