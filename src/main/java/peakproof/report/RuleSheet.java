package peakproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import peakproof.rule.Card;
import peakproof.rule.Origin;
import peakproof.rule.RuleInForce;

/** One rule on a sheet: what it asks, on what ground, and each number with who set it. */
public final class RuleSheet {
  private static final int MARGIN = 11;

  private final RuleInForce standing;
  private final Card card;
  private final int width;
  private final Ink ink;
  private final List<String> lines = new ArrayList<>();

  private RuleSheet(RuleInForce standing, int width, Ink ink) {
    this.standing = standing;
    this.card = standing.card();
    this.width = width;
    this.ink = ink;
  }

  /** Everything a card says, in lines no wider than {@code width}. */
  public static String whole(RuleInForce standing, int width, Ink ink) {
    RuleSheet sheet = new RuleSheet(standing, width, ink);
    sheet.definition();
    sheet.settings();
    sheet.texts();
    return String.join("\n", sheet.lines) + "\n";
  }

  /** What it asks, its ground and its numbers, without what is said when it finds something. */
  static List<String> brief(RuleInForce standing, int width, Ink ink) {
    RuleSheet sheet = new RuleSheet(standing, width, ink);
    sheet.definition();
    sheet.settings();
    return sheet.lines;
  }

  private void definition() {
    lines.add(ink.bold(card.rule()) + " · " + card.theme() + " · " + RuleWords.range(standing));
    lines.addAll(Lines.wrapped("", 0, card.title(), width));
    lines.add("");
    block("asks", standing.source().catches());
    block("silent", standing.source().silent());
    block("severity", RuleWords.severity(card));
    block("rests on", RuleWords.grade(card));
    card.sources().forEach(source -> block("", source));
    block("for", RuleWords.applies(card));
    block("not for", card.notFor());
    needs();
    standing.said().forEach(said -> block("changed", said.what() + by(said.origin())));
    off();
    if (!card.was().isEmpty()) {
      block("once named", String.join(", ", card.was()));
    }
  }

  private void needs() {
    List<String> needs = RuleWords.needs(card);
    for (int i = 0; i < needs.size(); i++) {
      block(i == 0 ? "needs" : "", needs.get(i));
    }
  }

  private void off() {
    RuleInForce.Said silenced = standing.silenced();
    if (silenced != null) {
      block("silenced", silenced.what() + by(silenced.origin()));
    } else if (!standing.on()) {
      block("off", "until a house file asks for it: use: [" + card.rule() + "]");
    }
  }

  private void settings() {
    lines.add("");
    if (standing.settings().isEmpty()) {
      block("settings", "none; there is no number to change");
      return;
    }
    lines.add("settings");
    for (RuleInForce.Setting setting : standing.settings()) {
      String value = RuleWords.value(setting.text(), setting.shipped());
      String first = "  " + ink.bold(setting.name()) + " ";
      lines.addAll(
          Lines.wrapped(
              first,
              MARGIN,
              value + by(setting.origin()) + shipped(setting),
              width + first.length() - setting.name().length() - 3));
      block("", setting.shipped().meaning() + "; from " + RuleWords.range(setting.shipped()));
    }
  }

  private static String shipped(RuleInForce.Setting setting) {
    return setting.changed() ? "; shipped: " + setting.shipped().text() : "";
  }

  /** {@code (house, plans/house.yaml:6)}. */
  private static String by(Origin origin) {
    return " (" + origin.by() + ", " + origin.place().file() + ":" + origin.place().line() + ")";
  }

  private void texts() {
    lines.add("");
    block("why", card.why().text());
    block("do", card.remedy().text());
    block("care", card.care() == null ? null : card.care().text());
    lines.add("");
    lines.addAll(
        Lines.wrapped(
            "",
            0,
            "In braces: what the audit fills in. To change a number or a word, or to turn the rule"
                + " off, write it into house.yaml; docs/house.md shows how.",
            width));
  }

  private void block(String label, @Nullable String text) {
    if (text != null && !text.isBlank()) {
      String first = String.format(Locale.ROOT, "%-" + MARGIN + "s", label);
      lines.addAll(Lines.wrapped(first, MARGIN, text, width));
    }
  }
}
