package peakproof.report;

import java.io.IOException;
import java.io.Writer;
import peakproof.audit.Audit;
import peakproof.audit.Discreet;

/** The report for pipelines that show tests: a suite for each plan, a case for each rule. */
final class JunitReport implements Renderer {
  private static final String BEFORE = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<testsuites>";

  private final Writer out;
  private final Layout layout;
  private boolean begun;
  private int audited;

  JunitReport(Writer out, Layout layout) {
    this.out = out;
    this.layout = layout;
  }

  @Override
  public String page(Judged judged) {
    Audit audit = layout.withHealth() ? judged.audit() : Discreet.of(judged.audit());
    JunitSuite suite = new JunitSuite(audit, layout.failAt());
    suite.addRules();
    if (!layout.withHealth()) {
      suite.addHealth();
    }
    if (!judged.complete()) {
      suite.addError("rules", "A broken rule could not run; standard error says which.");
    }
    return suite.xml();
  }

  @Override
  public void add(Rank rank, String page) throws IOException {
    begin();
    audited++;
    out.write(page);
  }

  @Override
  public void end(int plans) throws IOException {
    begin();
    int left = plans - audited;
    if (left > 0) {
      String what = left + (left == 1 ? " plan was" : " plans were") + " not audited";
      out.write(JunitSuite.error(what, "plans", what + "; standard error says why."));
    }
    out.write("\n</testsuites>\n");
  }

  private void begin() throws IOException {
    out.write(begun ? "" : BEFORE);
    begun = true;
  }
}
