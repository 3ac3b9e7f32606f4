package peakproof.rule;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A condition inside a pattern's brackets; {@code at} is its place in the file's text. */
sealed interface Expression {
  int at();

  /** A field of the pattern's own fact, or a field of that field: {@code race.date}. */
  record Field(List<String> path, int at) implements Expression {}

  /** A bound variable, or a field of it: {@code $week.starts}. */
  record Variable(String name, List<String> path, int at) implements Expression {}

  /** A number of the card: {@code $set.minutes("longest", $distance)}. */
  record Setting(String variable, String reader, String name, @Nullable String by, int at)
      implements Expression {}

  /** A word of a closed list, written with its type: {@code Phase.PEAK}. */
  record Constant(String type, String name, int at) implements Expression {}

  /** A word in quotes. */
  record Word(String text, int at) implements Expression {}

  /** {@code true} or {@code false}. */
  record Truth(boolean value, int at) implements Expression {}

  /** {@code null}: not known. */
  record Unknown(int at) implements Expression {}

  /** {@code !x}. */
  record Not(Expression inner, int at) implements Expression {}

  /** Two sides and what joins them: comparison, arithmetic, {@code &&}, {@code ||}. */
  record Pair(Expression left, String operator, Expression right, int at) implements Expression {}

  /** {@code x in (A, B)}. */
  record Among(Expression left, List<Expression> choices, int at) implements Expression {}

  /** {@code $name : field}. */
  record Binding(String variable, Field field, int at) implements Expression {}
}
