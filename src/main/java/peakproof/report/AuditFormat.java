package peakproof.report;

import java.io.Writer;

/** What an audit is written in. */
public enum AuditFormat {
  /** For a coach, in lines. */
  TEXT,
  /** For programs, one document. */
  JSON,
  /** For programs, an audit a line. */
  NDJSON,
  /** SARIF 2.1.0, for hosts that show findings on the line. */
  SARIF,
  /** JUnit XML, for pipelines that show tests. */
  JUNIT,
  /** For a comment on a proposed change. */
  MARKDOWN,
  /** A page to look at, of one plan. */
  HTML;

  /** Begins a report of this format. */
  public Renderer to(Writer out, Layout layout) {
    return switch (this) {
      case TEXT -> new TextReport(out, layout.choice(), layout.width(), layout.ink());
      case JSON -> new JsonReport(out, layout.program());
      case NDJSON -> new LinesReport(out, layout.program());
      case SARIF -> new SarifReport(out, layout);
      case JUNIT -> new JunitReport(out, layout);
      case MARKDOWN -> new MarkdownReport(out, layout);
      case HTML -> new HtmlReport(out);
    };
  }
}
