package peakproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Finding;
import peakproof.report.Report.Ranked;
import peakproof.rule.Hold;
import peakproof.rule.Severity;

/** One audit in lines of text. */
final class TextPage {
  private static final int MARGIN = 11;

  private final Report report;
  private final int width;
  private final Ink ink;
  private final List<String> lines = new ArrayList<>();

  private TextPage(Report report, int width, Ink ink) {
    this.report = report;
    this.width = width;
    this.ink = ink;
  }

  /** The audit in lines no wider than {@code width}, with an empty one after it. */
  static String of(Report report, int width, Ink ink) {
    TextPage page = new TextPage(report, width, ink);
    page.write();
    return String.join("\n", page.lines) + "\n\n";
  }

  private void write() {
    Places places = new Places(report.audit());
    List<String> heading = Heading.of(report, places, width);
    lines.add(ink.bold(heading.get(0)));
    lines.addAll(heading.subList(1, heading.size()));
    lines.add("");
    report.shown().forEach(ranked -> write(ranked, places));
    lines.addAll(Footer.of(report, width));
  }

  private void write(Ranked ranked, Places places) {
    Finding finding = ranked.finding();
    writeTitle(ranked.order(), finding);
    List<String> where = new ArrayList<>();
    if (ranked.since() != null) {
      where.add(ranked.since().word());
    }
    Hold hold = finding.hold();
    if (hold != null) {
      where.add(Lines.bound(spoken(hold)));
    }
    where.addAll(places.of(finding.where(), report.all()));
    writeBlock("", Lines.dotted(where));
    writeBlock("why", finding.why() + " " + Lines.bound("(" + Evidence.of(finding) + ")"));
    writeBlock("do", finding.remedy());
    writeBlock("care", finding.care());
    lines.add("");
  }

  private void writeTitle(int order, Finding finding) {
    String word = finding.severity().name();
    String number = String.format(Locale.ROOT, "%" + (MARGIN - 2 - word.length()) + "d  ", order);
    String margin =
        (finding.severity() == Severity.HOLD ? ink.alarm(word) : ink.bold(word)) + number;
    List<String> title =
        Lines.wrapped(" ".repeat(MARGIN), MARGIN, finding.title(), width).stream()
            .map(line -> line.substring(MARGIN))
            .toList();
    int gap = width - MARGIN - Lines.length(title.get(0)) - finding.rule().length();
    boolean beside = title.size() == 1 && gap >= 2;
    lines.add(margin + ink.bold(title.get(0)) + (beside ? " ".repeat(gap) + finding.rule() : ""));
    title.stream().skip(1).forEach(line -> lines.add(" ".repeat(MARGIN) + ink.bold(line)));
    if (!beside) {
      lines.add(" ".repeat(Math.max(MARGIN, width - finding.rule().length())) + finding.rule());
    }
  }

  private void writeBlock(String label, @Nullable String text) {
    if (text == null || text.isBlank()) {
      return;
    }
    String first = String.format(Locale.ROOT, "%5s%-6s", "", label);
    lines.addAll(Lines.wrapped(first, MARGIN, text, width));
  }

  static String spoken(Hold hold) {
    return switch (hold) {
      case HURT -> "someone could be hurt";
      case RULES -> "a race rule would be broken";
      case CANNOT_BE_RIGHT -> "the plan cannot be right";
    };
  }
}
