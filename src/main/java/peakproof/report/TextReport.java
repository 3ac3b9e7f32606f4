package peakproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Finding;
import peakproof.report.Report.Judgement;
import peakproof.report.Report.Ranked;
import peakproof.rule.Hold;
import peakproof.rule.Severity;

/** The report a coach reads in the evening: a few findings, what to do, and what was not judged. */
public final class TextReport {
  private static final int MARGIN = 11;

  private final Report report;
  private final int width;
  private final Ink ink;
  private final List<String> lines = new ArrayList<>();

  private TextReport(Report report, int width, Ink ink) {
    this.report = report;
    this.width = width;
    this.ink = ink;
  }

  /** The whole report in lines no wider than {@code width}; empty when no plan was audited. */
  public static String of(Report report, int width, Ink ink) {
    TextReport text = new TextReport(report, width, ink);
    text.writeAll();
    return text.lines.isEmpty() ? "" : String.join("\n", text.lines) + "\n";
  }

  private void writeAll() {
    if (report.judgements().isEmpty()) {
      return;
    }
    for (Judgement judgement : report.judgements()) {
      write(judgement);
      lines.add("");
      if (report.judgements().size() > 1) {
        lines.add("─".repeat(width));
      }
    }
    if (report.plans() > 1) {
      lines.addAll(Lines.wrapped("", 2, Summary.of(report), width));
    }
    lines.addAll(
        Lines.wrapped(
            "",
            0,
            "Not medical advice; race rules, local law and licensed practitioners come first.",
            width));
  }

  private void write(Judgement judgement) {
    Places places = new Places(judgement.audit());
    List<String> heading = Heading.of(judgement, places, width);
    lines.add(ink.bold(heading.get(0)));
    lines.addAll(heading.subList(1, heading.size()));
    lines.add("");
    judgement.shown().forEach(ranked -> write(ranked, places));
    lines.addAll(Footer.of(judgement, report.all(), width));
  }

  private void write(Ranked ranked, Places places) {
    Finding finding = ranked.finding();
    writeTitle(ranked.order(), finding);
    List<String> where = new ArrayList<>();
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
