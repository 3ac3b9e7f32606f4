package peakproof.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import peakproof.browser.Browser;
import peakproof.browser.Browser.View;

/** The coach's page in a real browser. */
class AuditPageLookTest {
  private static final List<String> ATHLETES = List.of("noor", "radek", "mateus");

  /** Patterns, printed, once made ten times as much. */
  private static final int MOST_PDF = 2_000_000;

  @TempDir static Path folder;
  private static Browser browser;
  private static final List<Path> PAGES = new ArrayList<>();

  @BeforeAll
  static void layOut() throws IOException {
    browser = Browser.start();
    for (String athlete : ATHLETES) {
      Path page = folder.resolve(athlete + ".html");
      PAGES.add(Files.writeString(page, Pages.of(Path.of("plans", athlete, "plan.yaml"))));
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
    for (Path page : PAGES) {
      for (View view : List.of(View.DESK, View.DESK.atNight(), View.PHONE)) {
        browser.open(page, view);
        browser.evaluate("document.querySelectorAll('details').forEach(one => one.open = true)");
        assertThat(browser.violations()).as("%s %s", page, view).isEmpty();
      }
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
        browser.evaluate("document.querySelectorAll('details').forEach(one => one.open = true)");
        assertThat(browser.overflow()).as("%s %s", page, view).isZero();
      }
    }
  }

  @Test
  void showsOnPaperWhatIsFoldedAwayOnScreen() {
    String clipped =
        "[...document.querySelectorAll('.wide')].filter(one => one.scrollWidth >"
            + " one.clientWidth).map(one => one.getAttribute('aria-label')).join()";
    String folded =
        "[...document.querySelectorAll('dd, td, .says, li')]"
            + ".filter(one => one.getBoundingClientRect().height === 0).length";
    for (Path page : PAGES) {
      browser.open(page, View.A4);
      assertThat(browser.evaluate(clipped).asText()).as("%s", page).isEmpty();
      assertThat(browser.evaluate(folded).asInt()).as("%s", page).isZero();
      String pdf = new String(browser.pdf(), StandardCharsets.ISO_8859_1);
      assertThat(pdf.length()).as("%s", page).isLessThan(MOST_PDF);
      assertThat(pdf).startsWith("%PDF-").containsPattern("/MediaBox \\[0 0 59[45][.\\d]* 84[12]");
    }
  }

  @Test
  void leadsFromThePinToTheFindingAndBackByKeyboard() {
    browser.open(PAGES.get(0), View.DESK);
    int findings = browser.evaluate("document.querySelectorAll('.card').length").asInt();
    assertThat(findings).isGreaterThan(6);
    TreeSet<String> reached = new TreeSet<>();
    boolean followed = false;
    for (int i = 0; i < 150; i++) {
      browser.press("Tab");
      reached.add(
          browser
              .evaluate(
                  "document.activeElement.tagName === 'SUMMARY' ?"
                      + " document.activeElement.querySelector('h3')?.textContent ?? '' : ''")
              .asText());
      if (!followed && focus("a.pin[href=\"#f-" + findings + "\"]")) {
        followed = true;
        assertThat(open(findings)).isFalse();
        browser.press("Enter");
        assertThat(browser.evaluate("location.hash").asText()).isEqualTo("#f-" + findings);
        assertThat(open(findings)).isTrue();
      }
    }
    assertThat(followed).isTrue();
    reached.remove("");
    assertThat(reached).hasSize(findings);
  }

  private static boolean focus(String selector) {
    return browser.evaluate("document.activeElement.matches('" + selector + "')").asBoolean();
  }

  private static boolean open(int order) {
    return browser
        .evaluate(
            "new Promise(done => setTimeout(() => done(document.getElementById('f-"
                + order
                + "').closest('details').open), 100))")
        .asBoolean();
  }

  @Test
  void filtersFindingsAndTheirPins() {
    browser.open(PAGES.get(0), View.DESK);
    browser.evaluate("document.querySelector('[value=NOTE]').click()");
    assertThat(browser.evaluate("document.querySelector('.filter output').textContent").asText())
        .isEqualTo("6 of 8");
    assertThat(
            browser
                .evaluate(
                    "[...document.querySelectorAll('[data-severity=NOTE]')]"
                        + ".filter(one => one.getClientRects().length > 0).length")
                .asInt())
        .isZero();
  }

  @Test
  void staysWholeWhateverADocumentSays() throws IOException {
    String payload = "</script><script>document.title='gone'</script><img src=x onerror=\"x\">";
    Path page =
        Files.writeString(
            folder.resolve("hostile.html"),
            HostilePageTest.page(folder.resolve("hostile"), payload.repeat(70)));
    browser.open(page, View.PHONE);
    assertThat(browser.evaluate("document.title").asText()).startsWith("</script>");
    assertThat(browser.evaluate("document.querySelectorAll('script').length").asInt()).isOne();
    assertThat(browser.evaluate("document.querySelectorAll('img').length").asInt()).isZero();
    assertThat(browser.overflow()).isZero();
  }
}
