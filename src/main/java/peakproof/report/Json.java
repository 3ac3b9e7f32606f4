package peakproof.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.PrettyPrinter;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Place;

/** Writes one JSON object, the same bytes for the same values. */
final class Json {
  private static final JsonFactory FACTORY = new JsonFactory();

  private final JsonGenerator generator;

  private Json(JsonGenerator generator) {
    this.generator = generator;
  }

  /** Writes what is inside an object. */
  @FunctionalInterface
  interface Inside {
    void write(Json json) throws IOException;
  }

  /** Writes what is inside one object of an array. */
  @FunctionalInterface
  interface Each<T> {
    void write(Json json, T value) throws IOException;
  }

  /** The object as text. */
  static String of(Inside inside) {
    return text(inside, layout());
  }

  /** The object as text on one line. */
  static String line(Inside inside) {
    return text(inside, null);
  }

  private static String text(Inside inside, @Nullable PrettyPrinter layout) {
    StringWriter text = new StringWriter();
    try (JsonGenerator generator = FACTORY.createGenerator(text)) {
      if (layout != null) {
        generator.setPrettyPrinter(layout);
      }
      generator.writeStartObject();
      inside.write(new Json(generator));
      generator.writeEndObject();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return text.append('\n').toString();
  }

  private static DefaultPrettyPrinter layout() {
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    return new DefaultPrettyPrinter(
            Separators.createDefaultInstance()
                .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
                .withObjectEmptySeparator("")
                .withArrayEmptySeparator(""))
        .withObjectIndenter(indenter)
        .withArrayIndenter(indenter);
  }

  void text(String name, @Nullable String value) throws IOException {
    if (value == null) {
      generator.writeNullField(name);
    } else {
      generator.writeStringField(name, value);
    }
  }

  void date(String name, @Nullable LocalDate value) throws IOException {
    text(name, value == null ? null : value.toString());
  }

  void count(String name, long value) throws IOException {
    generator.writeNumberField(name, value);
  }

  void truth(String name, boolean value) throws IOException {
    generator.writeBooleanField(name, value);
  }

  /** The shortest decimal that reads back as the same number, without an exponent. */
  void number(String name, @Nullable Double value) throws IOException {
    if (value == null) {
      generator.writeNullField(name);
    } else {
      generator.writeFieldName(name);
      generator.writeNumber(plain(value));
    }
  }

  static String plain(double number) {
    return number == 0
        ? "0"
        : new BigDecimal(Double.toString(number)).stripTrailingZeros().toPlainString();
  }

  void texts(String name, List<String> values) throws IOException {
    generator.writeArrayFieldStart(name);
    for (String value : values) {
      generator.writeString(value);
    }
    generator.writeEndArray();
  }

  void object(String name, Inside inside) throws IOException {
    generator.writeObjectFieldStart(name);
    inside.write(this);
    generator.writeEndObject();
  }

  <T> void each(String name, List<T> values, Each<T> inside) throws IOException {
    generator.writeArrayFieldStart(name);
    for (T value : values) {
      generator.writeStartObject();
      inside.write(this, value);
      generator.writeEndObject();
    }
    generator.writeEndArray();
  }

  /** File and line of entries, each once. */
  void places(String name, List<Place> places) throws IOException {
    each(
        name,
        places.stream().distinct().toList(),
        (json, place) -> {
          json.text("file", place.file());
          json.count("line", place.line());
        });
  }
}
