package peakproof.rule;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import peakproof.fact.Fact;

/** The page on the facts in {@code docs}, made of the facts, their words and the shipped rules. */
final class FactsPage {
  private final Map<String, FactType> types = new TreeMap<>(FactTypes.shipped().all());
  private final FactWords words = FactWords.shipped();
  private final Map<String, String> conditions;
  private final StringBuilder page = new StringBuilder();

  private FactsPage(Ruleset rules) {
    types.remove("Settings");
    conditions = conditions(rules);
  }

  static String of(Ruleset rules) {
    FactsPage page = new FactsPage(rules);
    page.head();
    page.words.all().forEach(page::fact);
    return page.page.toString();
  }

  /** An example of each field, by {@code Fact.field}: a shipped condition, else one made up. */
  static Map<String, String> examples(Ruleset rules) {
    FactsPage page = new FactsPage(rules);
    Map<String, String> examples = new LinkedHashMap<>();
    page.words
        .all()
        .forEach(
            (type, fact) ->
                fact.fields()
                    .keySet()
                    .forEach(name -> examples.put(type + "." + name, page.condition(type, name))));
    return examples;
  }

  /** Conditions of shipped rules that name one field and a setting of their own at most. */
  private static Map<String, String> conditions(Ruleset rules) {
    Map<String, String> shortest = new HashMap<>();
    for (String rule : rules.cards().keySet()) {
      RuleSource.of(rules, rule)
          .logic()
          .patterns()
          .forEach(
              pattern ->
                  pattern.constraints().forEach(piece -> note(pattern.type(), piece, shortest)));
    }
    return shortest;
  }

  private static void note(String type, RuleShape.Piece piece, Map<String, String> shortest) {
    String text = piece.text().strip().replaceAll("\\s+", " ");
    try {
      Expression read = ExpressionParser.read(piece);
      boolean plain =
          read instanceof Expression.Pair pair
              && pair.left() instanceof Expression.Field
              && (pair.right() instanceof Expression.Setting setting && setting.by() == null
                  || pair.right() instanceof Expression.Constant);
      if (plain && ((Expression.Pair) read).left() instanceof Expression.Field field) {
        String name = type + "." + field.path().get(0);
        shortest.merge(name, text, (one, other) -> one.length() <= other.length() ? one : other);
      }
    } catch (ExpressionParser.Unreadable e) {
      throw new IllegalStateException(e);
    }
  }

  private void head() {
    line("# What a rule may see");
    line("");
    line(
        "A rule's conditions name these facts and their fields, and nothing else. A field that may"
            + " be unknown holds nothing\nwhile it is: a comparison with it is then neither true nor"
            + " false, and the rule stays silent. Write `field != null`\nbefore a value is"
            + " reckoned with or reported. Shares are written 0.75 for 75 %, minutes, metres and"
            + " °C as numbers.");
    line("");
    line(
        "Every fact knows where it is written (a finding points there), `bites`: the last day it"
            + " can be put right, and\n`estimated`: whether it rests on an estimate, in which case a"
            + " finding never weighs more than ASK.");
    line("");
    line(
        "Thresholds come from the card: `$set.count(\"NAME\")`, `share`, `minutes`, `metres`, `km`,"
            + " `celsius`, `carbohydrate`,\n`fluid`, `day`. [rules/README.md](../rules/README.md)"
            + " shows a rule being written.");
    line("");
  }

  private void fact(String type, FactWords.Described fact) {
    line("## " + type);
    line("");
    line(fact.meaning());
    FactType known = Objects.requireNonNull(types.get(type), type);
    Class<?> parent = known.type().getSuperclass();
    if (parent != null && Fact.class.isAssignableFrom(parent)) {
      String name = parent.getSimpleName();
      line("It has all fields of a [" + name + "](#" + name.toLowerCase(Locale.ROOT) + ") too.");
    }
    line("");
    if (fact.fields().isEmpty()) {
      return;
    }
    line("| field | holds | meaning | example |");
    line("|---|---|---|---|");
    fact.fields()
        .forEach(
            (name, meaning) -> {
              FieldType field = Objects.requireNonNull(known.field(name), type + "." + name);
              line(
                  "| `"
                      + name
                      + "` | "
                      + holds(field)
                      + " | "
                      + meaning
                      + " | `"
                      + condition(type, name).replace("|", "\\|")
                      + "` |");
            });
    line("");
  }

  private static String holds(FieldType field) {
    return field.kind().words() + (field.known() ? "" : ", may be unknown");
  }

  private String condition(String type, String name) {
    String shipped = conditions.get(type + "." + name);
    return shipped == null
        ? made(name, Objects.requireNonNull(types.get(type).field(name)))
        : shipped;
  }

  private static String made(String name, FieldType field) {
    return switch (field.kind()) {
      case NUMBER -> name + " > $set." + reader(name);
      case TRUTH -> field.known() ? name : name + " == true";
      case TEXT -> field.known() ? "$words : " + name : name + " != null";
      case WORD ->
          name
              + " == "
              + field.type().getSimpleName()
              + "."
              + ((Enum<?>) field.type().getEnumConstants()[0]).name();
      case ORDERED -> field.known() ? "$day : " + name : name + " != null";
      case SEVERAL, FACT -> "$it : " + name;
      case OPAQUE -> throw new IllegalStateException(name);
    };
  }

  private static String reader(String name) {
    String low = name.toLowerCase(Locale.ROOT);
    if (low.endsWith("share") || low.endsWith("change")) {
      return "share(\"most\")";
    }
    if (low.endsWith("minutes")) {
      return "minutes(\"longest\")";
    }
    if (low.endsWith("metres")) {
      return "metres(\"furthest\")";
    }
    return low.endsWith("celsius") ? "celsius(\"warmest\")" : "count(\"number\")";
  }

  private void line(String text) {
    page.append(text).append('\n');
  }
}
