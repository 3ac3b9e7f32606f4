package peakproof.rule;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Writes a rule with one of its conditions gone, turned round or moved by its boundary. */
final class ConditionVariants {
  private final RuleShape shape;
  private final RuleShape.Rule rule;
  private final Map<String, String> texts = new LinkedHashMap<>();

  private ConditionVariants(RuleShape shape) {
    this.shape = shape;
    this.rule = shape.rules().get(0);
  }

  /** The texts by what was done, the unchanged one first. */
  static Map<String, String> of(RuleShape shape) {
    ConditionVariants variants = new ConditionVariants(shape);
    variants.put(RuleVariants.UNCHANGED, variants.rule.conditions());
    for (int i = 0; i < variants.rule.conditions().size(); i++) {
      variants.condition(i);
    }
    return variants.texts;
  }

  private void condition(int at) {
    RuleShape.Condition condition = rule.conditions().get(at);
    put("without " + text(condition), replaced(rule.conditions(), at, List.of()));
    if (condition instanceof RuleShape.Group group) {
      String word = group.absent() ? "not" : "exists";
      put(
          "without '" + word + "' before " + text(condition),
          replaced(rule.conditions(), at, group.patterns()));
      for (int j = 0; j < group.patterns().size(); j++) {
        int its = j;
        pattern(group.patterns().get(j))
            .forEach(
                (what, changed) ->
                    put(
                        what,
                        at,
                        new RuleShape.Group(
                            group.absent(), replaced(group.patterns(), its, List.of(changed)))));
      }
    } else {
      pattern((RuleShape.Pattern) condition).forEach((what, changed) -> put(what, at, changed));
    }
  }

  private static Map<String, RuleShape.Pattern> pattern(RuleShape.Pattern pattern) {
    Map<String, RuleShape.Pattern> changed = new LinkedHashMap<>();
    String name = pattern.variable() == null ? pattern.type() : pattern.variable();
    for (int i = 0; i < pattern.constraints().size(); i++) {
      int at = i;
      String constraint = pattern.constraints().get(i).text().strip();
      changed.put(name + ": without " + constraint, with(pattern, i, List.of()));
      Operands.of(constraint)
          .forEach(
              (what, text) ->
                  changed.put(
                      name + ": " + what,
                      with(pattern, at, List.of(new RuleShape.Piece(text, 0)))));
    }
    return changed;
  }

  private static RuleShape.Pattern with(
      RuleShape.Pattern pattern, int at, List<RuleShape.Piece> instead) {
    return new RuleShape.Pattern(
        pattern.type(),
        pattern.variable(),
        replaced(pattern.constraints(), at, instead),
        pattern.offset());
  }

  private static <T> List<T> replaced(List<T> list, int at, List<? extends T> instead) {
    List<T> changed = new ArrayList<>(list);
    changed.remove(at);
    changed.addAll(at, instead);
    return changed;
  }

  private void put(String what, int at, RuleShape.Condition instead) {
    put(what, replaced(rule.conditions(), at, List.of(instead)));
  }

  private void put(String what, List<RuleShape.Condition> conditions) {
    String when =
        conditions.stream().map(each -> "  " + text(each) + "\n").collect(Collectors.joining());
    String text =
        "package "
            + shape.packageName()
            + "\nimport "
            + Vetting.FACTS
            + "\nrule \""
            + rule.name()
            + "\"\nwhen\n"
            + when
            + "then\n"
            + rule.consequence().text()
            + "\nend\n";
    if (texts.put(what.replaceAll("\\s+", " "), text) != null) {
      throw new IllegalStateException(rule.name() + " has two of: " + what);
    }
  }

  private static String text(RuleShape.Condition condition) {
    if (condition instanceof RuleShape.Group group) {
      return group.patterns().stream()
          .map(ConditionVariants::text)
          .collect(Collectors.joining(" and ", group.absent() ? "not ( " : "exists ( ", " )"));
    }
    RuleShape.Pattern pattern = (RuleShape.Pattern) condition;
    return (pattern.variable() == null ? "" : pattern.variable() + " : ")
        + pattern.type()
        + pattern.constraints().stream()
            .map(piece -> piece.text().strip())
            .collect(Collectors.joining(", ", "( ", " )"));
  }
}
