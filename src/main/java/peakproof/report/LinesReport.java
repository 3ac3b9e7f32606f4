package peakproof.report;

import java.io.IOException;
import java.io.Writer;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Fault;

/** The report for programs that take one audit after the other: a line of JSON each. */
public final class LinesReport implements Renderer {
  private final Writer out;
  private final String program;

  /** Writes to {@code out}, in the order of the plans. */
  public LinesReport(Writer out, String program) {
    this.out = out;
    this.program = program;
  }

  @Override
  public String page(Judged judged) {
    return audit(judged, null);
  }

  /**
   * An audit of a plan that came in a line of its own.
   *
   * @param line of the input, counted from 1
   */
  public String page(Judged judged, int line) {
    return audit(judged, line);
  }

  private String audit(Judged judged, @Nullable Integer line) {
    Report report = Report.of(judged, new Choice(true, 0));
    return Json.line(
        json -> {
          begin(json, line);
          JsonAudit.write(json, report);
        });
  }

  /** What is wrong with a line of the input, in place of its audit. */
  public String page(List<Fault> faults, int line) {
    return Json.line(
        json -> {
          begin(json, line);
          json.each(
              "faults",
              faults,
              (inner, fault) -> {
                inner.text("file", fault.place().file());
                inner.count("line", fault.place().line());
                inner.count("column", fault.place().column());
                inner.text("what", fault.what());
                inner.text("expected", fault.expected());
                inner.text("instead", fault.instead());
              });
        });
  }

  private void begin(Json json, @Nullable Integer line) throws IOException {
    json.count("format", JsonReport.FORMAT);
    json.text("program", program);
    if (line != null) {
      json.count("line", line);
    }
  }

  @Override
  public void add(Rank rank, String page) throws IOException {
    add(page);
  }

  /** Takes one page. */
  public void add(String page) throws IOException {
    out.write(page);
    out.flush();
  }

  @Override
  public void end(int plans) {}
}
