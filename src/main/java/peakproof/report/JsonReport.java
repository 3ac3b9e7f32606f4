package peakproof.report;

import java.io.IOException;
import java.io.Writer;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The report for programs: every finding, whatever the reader chose to see, in the order of the
 * plans. Names and shape are a promise, to which later versions only add.
 */
public final class JsonReport implements Renderer {
  static final int FORMAT = 1;

  private static final String INDENT = "\n    ";

  private final Writer out;
  private final String before;
  private final String after;
  private boolean begun;
  private @Nullable Balance balance;

  /** Writes to {@code out}; the same bytes for the same audits. */
  public JsonReport(Writer out, String program) {
    this.out = out;
    String empty =
        Json.of(
            json -> {
              json.count("format", FORMAT);
              json.text("program", program);
              json.each("audits", List.of(), (inner, none) -> {});
            });
    int inside = empty.lastIndexOf(']');
    this.before = empty.substring(0, inside);
    this.after = empty.substring(inside);
  }

  @Override
  public String page(Judged judged) {
    Report report = Report.of(judged, new Choice(true, 0));
    return Json.of(json -> JsonAudit.write(json, report)).stripTrailing().replace("\n", INDENT);
  }

  @Override
  public void add(Rank rank, String page) throws IOException {
    out.write(begun ? "," : before);
    begun = true;
    out.write(INDENT);
    out.write(page);
  }

  @Override
  public void compared(Balance with) {
    balance = with;
  }

  @Override
  public void end(int plans) throws IOException {
    out.write(begun ? "\n  " : before);
    Balance with = balance;
    if (with == null) {
      out.write(after);
    } else {
      String against = Json.of(json -> json.object("against", inner -> write(inner, with)));
      out.write("]," + against.substring(against.indexOf('\n')));
    }
  }

  private static void write(Json json, Balance balance) throws IOException {
    json.text("what", balance.against());
    json.count("new", balance.fresh());
    json.count("known", balance.known());
    json.count("gone", balance.gone());
    json.each(
        "plansGone",
        balance.left(),
        (inner, left) -> {
          inner.text("plan", left.plan());
          inner.text("athlete", left.who().athlete());
          inner.date("raceDate", left.who().race());
          inner.each("gone", left.findings(), JsonAudit::write);
        });
  }
}
