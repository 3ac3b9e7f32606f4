package peakproof.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import peakproof.begin.Item;
import peakproof.report.Printable;

/** Asks for one item after the other on a terminal, again where an answer cannot be read. */
final class Questions {
  private final BufferedReader in;
  private final PrintWriter out;

  Questions(InputStream in, PrintWriter out) {
    this.in = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
    this.out = out;
  }

  /** The answers with those given before; null when whoever answers is gone. */
  @Nullable Map<String, String> ask(Iterable<Item> items, Map<String, String> given) {
    Map<String, String> answers = new LinkedHashMap<>(given);
    for (Item item : items) {
      if (!answers.containsKey(item.name())) {
        String answer = ask(item);
        if (answer == null) {
          return null;
        }
        if (!answer.isEmpty()) {
          answers.put(item.name(), answer);
        }
      }
    }
    return answers;
  }

  /** An answer that can be read, empty for none; null at the end of the input. */
  private @Nullable String ask(Item item) {
    while (true) {
      out.print(item.question() + " " + hint(item) + "\n> ");
      out.flush();
      String line = line();
      if (line == null) {
        out.println();
        return null;
      }
      String answer = line.strip();
      String trouble = trouble(item, answer);
      if (trouble == null) {
        return answer;
      }
      out.println("  " + Printable.of(trouble));
    }
  }

  private static @Nullable String trouble(Item item, String answer) {
    if (answer.isEmpty()) {
      return item.required() ? "This one is needed, such as " + item.example() : null;
    }
    return item.check().apply(answer);
  }

  private static String hint(Item item) {
    if (item.required()) {
      return "(such as " + item.example() + ")";
    }
    return item.fallback() == null
        ? "(such as " + item.example() + "; Enter leaves it out)"
        : "(Enter for " + item.fallback() + ")";
  }

  private @Nullable String line() {
    try {
      return in.readLine();
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
