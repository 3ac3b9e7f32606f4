package peakproof.report;

import java.io.IOException;
import java.io.Writer;

/** The page a coach looks at: one plan, whole, in one file. */
public final class HtmlReport implements Renderer {
  private final Writer out;

  /** Writes to {@code out}; the same bytes for the same audit. */
  public HtmlReport(Writer out) {
    this.out = out;
  }

  /** The page by itself, for whoever keeps many. */
  public static String of(Judged judged) {
    return AuditPage.of(judged);
  }

  @Override
  public String page(Judged judged) {
    return of(judged);
  }

  @Override
  public void add(Rank rank, String page) throws IOException {
    out.write(page);
  }

  @Override
  public void end(int plans) {}
}
