package peakproof.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import peakproof.audit.Finding;
import peakproof.rule.Card;
import peakproof.rule.Case;
import peakproof.rule.RuleInForce;

/** The page on one rule in {@code docs/rules}, made of its card, its cases and its comments. */
final class RulePage {
  private static final String RULES = "../../rules/";

  private final RuleInForce rule;
  private final Card card;
  private final StringBuilder page = new StringBuilder();

  private RulePage(RuleInForce rule) {
    this.rule = rule;
    this.card = rule.card();
  }

  /**
   * The whole page.
   *
   * @param found what the rule says of {@code wrong}
   */
  static String of(RuleInForce rule, Case wrong, Finding found, Case fine) {
    RulePage page = new RulePage(rule);
    page.head();
    page.example("What it finds", wrong);
    page.says(found);
    page.example("What it lets pass", fine);
    page.settings();
    page.ground();
    page.alone();
    return page.page.toString();
  }

  private void head() {
    line("# " + card.title());
    line("");
    line(
        "`"
            + card.rule()
            + "` · "
            + card.theme()
            + " · "
            + RuleWords.severity(card)
            + (card.onByDefault() ? "" : " · off until a house asks for it"));
    line("");
    line(rule.source().catches() + " " + rule.source().silent());
    line("");
  }

  private void example(String heading, Case shown) {
    line("## " + heading);
    line("");
    String fragment = fragment(shown);
    String plan = "[the sound plan](" + RULES + "base) of the cases";
    line(
        sentence(shown.name())
            + (fragment.contains("change:")
                ? " In " + plan + " this is changed:"
                : " It is " + plan + ", unchanged:"));
    line("");
    line("```yaml");
    line(fragment);
    line("```");
    line("");
  }

  /** The lines of a case as its file has them. */
  static String fragment(Case shown) {
    List<String> lines;
    try {
      lines = Files.readAllLines(Path.of(shown.place().file()), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    int first = shown.place().line() - 1;
    int indent = lines.get(first).indexOf('-');
    int next = first + 1;
    while (next < lines.size() && lines.get(next).startsWith(" ".repeat(indent + 1))) {
      next++;
    }
    return String.join("\n", lines.subList(first, next)).stripIndent();
  }

  private void says(Finding found) {
    line("The audit then says, as " + found.severity() + ":");
    line("");
    line("> **" + found.title() + "**");
    line(">");
    line("> why: " + found.why());
    line(">");
    line("> do: " + found.remedy());
    if (found.care() != null) {
      line(">");
      line("> care: " + found.care());
    }
    line("");
  }

  private void settings() {
    line("## Numbers a club may change");
    line("");
    if (rule.settings().isEmpty()) {
      line("None.");
      line("");
      return;
    }
    line("| setting | value | from | to | meaning |");
    line("|---|---|---|---|---|");
    rule.settings().forEach(setting -> line(row(setting.shipped())));
    line("");
    Card.Setting first = rule.settings().get(0).shipped();
    line("In `house.yaml`, with another value:");
    line("");
    line("```yaml");
    line("settings: {" + card.rule() + ": {" + first.name() + ": " + first.text() + "}}");
    line("```");
    line("");
  }

  /** A row of a table of settings. */
  static String row(Card.Setting setting) {
    String[] range = RuleWords.range(setting).split(" to ", 2);
    return "| `"
        + setting.name()
        + "` | "
        + RuleWords.value(setting.text(), setting)
        + " | "
        + range[0]
        + " | "
        + range[1]
        + " | "
        + setting.meaning()
        + " |";
  }

  private void ground() {
    line("## What it rests on");
    line("");
    line(sentence(RuleWords.grade(card)));
    if (!card.sources().isEmpty()) {
      line("");
    }
    card.sources().forEach(source -> line("- " + source));
    line("");
  }

  private void alone() {
    line("## When it keeps out");
    line("");
    line("- It is for " + RuleWords.applies(card) + ".");
    if (card.notFor() != null) {
      line("- It is not for: " + sentence(card.notFor()));
    }
    List<String> needs = RuleWords.needs(card);
    if (!needs.isEmpty()) {
      line("- Without these it says *not judged*: " + String.join("; ", needs) + ".");
    }
    line(
        "- Turn it off with `silenced: [{rule: "
            + card.rule()
            + ", because: your reason}]` in `house.yaml`; every report then says so.");
    if (!card.was().isEmpty()) {
      line("- Its former names keep working: " + String.join(", ", card.was()) + ".");
    }
    line("");
    String stem = RULES + card.theme() + "/" + card.rule();
    line(
        "Its files: [logic]("
            + stem
            + ".drl), [card]("
            + stem
            + ".yaml), [cases]("
            + stem
            + ".cases.yaml).");
  }

  private static String sentence(String text) {
    String sentence = text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    return sentence.endsWith(".") ? sentence : sentence + ".";
  }

  private void line(String text) {
    page.append(text).append('\n');
  }
}
