package peakproof.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import peakproof.browser.Browser;
import peakproof.browser.Browser.View;

/** The brief's page in a real browser: three athletes' on both papers. */
class BriefPageLookTest {
  private static final List<Path> PAGES = new ArrayList<>();
  private static final int MOST_PDF = 2_000_000;

  @TempDir static Path folder;
  private static Browser browser;

  @BeforeAll
  static void layOut() throws IOException {
    browser = Browser.start();
    for (String athlete : List.of("noor", "meera", "ines")) {
      Brief brief = Briefs.of("plans/" + athlete + "/plan.yaml");
      for (BriefPage.Paper paper : BriefPage.Paper.values()) {
        Path page = folder.resolve(athlete + paper + ".html");
        PAGES.add(Files.writeString(page, BriefPage.of(brief, paper)));
      }
    }
  }

  @AfterAll
  static void close() throws IOException {
    PAGES.clear();
    if (browser != null) {
      browser.close();
    }
  }

  @Test
  void hasNothingAgainstItByDayAndNight() {
    for (View view : List.of(View.DESK, View.DESK.atNight(), View.PHONE)) {
      browser.open(PAGES.get(0), view);
      assertThat(browser.violations()).as("%s", view).isEmpty();
    }
  }

  @Test
  void loadsNothing() {
    for (Path page : PAGES) {
      browser.open(page, View.DESK);
      assertThat(browser.loaded()).isEmpty();
    }
  }

  @Test
  void isNeverWiderThanItsWindow() {
    for (Path page : PAGES) {
      for (View view : List.of(View.PHONE, View.TWICE, View.DESK, View.A4)) {
        browser.open(page, view);
        assertThat(browser.overflow()).as("%s %s", page, view).isZero();
      }
    }
  }

  @Test
  void printsOnThePaperThatWasAskedFor() {
    for (Path page : PAGES) {
      browser.open(page, View.A4);
      String pdf = new String(browser.pdf(), StandardCharsets.ISO_8859_1);
      assertThat(pdf.length()).as("%s", page).isLessThan(MOST_PDF);
      boolean letter = page.toString().contains(BriefPage.Paper.LETTER.name());
      assertThat(pdf)
          .containsPattern(
              letter ? "/MediaBox \\[0 0 612 792" : "/MediaBox \\[0 0 59[45][.\\d]* 84[12]");
    }
  }
}
