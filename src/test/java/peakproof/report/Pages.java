package peakproof.report;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import peakproof.audit.Auditor;
import peakproof.audit.Auditor.Outcome;

/** Pages of plans on disk, all judged by the shipped rules, which are compiled once for them. */
public final class Pages {
  private static final Auditor AUDITOR = Auditor.load(List.of(Path.of("rules")));
  private static final LocalDate AS_OF = LocalDate.parse("2027-05-30");

  private Pages() {}

  /** What came of a plan as of 30 May 2027. */
  static Judged judged(Path plan) {
    Outcome outcome = AUDITOR.audit(plan, new Auditor.Options(AS_OF, null));
    if (outcome instanceof Outcome.Judged judged) {
      return new Judged(judged.audit(), judged.complete(), judged.background());
    }
    throw new AssertionError(plan + ": " + outcome);
  }

  /** The coach's page of a plan as of 30 May 2027. */
  public static String of(Path plan) {
    return HtmlReport.of(judged(plan));
  }
}
