package peakproof.report;

import java.io.IOException;
import java.io.Writer;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Baseline;

/**
 * The report a coach reads in the evening: a few findings, what to do, and what was not judged. Of
 * several plans the worst comes first and one line over all of them last.
 */
public final class TextReport implements Renderer {
  private final Writer out;
  private final Choice choice;
  private final int width;
  private final Ink ink;
  private final WorstFirst pages = new WorstFirst();
  private @Nullable Balance balance;

  /**
   * Writes to {@code out}.
   *
   * @param width how many columns a line has at most
   */
  public TextReport(Writer out, Choice choice, int width, Ink ink) {
    this.out = out;
    this.choice = choice;
    this.width = width;
    this.ink = ink;
  }

  @Override
  public String page(Judged judged) {
    return TextPage.of(Report.of(judged, choice), width, ink);
  }

  @Override
  public void add(Rank rank, String page) throws IOException {
    pages.add(rank, page);
  }

  @Override
  public void compared(Balance with) {
    balance = with;
  }

  /** Writes everything; nothing when no plan was audited and none is compared. */
  @Override
  public void end(int plans) throws IOException {
    try (pages) {
      if (pages.isEmpty() && balance == null) {
        return;
      }
      pages.writeTo(out, pages.ranks().size() > 1 ? "─".repeat(width) + "\n" : "");
      if (plans > 1) {
        say(2, Summary.of(pages.ranks(), plans));
      }
      if (balance != null) {
        say(balance);
      }
      say(0, "Not medical advice; race rules, local law and licensed practitioners come first.");
    }
  }

  private void say(Balance with) throws IOException {
    for (Baseline.Left left : with.left()) {
      List<String> findings = left.findings().stream().map(Footer::told).toList();
      say(
          2,
          "gone with "
              + left.plan()
              + " ("
              + left.who().athlete()
              + "): "
              + Lines.dotted(findings));
    }
    say(2, with.counts());
  }

  private void say(int indent, String text) throws IOException {
    for (String line : Lines.wrapped("", indent, text, width)) {
      out.write(line + "\n");
    }
  }
}
