package peakproof.report;

import java.util.Locale;

/**
 * The brief as one page to read, print or keep as PDF.
 *
 * @param brief what it shows
 * @param style what it adds to the style all pages share
 */
public record BriefPage(Brief brief, String style) {
  /** Paper sizes, in the names of CSS. */
  public enum Paper {
    /** ISO 216. */
    A4,
    LETTER;

    private String sheet() {
      return "@page { size: " + name().toLowerCase(Locale.ROOT) + "; margin: 15mm; }\n";
    }
  }

  /** The whole page. */
  public static String of(Brief brief, Paper paper) {
    return Html.of("brief", new BriefPage(brief, paper.sheet() + Frame.resource("brief.css")));
  }

  /** What stands around it. */
  Frame frame() {
    return Frame.of(
        brief.athlete() + " – " + brief.race().name(),
        "Plan as of " + Dates.full(brief.asOf()) + ".");
  }

  /** {@code Sun 4 Jul 2027, start 06:30, local time at the race}. */
  String when() {
    String start = brief.race().startWords();
    return Dates.full(brief.race().date()) + (start == null ? "" : ", start " + start);
  }
}
