package peakproof.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringWriter;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import peakproof.Golden;
import peakproof.audit.Audit;
import peakproof.rule.Severity;

class TextReportTest {
  private static final Choice USUAL = new Choice(false, 3);
  private static final Choice ALL = new Choice(true, 3);

  @Test
  void readsWellAtAHundredColumns() {
    Golden.assertMatches("report/runa-100.txt", text(100, USUAL, Sample.runa()));
  }

  @Test
  void readsWellOnANarrowTerminal() {
    Golden.assertMatches("report/runa-56.txt", text(56, USUAL, Sample.runa()));
  }

  @Test
  void showsEverythingOfSeveralPlansWorstFirst() {
    Audit calm = Sample.audit("Ask Berge", null, List.of());
    Golden.assertMatches("report/two-all-80.txt", text(80, ALL, calm, Sample.runa()));
  }

  @Test
  void keepsEveryLineWithinTheWidth() {
    for (int width = 40; width <= 120; width++) {
      assertThat(text(width, ALL, Sample.runa(), Sample.audit("Odd", null, List.of())).lines())
          .allMatch(withinColumns(width));
    }
  }

  @Test
  void isCalmWhenNothingIsFoundAndPromisesNothing() {
    String text =
        text(100, USUAL, Sample.audit("Ask Berge", "plans/Ask Berge/log.yaml", List.of()));
    assertThat(text)
        .contains("\nNothing found: 2 rules judged the plan and the log as of Sun 30 May 2027.\n")
        .doesNotContainIgnoringCase("safe")
        .doesNotContainIgnoringCase("cleared");
  }

  @Test
  void countsNotesItDoesNotShow() {
    Audit audit =
        Sample.audit("Ask", null, List.of(Sample.finding("swim-bilateral", Severity.NOTE)));
    assertThat(text(100, USUAL, audit))
        .contains("\nNothing to hold, fix or ask: 3 rules judged the plan as of Sun 30 May 2027;")
        .contains(" 1 note: --all\n");
  }

  @Test
  void saysWhenOnlyTheHoldsWereAskedForAndThereAreNone() {
    Audit audit = Sample.audit("Ask", null, List.of(Sample.finding("brick-big", Severity.FIX)));
    assertThat(text(100, new Choice(false, 0), audit))
        .contains(
            "\nNothing to hold: 3 rules judged the plan as of Sun 30 May 2027; 1 more: --all\n");
  }

  @Test
  void saysThatABrokenRuleMadeItIncomplete() {
    assertThat(text(100, USUAL, Ink.PLAIN, 1, new Judged(Sample.runa(), false)))
        .contains("\nIncomplete: a broken rule could not run");
  }

  @Test
  void printsNothingWhenNoPlanWasAudited() {
    assertThat(text(100, USUAL, Ink.PLAIN, 2)).isEmpty();
  }

  @Test
  void coloursOnlyTheHoldAndRepeatsNothingInColourAlone() {
    String coloured = text(100, USUAL, Ink.COLOUR, 1, new Judged(Sample.runa(), true));
    assertThat(coloured).containsOnlyOnce("\033[1;35mHOLD\033[0m");
    assertThat(coloured.replaceAll("\033\\[[0-9;]*m", ""))
        .isEqualTo(text(100, USUAL, Sample.runa()));
  }

  @Test
  void staysEnglishInEveryLocale() {
    Locale before = Locale.getDefault();
    String english = text(100, ALL, Sample.runa());
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertThat(text(100, ALL, Sample.runa())).isEqualTo(english);
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void letsNoDocumentRepaintTheTerminal() {
    Audit audit = Sample.audit("Eve\033[2J\r\n\u202eevE", null, List.of());
    assertThat(text(100, USUAL, audit)).contains("Eve�[2J �evE ·").doesNotContain("\033");
  }

  private static String text(int width, Choice choice, Audit... audits) {
    Judged[] judged =
        Stream.of(audits).map(audit -> new Judged(audit, true)).toArray(Judged[]::new);
    return text(width, choice, Ink.PLAIN, audits.length, judged);
  }

  private static String text(int width, Choice choice, Ink ink, int plans, Judged... all) {
    StringWriter out = new StringWriter();
    Written.by(new TextReport(out, choice, width, ink), plans, all);
    return out.toString();
  }

  /** A file name or a rule's name is never broken, however narrow the page. */
  private static Predicate<String> withinColumns(int width) {
    return line -> line.codePointCount(0, line.length()) <= width || !line.strip().contains(" ");
  }
}
