package peakproof.rule;

import static java.util.Map.entry;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import peakproof.document.Fault;
import peakproof.document.Place;

/**
 * A rule file's text, looked at before any parser sees it: a rules folder may come from a stranger,
 * and a file that is short, flat and made of few characters leaves a parser nothing to trip over.
 */
final class RuleText {
  private static final int LINES = 32;
  private static final int COLUMNS = 120;
  private static final int BYTES = 4096;
  private static final int DEPTH = 6;
  private static final String MARKS = " \t\n.,:;()!&|=<>+-*/$\"_";
  private static final Map<Character, String> REASONS =
      Map.ofEntries(
          entry('@', "it would begin an annotation"),
          entry('{', "it belongs to a block of Java"),
          entry('}', "it belongs to a block of Java"),
          entry('[', "it belongs to a list or a parameter of an operator"),
          entry(']', "it belongs to a list or a parameter of an operator"),
          entry('\\', "it would begin an escape"),
          entry('#', "it would begin a cast"),
          entry('?', "it belongs to a query or a choice"),
          entry('\'', "names stand in double quotes"),
          entry('\ufffd', "a text in UTF-8"));

  private final String file;
  private final String text;

  RuleText(String file, String text) {
    this.file = file;
    this.text = text.replace("\r\n", "\n");
  }

  String file() {
    return file;
  }

  String text() {
    return text;
  }

  /** The place of a character, counted from 0. */
  Place at(int offset) {
    int end = Math.max(0, Math.min(offset, text.length()));
    int line = 1;
    int start = 0;
    for (int i = text.indexOf('\n'); i >= 0 && i < end; i = text.indexOf('\n', i + 1)) {
      line++;
      start = i + 1;
    }
    return new Place(file, line, 1 + text.codePointCount(start, end));
  }

  /** Where a line begins, counted from 0. */
  static int offset(String text, int line) {
    int offset = 0;
    for (int i = 1; i < line; i++) {
      int end = text.indexOf('\n', offset);
      if (end < 0) {
        return offset;
      }
      offset = end + 1;
    }
    return offset;
  }

  Fault fault(int offset, String what, String expected, String instead) {
    return new Fault(at(offset), what, expected, instead);
  }

  /** What is wrong with the text as such; empty when a parser may read it. */
  List<Fault> faults() {
    if (text.length() > BYTES) {
      return List.of(
          fault(
              0,
              "the file has more than " + BYTES + " characters",
              "a rule that fits on a screen",
              "move the computing into a fact and keep the condition"));
    }
    List<Fault> faults = new ArrayList<>();
    List<String> lines = text.lines().toList();
    shape(lines, faults);
    int offset = 0;
    Deque<Integer> open = new ArrayDeque<>();
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      if (i >= 2) {
        marks(line, offset, faults);
        nesting(line, offset, open, faults);
      } else {
        prose(line, offset, faults);
      }
      offset += line.length() + 1;
    }
    return faults;
  }

  private void shape(List<String> lines, List<Fault> faults) {
    for (int i = 0, offset = 0; i < 2; i++) {
      String line = i < lines.size() ? lines.get(i) : "";
      if (!line.startsWith("// ") || line.length() < 10) {
        faults.add(
            fault(
                offset,
                "line " + (i + 1) + " is no comment",
                "a rule begins with two comment lines",
                i == 0 ? "// what the rule catches" : "// when it stays silent"));
      }
      offset += line.length() + 1;
    }
    if (lines.size() > LINES) {
      faults.add(
          new Fault(
              new Place(file, LINES + 1, 1),
              "the file has " + lines.size() + " lines",
              "a rule has at most " + LINES,
              "move the computing into a fact and keep the condition"));
    }
  }

  private void marks(String line, int offset, List<Fault> faults) {
    if (line.length() > COLUMNS) {
      faults.add(
          fault(
              offset + COLUMNS,
              "the line has " + line.length() + " characters",
              "a line has at most " + COLUMNS,
              "break it after a comma"));
    }
    int comment = Math.max(line.indexOf("//"), line.indexOf("/*"));
    if (comment >= 0) {
      faults.add(
          fault(
              offset + comment,
              "a comment inside the rule",
              "the two lines at the top say it all",
              "take it out, or say it in the card"));
      return;
    }
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      boolean known =
          (c >= 'a' && c <= 'z')
              || (c >= 'A' && c <= 'Z')
              || (c >= '0' && c <= '9')
              || MARKS.indexOf(c) >= 0;
      if (!known) {
        faults.add(stray(offset + i, line.codePointAt(i)));
        return;
      }
    }
  }

  /** A comment may hold any writing, but nothing that could show a reader another text. */
  private void prose(String line, int offset, List<Fault> faults) {
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (c == '\\' || c == '\ufffd' || hidden(line.codePointAt(i))) {
        faults.add(stray(offset + i, line.codePointAt(i)));
        return;
      }
    }
  }

  private static boolean hidden(int codePoint) {
    return switch (Character.getType(codePoint)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.PRIVATE_USE,
          Character.UNASSIGNED ->
          true;
      default -> false;
    };
  }

  private Fault stray(int offset, int codePoint) {
    String reason =
        REASONS.getOrDefault(
            (char) codePoint, "letters without accents, digits and the marks of a comparison");
    return fault(
        offset,
        (hidden(codePoint)
                ? String.format(Locale.ROOT, "the character U+%04X", codePoint)
                : "'" + Character.toString(codePoint) + "'")
            + " has no place in a rule",
        reason,
        "a rule names facts, compares their fields and reports");
  }

  private void nesting(String line, int offset, Deque<Integer> open, List<Fault> faults) {
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (c == '(') {
        open.push(offset + i);
        if (open.size() == DEPTH + 1) {
          faults.add(
              fault(
                  offset + i,
                  "brackets are nested more than " + DEPTH + " deep",
                  "a condition a coach can read",
                  "split the condition, or make it a field of the fact"));
        }
      } else if (c == ')' && !open.isEmpty()) {
        open.pop();
      }
    }
  }
}
