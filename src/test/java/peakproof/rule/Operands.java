package peakproof.rule;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/** Writes a constraint with one operand gone or one comparison moved by its boundary. */
final class Operands {
  private static final Map<String, String> SHIFTED = new LinkedHashMap<>();

  static {
    SHIFTED.put("<=", "<");
    SHIFTED.put(">=", ">");
    SHIFTED.put("<", "<=");
    SHIFTED.put(">", ">=");
  }

  private final Map<String, String> changed = new LinkedHashMap<>();

  private Operands() {}

  /** The changed constraints, by what was done. */
  static Map<String, String> of(String constraint) {
    Operands operands = new Operands();
    operands.change(constraint.strip(), UnaryOperator.identity());
    return operands.changed;
  }

  /** Changes a part, which {@code whole} puts back where it was. */
  private void change(String part, UnaryOperator<String> whole) {
    List<String> either = split(part, "||");
    List<String> both = split(part, "&&");
    if (either.size() > 1) {
      joined(either, "||", whole);
    } else if (both.size() > 1) {
      joined(both, "&&", whole);
    } else if (part.startsWith("(") && part.endsWith(")")) {
      change(part.substring(1, part.length() - 1).strip(), inner -> whole.apply("(" + inner + ")"));
    } else {
      compared(part, whole);
    }
  }

  private void joined(List<String> operands, String operator, UnaryOperator<String> whole) {
    for (int i = 0; i < operands.size(); i++) {
      List<String> before = operands.subList(0, i);
      List<String> after = operands.subList(i + 1, operands.size());
      List<String> rest = new ArrayList<>(before);
      rest.addAll(after);
      put(
          "without " + operands.get(i) + " of " + operator,
          whole.apply(String.join(" " + operator + " ", rest)));
      change(
          operands.get(i),
          operand -> {
            List<String> all = new ArrayList<>(before);
            all.add(operand);
            all.addAll(after);
            return whole.apply(String.join(" " + operator + " ", all));
          });
    }
  }

  private void compared(String part, UnaryOperator<String> whole) {
    for (Map.Entry<String, String> operator : SHIFTED.entrySet()) {
      List<String> sides = split(part, operator.getKey());
      if (sides.size() == 2) {
        String shifted = operator.getValue();
        put(part + " with " + shifted, whole.apply(String.join(" " + shifted + " ", sides)));
        return;
      }
    }
  }

  private void put(String what, String constraint) {
    if (changed.put(what, constraint) != null) {
      throw new IllegalStateException("two of: " + what);
    }
  }

  /** The parts of a text between an operator that stands in no bracket. */
  private static List<String> split(String text, String operator) {
    List<String> parts = new ArrayList<>();
    int depth = 0;
    int start = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      depth += c == '(' ? 1 : c == ')' ? -1 : 0;
      if (depth == 0 && text.startsWith(operator, i)) {
        parts.add(text.substring(start, i).strip());
        start = i + operator.length();
      }
    }
    parts.add(text.substring(start).strip());
    return parts;
  }
}
