package peakproof.report;

import java.io.IOException;
import java.io.Writer;

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

  /** Writes everything; nothing when no plan was audited. */
  @Override
  public void end(int plans) throws IOException {
    try (pages) {
      if (pages.isEmpty()) {
        return;
      }
      pages.writeTo(out, pages.ranks().size() > 1 ? "─".repeat(width) + "\n" : "");
      if (plans > 1) {
        say(2, Summary.of(pages.ranks(), plans));
      }
      say(0, "Not medical advice; race rules, local law and licensed practitioners come first.");
    }
  }

  private void say(int indent, String text) throws IOException {
    for (String line : Lines.wrapped("", indent, text, width)) {
      out.write(line + "\n");
    }
  }
}
