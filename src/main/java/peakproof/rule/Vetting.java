package peakproof.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Admits the shape of a rule: one rule, facts and their absence, one report. A rules folder may
 * come from a stranger, so what is not on the list is refused, before the engine builds anything.
 */
final class Vetting {
  /** The one import a rule may have. */
  static final String FACTS = "peakproof.fact.*";

  private static final int PATTERNS = 5;
  private static final Pattern REPORT =
      Pattern.compile("\\s*findings\\s*\\.\\s*report\\s*\\(([^()]*)\\)\\s*;\\s*");
  private static final Pattern VARIABLE = Pattern.compile("\\$[A-Za-z][A-Za-z0-9]*");

  private final RuleText text;
  private final RuleFaults faults;
  private final String slug;

  private Vetting(RuleText text, String slug, RuleFaults faults) {
    this.text = text;
    this.faults = faults;
    this.slug = slug;
  }

  /** What must not be in the file or is missing from it. */
  static void check(RuleText text, String slug, String theme, RuleShape shape, RuleFaults faults) {
    Vetting vetting = new Vetting(text, slug, faults);
    vetting.file(theme, shape);
    if (shape.rules().size() == 1) {
      vetting.rule(shape.rules().get(0));
    }
  }

  /** The variables of the one report, the settings first; empty when it is not of that form. */
  static List<String> reported(RuleShape.Rule rule) {
    Matcher report = REPORT.matcher(rule.consequence().text());
    if (!report.matches()) {
      return List.of();
    }
    List<String> names = new ArrayList<>();
    for (String argument : report.group(1).split(",", -1)) {
      if (!VARIABLE.matcher(argument.strip()).matches()) {
        return List.of();
      }
      names.add(argument.strip());
    }
    return names.size() < 2 || names.size() > 4 ? List.of() : names;
  }

  private void file(String theme, RuleShape shape) {
    for (RuleShape.Piece stray : shape.strays()) {
      faults.add(
          stray.offset(),
          stray.text() + " has no place in a rule",
          "facts, 'not', 'exists' and one report",
          "take it out; what must be computed belongs into a fact");
    }
    String folder = "peakproof.rules." + theme.replace('-', '_');
    if (!shape.packageName().equals(folder)) {
      faults.add(
          word("package"),
          "the package is '" + shape.packageName() + "'",
          "the package of the folder " + theme,
          "package " + folder);
    }
    for (RuleShape.Piece line : shape.imports()) {
      if (!line.text().equals(FACTS)) {
        faults.add(
            line.offset(),
            "'import " + line.text() + "' has no place in a rule",
            "rules see facts only",
            "import " + FACTS);
      }
    }
    if (shape.imports().isEmpty()) {
      faults.add(word("rule"), "no facts are imported", "the facts' package", "import " + FACTS);
    }
    if (shape.rules().size() != 1) {
      faults.add(
          shape.rules().size() < 2 ? 0 : shape.rules().get(1).offset(),
          "the file holds " + shape.rules().size() + " rules",
          "one rule a file, named as the file",
          "rule \"" + slug + "\"");
    }
  }

  private void rule(RuleShape.Rule rule) {
    if (!rule.name().equals(slug)) {
      boolean plain = rule.name().matches("[a-z0-9-]{1,60}");
      faults.add(
          rule.offset(),
          plain ? "the rule is named '" + rule.name() + "'" : "the rule's name is not plain",
          "the name of its file",
          "rule \"" + slug + "\"");
    }
    List<RuleShape.Pattern> patterns = rule.patterns().toList();
    if (patterns.size() > PATTERNS) {
      faults.add(
          patterns.get(PATTERNS).offset(),
          "the rule looks at " + patterns.size() + " facts",
          "at most " + PATTERNS,
          "let a fact hold what the rule puts together");
    }
    if (reported(rule).isEmpty()) {
      faults.add(
          rule.consequence().offset(),
          "the consequence is not one plain report",
          "one call of findings.report with bound variables and nothing else",
          "findings.report($set, $fact);");
    }
    for (RuleShape.Pattern pattern : patterns) {
      variable(pattern.variable(), pattern.offset());
    }
  }

  private void variable(@Nullable String name, int offset) {
    if (name != null && !VARIABLE.matcher(name).matches()) {
      faults.add(
          offset,
          "'" + name + "' is no name for a variable",
          "a $ and letters",
          "$" + name.replaceAll("[^A-Za-z0-9]", ""));
    }
  }

  private int word(String word) {
    return Math.max(0, text.text().indexOf("\n" + word) + 1);
  }
}
