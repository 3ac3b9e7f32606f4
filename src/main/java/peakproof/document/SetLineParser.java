package peakproof.document;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Recursive descent over a set line. A part that cannot be read is told once and passed over, so
 * that one line can give several faults but one slip only one.
 */
final class SetLineParser {
  private static final int NESTING_LIMIT = 4;
  private static final int COUNT_LIMIT = 999;

  /** Repetitions in all, brackets multiplied; beyond it a slip is certain. */
  private static final int REPETITION_LIMIT = 9_999;

  private static final Pattern COUNT = Pattern.compile("([0-9]+)\\s*([x×X*])");
  private static final Pattern AMOUNT =
      Pattern.compile(
          "[a-zA-Z][a-zA-Z-]*|[0-9.:]+ +(?:km?|mi(?:n|ns|nutes?|les?)?|m(?:et(?:er|re)s?)?|y(?:d|ds|ards?)|h(?:rs?|ours?)?|s(?:ec|ecs|econds?)?)(?![a-zA-Z0-9-])|[0-9.:]+(?:[a-zA-Z'\"]+[0-9.:]*)*");
  private static final Pattern DECIMAL_COMMA = Pattern.compile("[0-9]{1,2},[0-9]+ ?(?:km|mi|h)\\b");
  private static final String PART = "expected a part such as '400 easy' or '8x50 drill r15s'";

  private final Sport sport;
  private final SetLineCursor cursor;
  private final List<SetLines.Problem> problems = new ArrayList<>();

  SetLineParser(String text, Sport sport) {
    this.sport = sport;
    this.cursor = new SetLineCursor(text);
  }

  List<SetLines.Problem> problems() {
    return problems;
  }

  List<SetLine.Part> whole() {
    List<SetLine.Part> parts = line(0, 1);
    while (!cursor.atEnd()) {
      problem(
          cursor.offset(),
          "')' closes no bracket",
          "expected '(' before it",
          "leave it out, or write '3x(' where the repeated part begins");
      cursor.take();
      cursor.skipPart();
      if (cursor.separator()) {
        parts.addAll(line(0, 1));
      }
    }
    return parts;
  }

  /** Reads parts up to the end or to a closing bracket, which it leaves. */
  private List<SetLine.Part> line(int depth, int repetitions) {
    List<SetLine.Part> parts = new ArrayList<>();
    cursor.skipBlank();
    do {
      if (cursor.atPartEnd()) {
        problem(cursor.offset(), "a part is missing here", PART, "write it, or leave the ',' out");
        continue;
      }
      SetLine.Part part = part(depth, repetitions);
      if (part == null) {
        cursor.skipPart();
      } else {
        parts.add(part);
        unlessFinished();
      }
    } while (cursor.separator());
    return parts;
  }

  private void unlessFinished() {
    cursor.skipSpaces();
    if (cursor.atPartEnd()) {
      return;
    }
    String word = cursor.word();
    problem(
        cursor.offset(),
        "'" + word + "' stands where the part should end",
        "expected ',' or the end of the line",
        Character.isDigit(word.codePointAt(0))
            ? "write ',' before it"
            : "write effort, target and kit before the rest, and ',' between parts");
    cursor.skipPart();
  }

  private SetLine.@Nullable Part part(int depth, int repetitions) {
    int start = cursor.offset();
    Matcher counted = cursor.match(COUNT);
    int count = counted == null ? 1 : count(start, counted);
    if (count == 0) {
      return null;
    }
    if ((long) count * repetitions > REPETITION_LIMIT) {
      problem(
          start,
          "this makes more than " + REPETITION_LIMIT + " repetitions",
          "expected what can be done in a session",
          "check the numbers before 'x'");
      return null;
    }
    cursor.skipSpaces();
    boolean repeated = counted != null || repetitions > 1;
    int at = cursor.offset();
    SetLine.Work work =
        cursor.peek() == '(' ? group(at, depth, repetitions * count) : amount(at, repeated);
    if (work == null) {
      return null;
    }
    boolean bareTime = work instanceof SetLine.Time;
    SetLineWords words = new SetLineWords(cursor, this::problem);
    return words.read(bareTime) ? words.part(count, work) : null;
  }

  private int count(int start, Matcher counted) {
    int count = counted.group(1).length() > 4 ? 0 : Integer.parseInt(counted.group(1));
    if (count < 1 || count > COUNT_LIMIT) {
      problem(
          start,
          "'" + counted.group(1) + "' is no number of repetitions",
          "expected 1 to " + COUNT_LIMIT,
          "check the number before 'x'");
      return 0;
    }
    if (counted.group(2).equals("X") || counted.group(2).equals("*")) {
      problem(
          start,
          "'" + counted.group() + "' is no number of repetitions",
          "expected 'x' after the number",
          "write " + counted.group(1) + "x");
      return 0;
    }
    return count;
  }

  private SetLine.@Nullable Work group(int start, int depth, int repetitions) {
    if (depth == NESTING_LIMIT) {
      problem(
          start,
          "brackets are nested more than " + NESTING_LIMIT + " deep",
          "expected simpler brackets",
          "write the sets out, one after the other");
      return null;
    }
    cursor.take();
    int before = problems.size();
    List<SetLine.Part> parts = line(depth + 1, repetitions);
    if (cursor.peek() == ')') {
      cursor.take();
      return problems.size() == before ? new SetLine.Group(List.copyOf(parts)) : null;
    }
    problem(start, "the '(' here is not closed", "expected ')' after its last part", "write ')'");
    return null;
  }

  private SetLine.@Nullable Work amount(int start, boolean repeated) {
    if (cursor.looksAt(DECIMAL_COMMA)) {
      String number = cursor.word() + "," + cursor.afterComma();
      problem(
          start,
          "'" + number + "' has a decimal comma",
          "expected a point: a comma begins the next part",
          "write " + number.replace(',', '.'));
      return null;
    }
    Matcher amount = cursor.match(AMOUNT);
    if (amount == null) {
      String word = cursor.word();
      problem(start, "'" + word + "' is no part", PART, "begin the part with a number");
      return null;
    }
    Quantity<SetLine.Work> work = Quantity.amount(amount.group(), sport, repeated);
    if (work instanceof Quantity.NotThat<SetLine.Work> not) {
      problem(start, not.what(), not.expected(), not.instead());
      return null;
    }
    return work.orNull();
  }

  private void problem(int offset, String what, String expected, String instead) {
    problems.add(new SetLines.Problem(offset, new Quantity.NotThat<>(what, expected, instead)));
  }
}
