package peakproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import peakproof.rule.RuleInForce;

/** Rules in a list, a line each under their theme, with what the house changes marked. */
public final class RulesText {
  private final List<RuleInForce> rules;
  private final int width;
  private final Ink ink;
  private final int names;
  private final int severities;
  private final List<String> lines = new ArrayList<>();

  private RulesText(List<RuleInForce> rules, int width, Ink ink) {
    this.rules = rules;
    this.width = width;
    this.ink = ink;
    this.names = rules.stream().mapToInt(one -> one.card().rule().length()).max().orElse(0);
    this.severities = rules.stream().mapToInt(one -> RuleWords.range(one).length()).max().orElse(0);
  }

  /** The list in lines no wider than {@code width}, the rules in the order given. */
  public static String of(List<RuleInForce> rules, int width, Ink ink) {
    RulesText text = new RulesText(rules, width, ink);
    text.write();
    return String.join("\n", text.lines) + "\n";
  }

  private void write() {
    String theme = "";
    for (RuleInForce rule : rules) {
      if (!rule.card().theme().equals(theme)) {
        lines.add((theme.isEmpty() ? "" : "\n") + ink.bold(rule.card().theme()));
        theme = rule.card().theme();
      }
      write(rule);
    }
    lines.add("");
    lines.addAll(Lines.wrapped("", 0, summary(), width));
    lines.add("'peakproof rules show RULE' shows one of them with all its numbers.");
  }

  private void write(RuleInForce rule) {
    String first =
        String.format(
            Locale.ROOT,
            "  %-" + names + "s  %-" + severities + "s  ",
            rule.card().rule(),
            RuleWords.range(rule));
    lines.addAll(
        Lines.wrapped(first, Lines.length(first), rule.card().title() + mark(rule), width));
  }

  /** What to know of a rule that does not count as it is shipped. */
  static String mark(RuleInForce rule) {
    if (rule.silenced() != null) {
      return " " + Lines.bound("[silenced]");
    }
    if (!rule.on()) {
      return " " + Lines.bound("[off]");
    }
    return rule.changed() ? " " + Lines.bound("[changed]") : "";
  }

  private String summary() {
    long silenced = rules.stream().filter(rule -> rule.silenced() != null).count();
    long off = rules.stream().filter(rule -> !rule.on()).count() - silenced;
    long changed = rules.stream().filter(rule -> rule.on() && rule.changed()).count();
    List<String> counts = new ArrayList<>(List.of(rules.size() + " rules"));
    add(counts, off, "off until a house asks for it");
    add(counts, silenced, "silenced");
    add(counts, changed, "changed by house or plan");
    return Lines.dotted(counts);
  }

  private static void add(List<String> counts, long count, String what) {
    if (count > 0) {
      counts.add(count + " " + what);
    }
  }
}
