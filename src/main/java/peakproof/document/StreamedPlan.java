package peakproof.document;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Reads a plan with its event, log and house out of one line of JSON: an object in which each
 * document stands under its own name, either as an object with the keys of the YAML file or as a
 * text that holds the file. Nothing else is read, so a stranger's line leads to no file: a house in
 * it brings no rules of its own.
 *
 * <p>Places name the document. In a text they are those of the text; in an object the line is 1 and
 * the column that of the whole line of JSON.
 */
public final class StreamedPlan {
  /** How places name what is outside of every document. */
  public static final String NAME = "line";

  /** How many bytes a line may hold, as many as a file. */
  public static final int BYTE_LIMIT = YamlTree.BYTE_LIMIT;

  private static final JsonFactory FACTORY = new JsonFactory();
  private static final String EXPECTED = "expected {\"plan\": ..., \"log\": ..., \"event\": ...}";
  private static final List<String> DOCUMENTS = List.of("plan", "log", "event", "house");
  private static final Place START = new Place(NAME, 1, 1);

  private final Faults faults = new Faults();
  private final Map<String, Tree> trees = new LinkedHashMap<>();
  private final Source source;
  private final JsonParser parser;
  private final String text;
  private int chars;
  private int points;

  private StreamedPlan(Source source) throws IOException {
    this.source = source;
    this.text = source.text();
    this.parser = FACTORY.createParser(text);
  }

  /** What to say of a line that holds more than {@link #BYTE_LIMIT}. */
  public static Reading tooLong() {
    Faults faults = new Faults();
    faults.add(
        START,
        "this line is longer than 2 MiB",
        "expected the plan of one athlete",
        "check that a line break follows each plan");
    return new Reading(null, faults.sorted());
  }

  /**
   * Reads a line's bytes, in UTF-8.
   *
   * @param house the house file to use instead of what the line says
   */
  public static Reading read(byte[] line, @Nullable Path house) {
    Faults undecoded = new Faults();
    Source source = YamlTree.decode(NAME, line, undecoded);
    if (source == null) {
      return new Reading(null, undecoded.sorted());
    }
    try {
      return new StreamedPlan(source).read(house);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  private Reading read(@Nullable Path houseFile) throws IOException {
    try (parser) {
      readObject();
    } catch (JsonProcessingException wrong) {
      JsonLocation where = wrong.getLocation();
      faults.add(
          source.place(where == null ? 0 : point((int) Math.max(0, where.getCharOffset()))),
          "this cannot be read as JSON",
          EXPECTED,
          "have it written by a program that knows JSON, each plan on one line");
    }
    Tree plan = trees.get("plan");
    if (plan == null && faults.none()) {
      faults.add(START, "there is no plan", EXPECTED, "add the plan");
    }
    if (plan == null || !faults.none()) {
      return new Reading(null, faults.sorted());
    }
    Tree house =
        houseFile == null
            ? withoutOwnRules(trees.get("house"))
            : new DocumentFiles(faults).open(houseFile);
    Reading reading = Documents.read("plan", plan, trees.get("event"), trees.get("log"), house);
    if (faults.none()) {
      return reading;
    }
    faults.addAll(reading.faults());
    return new Reading(null, faults.sorted());
  }

  private void readObject() throws IOException {
    if (parser.nextToken() != JsonToken.START_OBJECT) {
      faults.add(START, "this is no object", EXPECTED, "put the documents in { }");
      return;
    }
    while (parser.nextToken() == JsonToken.FIELD_NAME) {
      String name = parser.currentName();
      int offset = offset();
      if (!DOCUMENTS.contains(name)) {
        faults.add(
            source.place(offset),
            "'" + name + "' is no document",
            "expected plan, log, event or house",
            Nearest.advice(name, DOCUMENTS, "leave it out"));
        parser.nextToken();
        parser.skipChildren();
      } else if (!readDocument(name, offset)) {
        return;
      }
    }
    if (parser.nextToken() != null) {
      faults.add(
          source.place(offset()),
          "something follows the object",
          "expected one plan a line",
          "put it on a line of its own");
    }
  }

  /** Reads what stands under a name; false when nothing after it can be read. */
  private boolean readDocument(String name, int offset) throws IOException {
    if (trees.containsKey(name)) {
      faults.add(
          source.place(offset),
          "'" + name + "' is written twice",
          "expected each document once",
          "leave one of the two out");
    }
    JsonToken token = parser.nextToken();
    if (token == JsonToken.VALUE_STRING) {
      YamlTree.Parsed parsed =
          YamlTree.read(name, parser.getText().getBytes(StandardCharsets.UTF_8));
      faults.addAll(parsed.faults());
      keep(name, parsed.tree());
      return true;
    }
    if (token != JsonToken.START_OBJECT) {
      faults.add(
          source.place(offset),
          "'" + name + "' is neither an object nor a text",
          "expected the keys of the " + name + " in { }, or its YAML as a text",
          token == JsonToken.VALUE_NULL && !name.equals("plan") ? "leave it out" : "write it so");
      parser.skipChildren();
      return true;
    }
    TreeBuilder builder = new TreeBuilder(source.named(name), faults);
    return builder.take(JsonToken.START_OBJECT, "", offset)
        && builder.take(JsonToken.FIELD_NAME, name, offset)
        && takeObject(builder)
        && builder.take(JsonToken.END_OBJECT, "", offset())
        && keep(name, builder.root());
  }

  private boolean takeObject(TreeBuilder builder) throws IOException {
    int depth = 0;
    JsonToken token = parser.currentToken();
    do {
      if (!builder.take(token, Objects.requireNonNullElse(parser.getText(), ""), offset())) {
        return false;
      }
      depth += token.isStructStart() ? 1 : token.isStructEnd() ? -1 : 0;
      token = depth == 0 ? token : next();
    } while (depth > 0);
    return true;
  }

  private JsonToken next() throws IOException {
    return Objects.requireNonNull(parser.nextToken());
  }

  private boolean keep(String name, @Nullable Tree tree) {
    if (tree != null) {
      trees.put(name, tree);
    }
    return true;
  }

  /** Rules are programs, and a line may come from anybody. */
  private @Nullable Tree withoutOwnRules(@Nullable Tree house) {
    Tree.Entry content = house == null ? null : house.entry("house");
    Tree.Entry own = content == null ? null : content.value().entry("own-rules");
    if (house == null || content == null || own == null) {
      return house;
    }
    faults.add(
        own.key(),
        "a house in a stream brings no rules of its own",
        "expected the numbers and words of the house only",
        "take 'own-rules' out; whoever runs the audit can name the folder with --rules");
    Map<String, Tree.Entry> others =
        new LinkedHashMap<>(((Tree.Mapping) content.value()).entries());
    others.remove("own-rules");
    Tree rest = new Tree.Mapping(content.value().place(), others);
    return new Tree.Mapping(house.place(), Map.of("house", new Tree.Entry(content.key(), rest)));
  }

  private int offset() {
    return point((int) Math.max(0, parser.currentTokenLocation().getCharOffset()));
  }

  /** A JSON parser counts in chars, a source in code points; both only go forward. */
  private int point(int offset) {
    int end = Math.min(offset, text.length());
    if (end > chars) {
      points += text.codePointCount(chars, end);
      chars = end;
    }
    return points;
  }
}
