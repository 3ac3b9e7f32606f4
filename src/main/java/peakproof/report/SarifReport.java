package peakproof.report;

import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.concurrent.atomic.AtomicBoolean;
import peakproof.audit.Audit;
import peakproof.audit.Audit.AcceptedFinding;
import peakproof.audit.Baseline;
import peakproof.audit.Comparison;
import peakproof.audit.Comparison.Since;
import peakproof.audit.Discreet;
import peakproof.audit.Finding;
import peakproof.audit.Gone;

/**
 * The report for hosts that show findings on the line, in SARIF 2.1.0 (OASIS). Results go out as
 * they come; the rules and how the run went are told after them, since properties have no order.
 */
final class SarifReport implements Renderer {
  private static final String SCHEMA =
      "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";
  private static final String INDENT = "\n        ";
  private static final String RESULTS = "\"results\": []";

  private final Writer out;
  private final Layout layout;
  private final Map<String, Finding> ofHouses = new ConcurrentSkipListMap<>();
  private final AtomicBoolean incomplete = new AtomicBoolean();
  private final List<String> ofPlansGone = new ArrayList<>();
  private boolean begun;
  private int audited;

  SarifReport(Writer out, Layout layout) {
    this.out = out;
    this.layout = layout;
  }

  @Override
  public String page(Judged judged) {
    if (!judged.complete()) {
      incomplete.set(true);
    }
    Audit audit = layout.withHealth() ? judged.audit() : Discreet.of(judged.audit());
    SarifResult result = new SarifResult(audit);
    List<String> results = new ArrayList<>();
    Comparison compared = judged.comparison();
    for (Finding finding : audit.findings()) {
      Since since = compared == null ? null : compared.findings().get(results.size());
      results.add(Json.of(json -> result.write(json, finding, since, null)));
      noteRule(finding);
    }
    Since livedWith = compared == null ? null : Since.KNOWN;
    for (AcceptedFinding accepted : audit.accepted()) {
      results.add(Json.of(json -> result.write(json, accepted.finding(), livedWith, accepted)));
      noteRule(accepted.finding());
    }
    if (compared != null) {
      results.addAll(absent(compared.gone(), audit.ofHealth()));
    }
    return String.join(",", results.stream().map(SarifReport::indented).toList());
  }

  /** What is gone; rules that are no more have their title in the result alone. */
  private List<String> absent(List<Gone> gone, Set<String> ofHealth) {
    return gone.stream()
        .map(one -> layout.withHealth() ? one : one.discreet(ofHealth))
        .map(one -> Json.of(json -> SarifResult.writeAbsent(json, one)))
        .toList();
  }

  private static String indented(String result) {
    return ("\n" + result.stripTrailing()).replace("\n", INDENT);
  }

  /** Rules that only some houses have are told as far as their findings tell of them. */
  private void noteRule(Finding finding) {
    if (!layout.rules().get().cards().containsKey(finding.rule())
        && !finding.rule().equals(Discreet.RULE)) {
      ofHouses.putIfAbsent(finding.rule(), finding);
    }
  }

  @Override
  public void add(Rank rank, String page) throws IOException {
    audited++;
    if (!page.isEmpty()) {
      write(page);
    }
  }

  private void write(String page) throws IOException {
    if (begun) {
      out.write(",");
    } else {
      String all = document(0);
      out.write(all.substring(0, all.indexOf(RESULTS) + RESULTS.length() - 1));
    }
    begun = true;
    out.write(page);
  }

  @Override
  public void compared(Balance balance) {
    for (Baseline.Left left : balance.left()) {
      ofPlansGone.addAll(absent(left.findings(), Set.of()));
    }
  }

  @Override
  public void end(int plans) throws IOException {
    if (!ofPlansGone.isEmpty()) {
      write(String.join(",", ofPlansGone.stream().map(SarifReport::indented).toList()));
    }
    String all = document(plans - audited);
    int inside = all.indexOf(RESULTS) + RESULTS.length() - 1;
    out.write(begun ? "\n      " + all.substring(inside) : all);
  }

  private String document(int notAudited) {
    return Json.of(
        json -> {
          json.text("$schema", SCHEMA);
          json.text("version", "2.1.0");
          json.each("runs", List.of(notAudited), (run, left) -> writeRun(run, left));
        });
  }

  private void writeRun(Json run, int notAudited) throws IOException {
    run.text("columnKind", "unicodeCodePoints");
    run.object(
        "originalUriBaseIds",
        bases ->
            bases.object(
                SarifResult.BASE,
                base -> SarifRules.message(base, "description", "Where the program was started.")));
    run.each("results", List.of(), (inner, none) -> {});
    run.object("tool", tool -> tool.object("driver", driver -> writeDriver(driver)));
    run.each("invocations", List.of(notAudited), this::writeInvocation);
  }

  private void writeDriver(Json driver) throws IOException {
    String[] program = layout.program().split(" ", 2);
    driver.text("name", program[0]);
    driver.text("version", program[program.length - 1]);
    SarifRules rules = new SarifRules(layout.rules().get(), layout.withHealth());
    driver.each("rules", rules.all(ofHouses.values()), (json, rule) -> rule.write(json));
  }

  private void writeInvocation(Json json, int notAudited) throws IOException {
    List<String> notifications = new ArrayList<>();
    if (incomplete.get()) {
      notifications.add("A broken rule could not run; what the others found is here.");
    }
    if (notAudited > 0) {
      notifications.add(
          notAudited
              + (notAudited == 1 ? " plan was" : " plans were")
              + " not audited; standard error says why.");
    }
    json.truth("executionSuccessful", notifications.isEmpty());
    json.each(
        "toolExecutionNotifications",
        notifications,
        (inner, text) -> {
          inner.text("level", "error");
          SarifRules.message(inner, "message", text);
        });
  }
}
