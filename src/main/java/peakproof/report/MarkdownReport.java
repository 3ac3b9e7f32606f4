package peakproof.report;

import java.io.IOException;
import java.io.Writer;

/** The report for a comment on a proposed change: a heading for each plan, details folded away. */
final class MarkdownReport implements Renderer {
  private final Writer out;
  private final Layout layout;
  private int audited;

  MarkdownReport(Writer out, Layout layout) {
    this.out = out;
    this.layout = layout;
  }

  @Override
  public String page(Judged judged) {
    return MarkdownPage.of(judged, layout);
  }

  @Override
  public void add(Rank rank, String page) throws IOException {
    audited++;
    out.write(page);
  }

  @Override
  public void end(int plans) throws IOException {
    int left = plans - audited;
    if (left > 0) {
      out.write(
          "**"
              + left
              + (left == 1 ? " plan was" : " plans were")
              + " not audited**; the log of this run says why.\n\n");
    }
    out.write("Not medical advice; race rules, local law and licensed practitioners come first.\n");
  }
}
