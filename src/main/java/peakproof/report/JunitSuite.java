package peakproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import javax.xml.stream.XMLStreamException;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Audit;
import peakproof.audit.Audit.AcceptedFinding;
import peakproof.audit.Discreet;
import peakproof.audit.Finding;
import peakproof.audit.Finding.Location;
import peakproof.fact.Words;
import peakproof.rule.Severity;

/**
 * One plan as a suite. A rule fails where it found something at or above the bar; what it found
 * below stands in its output. What was not judged, or what somebody decided, is skipped and says
 * why.
 */
final class JunitSuite {
  private final Audit audit;
  private final String plan;
  private final Severity failAt;
  private final Map<String, Case> cases = new TreeMap<>();

  /** What came of a rule, in the elements of a case. */
  private record Case(
      @Nullable String skipped, @Nullable String error, List<Finding> failed, List<Finding> below) {
    static Case passed() {
      return new Case(null, null, new ArrayList<>(), new ArrayList<>());
    }

    static Case skipped(String why) {
      return new Case(why, null, List.of(), List.of());
    }

    static Case error(String what) {
      return new Case(null, what, List.of(), List.of());
    }
  }

  JunitSuite(Audit audit, Severity failAt) {
    this.audit = audit;
    this.plan = audit.plan();
    this.failAt = failAt;
  }

  void addRules() {
    audit.clear().forEach(rule -> cases.put(rule, Case.passed()));
    audit
        .notJudged()
        .forEach(
            one ->
                cases.put(one.rule(), Case.skipped("not judged: " + Words.missing(one.missing()))));
    audit
        .notForThisPlan()
        .forEach(one -> cases.put(one.rule(), Case.skipped("not for this plan: " + one.because())));
    audit
        .silenced()
        .forEach(
            one -> cases.put(one.rule(), Case.skipped("silenced by the house: " + one.because())));
    for (AcceptedFinding one : audit.accepted()) {
      cases.put(one.finding().rule(), Case.skipped("accepted: " + one.because()));
    }
    for (Finding finding : audit.findings()) {
      Case its = cases.get(finding.rule());
      if (its == null || its.skipped() != null) {
        its = Case.passed();
        cases.put(finding.rule(), its);
      }
      (finding.severity().atLeast(failAt) ? its.failed() : its.below()).add(finding);
    }
  }

  /** One case for all rules that read health entries: which of them it was is told to nobody. */
  void addHealth() {
    cases.putIfAbsent(Discreet.RULE, Case.passed());
  }

  void addError(String name, String what) {
    cases.put(name, Case.error(what));
  }

  /** A suite that holds nothing but an error. */
  static String error(String suite, String name, String what) {
    return Xml.of(
        xml ->
            suite(
                xml,
                suite,
                new int[] {1, 0, 1, 0},
                inner ->
                    inner.element(
                        2,
                        "testcase",
                        test -> {
                          test.attribute("name", name);
                          error(test, what);
                          test.line(2);
                        })));
  }

  String xml() {
    int failures = count(one -> !one.failed().isEmpty());
    int errors = count(one -> one.error() != null);
    int skipped = count(one -> one.skipped() != null);
    return Xml.of(
        xml ->
            suite(
                xml,
                plan,
                new int[] {cases.size(), failures, errors, skipped},
                inner -> {
                  for (Map.Entry<String, Case> each : cases.entrySet()) {
                    inner.element(
                        2, "testcase", test -> write(test, each.getKey(), each.getValue()));
                  }
                }));
  }

  private int count(Predicate<Case> which) {
    return (int) cases.values().stream().filter(which).count();
  }

  private static void suite(Xml xml, String name, int[] counts, Xml.Inside cases)
      throws XMLStreamException {
    xml.element(
        1,
        "testsuite",
        suite -> {
          suite.attribute("name", name);
          suite.attribute("tests", counts[0]);
          suite.attribute("failures", counts[1]);
          suite.attribute("errors", counts[2]);
          suite.attribute("skipped", counts[3]);
          cases.write(suite);
          suite.line(1);
        });
  }

  private void write(Xml test, String rule, Case its) throws XMLStreamException {
    test.attribute("name", rule);
    test.attribute("classname", plan);
    String skipped = its.skipped();
    if (skipped != null) {
      test.element(3, "skipped", inner -> inner.text(skipped));
    }
    if (its.error() != null) {
      error(test, its.error());
    }
    if (!its.failed().isEmpty()) {
      Finding first = its.failed().get(0);
      test.element(
          3,
          "failure",
          inner -> {
            inner.attribute("type", first.severity());
            inner.attribute("message", first.title());
            inner.text(text(its.failed()));
          });
    }
    if (!its.below().isEmpty()) {
      test.element(3, "system-out", inner -> inner.text(text(its.below())));
    }
    if (skipped != null || !its.equals(Case.passed())) {
      test.line(2);
    }
  }

  private static void error(Xml test, String what) throws XMLStreamException {
    test.element(
        3,
        "error",
        inner -> {
          inner.attribute("message", what);
          inner.text(what);
        });
  }

  private String text(List<Finding> findings) {
    List<String> lines = new ArrayList<>();
    for (Finding finding : findings) {
      lines.add(finding.severity() + ": " + finding.title());
      for (Location location : finding.where()) {
        lines.add("at " + location.place());
      }
      lines.add("why: " + finding.why());
      lines.add("do: " + finding.remedy());
      if (finding.care() != null) {
        lines.add("care: " + finding.care());
      }
    }
    return String.join("\n", lines);
  }
}
