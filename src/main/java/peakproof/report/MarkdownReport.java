package peakproof.report;

import java.io.IOException;
import java.io.Writer;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Baseline;
import peakproof.audit.Gone;

/** The report for a comment on a proposed change: a heading for each plan, details folded away. */
final class MarkdownReport implements Renderer {
  private final Writer out;
  private final Layout layout;
  private int audited;
  private @Nullable Balance balance;

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
  public void compared(Balance with) {
    balance = with;
  }

  @Override
  public void end(int plans) throws IOException {
    int left = plans - audited;
    if (plans == 0) {
      out.write("No plan to audit.\n\n");
    }
    if (left > 0) {
      out.write(
          "**"
              + left
              + (left == 1 ? " plan was" : " plans were")
              + " not audited**; the log of this run says why.\n\n");
    }
    if (balance != null) {
      say(balance);
    }
    out.write("Not medical advice; race rules, local law and licensed practitioners come first.\n");
  }

  private void say(Balance with) throws IOException {
    for (Baseline.Left left : with.left()) {
      out.write(
          Markdown.code(left.plan())
              + " ("
              + Markdown.name(left.who().athlete())
              + ") is no more:\n\n");
      for (Gone gone : left.findings()) {
        out.write("- " + MarkdownPage.gone(gone, null, layout.withHealth()) + "\n");
      }
      out.write("\n");
    }
    out.write(
        "Against "
            + Markdown.code(with.against())
            + ": "
            + with.fresh()
            + " new, "
            + with.known()
            + " known, "
            + with.gone()
            + " gone.\n\n");
  }
}
