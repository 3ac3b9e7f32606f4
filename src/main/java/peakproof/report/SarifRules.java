package peakproof.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Discreet;
import peakproof.audit.Finding;
import peakproof.rule.Card;
import peakproof.rule.Ruleset;
import peakproof.rule.Severity;
import peakproof.rule.Template;

/** What SARIF tells of the rules in force. */
final class SarifRules {
  private final Ruleset rules;
  private final boolean withHealth;

  SarifRules(Ruleset rules, boolean withHealth) {
    this.rules = rules;
    this.withHealth = withHealth;
  }

  /** A rule in words, whoever wrote it. */
  record Described(
      String rule,
      String title,
      String full,
      String help,
      String theme,
      String grade,
      Severity usual) {
    void write(Json json) throws IOException {
      json.text("id", rule);
      message(json, "shortDescription", title);
      message(json, "fullDescription", full);
      json.object(
          "help",
          inner -> {
            inner.text("text", escaped(help));
            inner.text("markdown", Markdown.lines(help));
          });
      json.object("defaultConfiguration", inner -> inner.text("level", SarifResult.level(usual)));
      json.object(
          "properties",
          inner -> {
            inner.text("theme", theme);
            inner.text("grade", grade);
          });
    }
  }

  /** All rules that all plans share, and those of houses by what was found with them. */
  List<Described> all(Collection<Finding> ofHouses) {
    List<Described> all = new ArrayList<>();
    rules.cards().values().forEach(card -> all.add(of(card)));
    ofHouses.forEach(finding -> all.add(of(finding)));
    if (!withHealth) {
      all.add(
          new Described(
              Discreet.RULE,
              Discreet.TITLE,
              "Stands for every rule that reads health entries: what they say stays with the coach.",
              "Open the file at the line, or run the audit on your own machine.",
              "health",
              "none",
              Severity.HOLD));
    }
    return all;
  }

  private static Described of(Card card) {
    List<String> full = new ArrayList<>();
    full.add(sentence(card.title()));
    if (card.notFor() != null) {
      full.add(sentence("Not for " + card.notFor()));
    }
    full.add(
        sentence(
            card.sources().isEmpty()
                ? "Coaching convention"
                : card.grade().word() + ": " + String.join("; ", card.sources())));
    List<String> help = new ArrayList<>();
    help.add("Do: " + plain(card, card.remedy()));
    if (card.care() != null) {
      help.add("Care: " + plain(card, Objects.requireNonNull(card.care())));
    }
    help.add("What it asks and on what ground: peakproof why " + card.rule());
    return new Described(
        card.rule(),
        card.title(),
        String.join(" ", full),
        String.join("\n", help),
        card.theme(),
        card.grade().word(),
        card.severity());
  }

  private static Described of(Finding finding) {
    return new Described(
        finding.rule(),
        finding.title(),
        sentence(finding.title()),
        "What it asks and on what ground: peakproof why " + finding.rule(),
        finding.theme(),
        finding.grade(),
        finding.severity());
  }

  /** A text of a card with the shipped numbers in it; what only a plan can say is left open. */
  private static String plain(Card card, Template text) {
    return text.fill(
        name -> {
          Card.@Nullable Setting setting = card.settings().get(name);
          return setting == null ? "…" : setting.text();
        });
  }

  private static String sentence(String text) {
    return text.endsWith(".") ? text : text + ".";
  }

  static void message(Json json, String name, String text) throws IOException {
    json.object(name, inner -> inner.text("text", escaped(text)));
  }

  /** A text in which nothing is a link or a placeholder (SARIF 2.1.0, 3.11.5 and 3.11.6). */
  private static String escaped(String text) {
    return String.join("\n", text.lines().map(Printable::of).toList())
        .replace("\\", "\\\\")
        .replace("[", "\\[")
        .replace("]", "\\]")
        .replace("{", "{{")
        .replace("}", "}}");
  }
}
