package peakproof.report;

import java.util.ArrayList;
import java.util.List;
import peakproof.audit.Audit.NotFor;
import peakproof.audit.Audit.NotJudged;
import peakproof.report.Report.Missing;

/**
 * What was not judged, and which entries would let it.
 *
 * @param entries those that settle most rules first
 * @param holds rules among them that could have held the plan
 * @param notFor rules that do not apply, with the reason
 */
record OpenPart(List<Entry> entries, List<String> holds, List<NotFor> notFor) {
  /** An entry with the rules it would settle. */
  record Entry(String entry, List<String> rules) {}

  static OpenPart of(Report report) {
    List<Entry> entries = new ArrayList<>();
    for (Missing missing : report.missing()) {
      entries.add(
          new Entry(
              missing.entry(),
              report.audit().notJudged().stream()
                  .filter(rule -> rule.missing().contains(missing.entry()))
                  .map(NotJudged::rule)
                  .toList()));
    }
    return new OpenPart(entries, report.holdsNotJudged(), report.audit().notForThisPlan());
  }
}
