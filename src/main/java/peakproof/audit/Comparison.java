package peakproof.audit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import peakproof.rule.Severity;

/**
 * An audit beside an earlier one of the same athlete and race. What is found again is known, unless
 * it weighs more than it did: then somebody has to look, as at anything new.
 *
 * @param findings new or known, in the order of the audit's findings
 * @param gone earlier findings that are neither found again nor accepted
 */
public record Comparison(List<Since> findings, List<Gone> gone) {
  /** How a finding stands to the earlier audit. */
  public enum Since {
    NEW("new"),
    KNOWN("known");

    private final String word;

    Since(String word) {
      this.word = word;
    }

    /** As it is written in reports. */
    public String word() {
      return word;
    }
  }

  /** Compares with what was found earlier. */
  public static Comparison of(Audit audit, List<Gone> earlier) {
    List<Since> findings = new ArrayList<>();
    Set<String> present = new HashSet<>();
    for (Finding finding : audit.findings()) {
      present.add(finding.fingerprint());
      boolean known =
          earlier.stream()
              .anyMatch(
                  one ->
                      one.fingerprint().equals(finding.fingerprint())
                          && one.severity().atLeast(finding.severity()));
      findings.add(known ? Since.KNOWN : Since.NEW);
    }
    audit.accepted().forEach(accepted -> present.add(accepted.finding().fingerprint()));
    return new Comparison(
        List.copyOf(findings),
        earlier.stream()
            .filter(one -> !present.contains(one.fingerprint()))
            .map(one -> one.in(audit))
            .toList());
  }

  /** How many findings are new, or known. */
  public int count(Since since) {
    return (int) findings.stream().filter(since::equals).count();
  }

  /** True when a new finding of the audit weighs at least {@code bar}. */
  public boolean reaches(Severity bar, Audit audit) {
    for (int i = 0; i < findings.size(); i++) {
      if (findings.get(i) == Since.NEW && audit.findings().get(i).severity().atLeast(bar)) {
        return true;
      }
    }
    return false;
  }
}
