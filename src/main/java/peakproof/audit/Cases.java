package peakproof.audit;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import peakproof.document.Documents;
import peakproof.document.Dossier;
import peakproof.document.Fault;
import peakproof.document.Reading;
import peakproof.rule.Case;
import peakproof.rule.Resolution;
import peakproof.rule.Severity;

/** Runs the cases beside the rules: the whole audit of a changed base document, closed world. */
public final class Cases {
  private final Auditor auditor;

  private Cases(Auditor auditor) {
    this.auditor = auditor;
  }

  /** Runs the cases of the rules of one folder, in the order of rules and files. */
  public static List<CaseResult> run(Auditor auditor, Path folder) {
    Cases cases = new Cases(auditor);
    return of(auditor, folder).values().stream()
        .flatMap(Collection::stream)
        .map(cases::run)
        .toList();
  }

  /** Rules of a folder without a case. */
  public static List<String> rulesWithout(Auditor auditor, Path folder) {
    Map<String, List<Case>> cases = of(auditor, folder);
    return auditor.rules().origin().keySet().stream()
        .filter(rule -> auditor.rules().isIn(rule, folder))
        .filter(rule -> cases.getOrDefault(rule, List.of()).isEmpty())
        .toList();
  }

  private static Map<String, List<Case>> of(Auditor auditor, Path folder) {
    Map<String, List<Case>> cases = new TreeMap<>(auditor.rules().cases());
    cases.keySet().removeIf(rule -> !auditor.rules().isIn(rule, folder));
    return cases;
  }

  private CaseResult run(Case tried) {
    Reading reading =
        Documents.read("rules/base/plan.yaml", tried.plan(), tried.event(), tried.log(), null);
    Dossier dossier = reading.dossier();
    if (dossier == null) {
      return new CaseResult(tried.rule(), tried.name(), false, "" + reading.faults());
    }
    Resolution resolved = Resolution.trying(tried.rule(), auditor.rules(), dossier);
    Auditor.Outcome outcome = auditor.audit(dossier, resolved, tried.asOf());
    if (outcome instanceof Auditor.Outcome.Judged judged) {
      List<String> wrong = differences(tried, judged.audit());
      return new CaseResult(tried.rule(), tried.name(), wrong.isEmpty(), String.join("; ", wrong));
    }
    String why =
        outcome instanceof Auditor.Outcome.Wrong wrong
            ? wrong.faults().stream().map(Fault::toString).collect(Collectors.joining("; "))
            : "a rule did not come to its end";
    return new CaseResult(tried.rule(), tried.name(), false, why);
  }

  /** What an audit has that a case does not ask for, and the other way round. */
  static List<String> differences(Case tried, Audit audit) {
    List<String> wrong = new ArrayList<>();
    Map<String, Severity> found = new TreeMap<>();
    for (Finding finding : audit.findings()) {
      found.merge(finding.rule(), finding.severity(), Cases::heavier);
    }
    Set<String> rules = new TreeSet<>(found.keySet());
    rules.addAll(tried.finds().keySet());
    for (String rule : rules) {
      Severity is = found.get(rule);
      Severity asked = tried.finds().get(rule);
      if (is != asked) {
        wrong.add(rule + " is " + word(is) + ", the case asks for " + word(asked));
      }
    }
    Set<String> unjudged = new TreeSet<>();
    audit.notJudged().forEach(rule -> unjudged.add(rule.rule()));
    tried.unsure().stream()
        .filter(rule -> !unjudged.contains(rule))
        .forEach(rule -> wrong.add(rule + " is judged, the case asks for not judged"));
    if (tried.expectation() == Case.Expectation.WRONG && !tried.finds().containsKey(tried.rule())) {
      wrong.add("a wrong case must find its own rule");
    }
    return wrong;
  }

  private static Severity heavier(Severity one, Severity other) {
    return one.atLeast(other) ? one : other;
  }

  private static String word(@Nullable Severity severity) {
    return severity == null ? "silent" : severity.name();
  }
}
