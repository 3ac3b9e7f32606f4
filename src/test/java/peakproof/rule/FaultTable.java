package peakproof.rule;

import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;

/**
 * A table of mistakes in the sound rule. A line {@code ==} names one, {@code -} lines are what the
 * sound rule says, {@code +} lines what stands there instead, and each {@code >} line is a fault:
 * the file's ending, in square brackets the text at which it stands (at a {@code ^} in it, else
 * where it begins; empty for the top of the file), and what is said. Other faults there are none.
 */
final class FaultTable {
  private static final Pattern FAULT = Pattern.compile("> (\\S+) \\[(.*?)] (.*)");

  private FaultTable() {}

  /**
   * One mistake.
   *
   * @param texts the rule's three files with the mistake in them, by ending
   * @param faults every fault there must be
   */
  record Row(String name, Map<String, String> texts, List<String> faults) {}

  static Stream<DynamicTest> tests(String resource, Consumer<Row> check) {
    return rows(resource).stream().map(row -> dynamicTest(row.name(), () -> check.accept(row)));
  }

  private static List<Row> rows(String resource) {
    List<Row> rows = new ArrayList<>();
    for (String block : text(resource).split("(?m)^== ")) {
      if (!block.isBlank() && !block.startsWith("#")) {
        rows.add(row(block.lines().toList()));
      }
    }
    return rows;
  }

  private static Row row(List<String> lines) {
    Map<String, String> texts = RuleFiles.sound();
    StringBuilder before = new StringBuilder();
    StringBuilder after = new StringBuilder();
    boolean replaced = false;
    List<String> expected = new ArrayList<>();
    for (String line : lines.subList(1, lines.size())) {
      if (line.startsWith("- ")) {
        if (replaced) {
          change(texts, before, after);
        }
        replaced = false;
        before.append(line.substring(2)).append('\n');
      } else if (line.startsWith("+")) {
        replaced = true;
        after.append(line.length() > 1 ? line.substring(2) + "\n" : "");
      } else if (line.startsWith("> ")) {
        expected.add(line);
      }
    }
    if (replaced) {
      change(texts, before, after);
    }
    return new Row(
        lines.get(0), texts, expected.stream().map(line -> fault(line, texts)).sorted().toList());
  }

  /** Lines to take out that follow each other belong together until new ones come. */
  private static void change(Map<String, String> texts, StringBuilder before, StringBuilder after) {
    String old = before.toString();
    List<String> holders =
        texts.keySet().stream().filter(ending -> text(texts, ending).contains(old)).toList();
    if (holders.size() != 1) {
      throw new IllegalArgumentException(holders + " hold " + old);
    }
    String ending = holders.get(0);
    texts.put(ending, text(texts, ending).replace(old, after.toString()));
    before.setLength(0);
    after.setLength(0);
  }

  private static String text(Map<String, String> texts, String ending) {
    return Objects.requireNonNull(texts.get(ending));
  }

  private static String fault(String line, Map<String, String> texts) {
    Matcher matcher = FAULT.matcher(line);
    if (!matcher.matches()) {
      throw new IllegalArgumentException(line);
    }
    String ending = matcher.group(1);
    String text = text(texts, ending);
    String mark = matcher.group(2).replace("\\n", "\n");
    int found = text.indexOf(mark.replace("^", ""));
    if (found < 0) {
      throw new IllegalArgumentException("nowhere in the file: " + line);
    }
    int at = found + Math.max(0, mark.indexOf('^'));
    long row = text.substring(0, at).chars().filter(c -> c == '\n').count() + 1;
    int column = at - text.lastIndexOf('\n', at - 1);
    return "swim/" + RuleFiles.SOUND + ending + ":" + row + ":" + column + ": " + matcher.group(3);
  }

  static String text(String resource) {
    try (InputStream in = FaultTable.class.getResourceAsStream(resource)) {
      return new String(
          Objects.requireNonNull(in, resource).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unexpected) {
      throw new UncheckedIOException(unexpected);
    }
  }
}
