package peakproof.report;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import peakproof.audit.Finding;

/** What a finding rests on, short enough to stand beside its reason. */
final class Evidence {
  private static final Pattern YEAR = Pattern.compile("\\b(?:19|20)\\d\\d\\b");
  private static final Pattern INITIALS = Pattern.compile("( [A-Z]{1,3})+$");
  private static final int NAMED = 2;

  private Evidence() {}

  /** {@code cohort: Frandsen 2025}, or {@code coaching convention} where nobody has measured it. */
  static String of(Finding finding) {
    String grade =
        switch (finding.grade()) {
          case "expert-practice", "common-practice" -> "coaching convention";
          default -> finding.grade();
        };
    List<String> sources = finding.sources();
    if (sources.isEmpty()) {
      return grade;
    }
    String named =
        sources.stream().limit(NAMED).map(Evidence::brief).collect(Collectors.joining(", "));
    int more = sources.size() - NAMED;
    return grade + ": " + named + (more > 0 ? " and " + more + " more" : "");
  }

  /** Author and year of {@code author, year, journal, DOI}. */
  private static String brief(String source) {
    String author = INITIALS.matcher(source.split("[,;(]", 2)[0].strip()).replaceFirst("");
    Matcher year = YEAR.matcher(source);
    if (!year.find() || YEAR.matcher(author).find()) {
      return author;
    }
    return author + " " + year.group();
  }
}
