package peakproof.rule;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import peakproof.document.Fault;

/** Says in our words what the engine's parser or builder could not take. */
final class SyntaxTrouble {
  private static final List<String> WORDS =
      List.of("package", "import", "rule", "when", "then", "end", "not", "exists", "contains");
  private static final Pattern AT = Pattern.compile("'([^']+)'");
  private static final String SHAPE = "rule \"name\" when … then … end, brackets and commas closed";

  private SyntaxTrouble() {}

  static void tell(Engine.Unreadable trouble, RuleCompiler.Source source, RuleFaults faults) {
    RuleText text = source.text();
    int offset =
        Math.min(
            RuleText.offset(text.text(), trouble.line) + trouble.column - 1, text.text().length());
    Matcher at = AT.matcher(String.valueOf(trouble.getMessage()));
    String word = at.find() ? at.group(1) : "";
    if (word.isEmpty() || word.equals("<eof>")) {
      faults.add(
          Math.max(0, offset), "the rule ends too early", SHAPE, "look for a bracket or 'end'");
      return;
    }
    faults.add(
        Math.max(0, offset),
        "'" + word + "' cannot be read here",
        SHAPE,
        word.matches("[a-z]+") && !WORDS.contains(word)
            ? Spelling.instead(word, WORDS)
            : "look at what stands before it");
  }

  /** A rule that passed every check of ours and still could not be built. */
  static Fault unbuilt(RuleCompiler.Source source) {
    return atRule(
        source,
        "the conditions of '" + source.slug() + "' cannot be turned into checks",
        "short comparisons of bound variables, fields and settings",
        "bind fields to variables first, and split long conditions");
  }

  /** A rule whose classes would do what no rule may; {@code what} goes after "would". */
  static Fault refused(RuleCompiler.Source source, String what) {
    return atRule(
        source,
        "the rule '" + source.slug() + "' would " + what,
        "a rule reads facts and settings, compares and reports, and does nothing else",
        "compare few fields at once; what must be computed belongs into a fact");
  }

  private static Fault atRule(
      RuleCompiler.Source source, String what, String expected, String instead) {
    int rule = Math.max(0, source.text().text().indexOf("\nrule ") + 1);
    return source.text().fault(rule, what, expected, instead);
  }
}
