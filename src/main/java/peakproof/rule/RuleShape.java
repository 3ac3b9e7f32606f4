package peakproof.rule;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What the engine's parser made of a rule file, in our own words: everything a rule may hold, and a
 * list of what it may not.
 *
 * @param strays constructs that have no place in a rule, each named
 */
record RuleShape(String packageName, List<Piece> imports, List<Piece> strays, List<Rule> rules) {

  /** A piece of the file and where it begins. */
  record Piece(String text, int offset) {}

  /** One rule: its conditions and its consequence as written. */
  record Rule(String name, int offset, List<Condition> conditions, Piece consequence) {
    Stream<Pattern> patterns() {
      return conditions.stream().flatMap(condition -> condition.patterns().stream());
    }
  }

  /** Something that must hold for the rule to report. */
  sealed interface Condition permits Pattern, Group {
    List<Pattern> patterns();
  }

  /** One fact and what it must look like. */
  record Pattern(String type, @Nullable String variable, List<Piece> constraints, int offset)
      implements Condition {
    @Override
    public List<Pattern> patterns() {
      return List.of(this);
    }
  }

  /** Facts that must not be there, or that must be there without being named. */
  record Group(boolean absent, List<Pattern> patterns) implements Condition {}
}
