package peakproof.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import peakproof.browser.Browser;
import peakproof.browser.Browser.View;

/** The roster's page in a real browser. */
class RosterPageLookTest {
  private static final LocalDate SINCE = LocalDate.parse("2027-05-23");
  private static final List<String> ATHLETES = List.of("noor", "radek", "mateus", "tove");
  private static final int TIMES = 10;
  private static final String SHOWN =
      "[...document.querySelectorAll('.squad tbody tr')].filter(row => !row.hidden)";

  @TempDir static Path folder;
  private static Browser browser;
  private static Path page;

  @BeforeAll
  static void layOut() throws IOException {
    browser = Browser.start();
    List<Judged> squad = new ArrayList<>();
    for (String athlete : ATHLETES) {
      squad.add(Pages.judged(Path.of("plans", athlete, "plan.yaml")));
    }
    Roster roster = new Roster(List.of("plans/wrong/plan.yaml"), SINCE);
    for (int i = 0; i < TIMES * ATHLETES.size(); i++) {
      Judged judged = squad.get(i % ATHLETES.size());
      Judged other = squad.get((i + 1) % ATHLETES.size());
      String file = ATHLETES.get(i % ATHLETES.size()) + "-0123abcd.html";
      roster.add(Roster.Entry.of(judged, SINCE, i < 4 ? null : other.audit()), file);
    }
    page = Files.writeString(folder.resolve("index.html"), RosterPage.of(roster));
  }

  @AfterAll
  static void close() throws IOException {
    if (browser != null) {
      browser.close();
    }
  }

  @Test
  void hasNothingAgainstItByDayAndNight() {
    for (View view : List.of(View.DESK, View.DESK.atNight(), View.PHONE)) {
      browser.open(page, view);
      unfold();
      browser.evaluate("document.querySelector('.squad thead button').click()");
      assertThat(browser.violations()).as("%s", view).isEmpty();
    }
  }

  @Test
  void loadsNothing() {
    browser.open(page, View.DESK);
    assertThat(browser.loaded()).isEmpty();
  }

  @Test
  void isNeverWiderThanItsWindow() {
    for (View view : List.of(View.PHONE, View.TWICE, View.DESK, View.A4)) {
      browser.open(page, view);
      unfold();
      assertThat(browser.overflow()).as("%s", view).isZero();
    }
  }

  @Test
  void cutsNothingOffOnPaper() {
    browser.open(page, View.A4);
    String clipped =
        "[...document.querySelectorAll('.wide')].filter(one => one.scrollWidth >"
            + " one.clientWidth).length";
    assertThat(browser.evaluate(clipped).asInt()).isZero();
  }

  @Test
  void sortsByAColumnAndBackByKeyboard() {
    browser.open(page, View.DESK);
    assertThat(names().get(0)).isEqualTo("Noor Vandermoor");
    tabTo("athlete");
    browser.press("Enter");
    assertThat(names()).isSorted();
    assertThat(sorting("athlete")).isEqualTo("ascending");
    browser.press("Enter");
    assertThat(names().get(0)).isEqualTo("Tove Lindqvist");
    assertThat(sorting("athlete")).isEqualTo("descending");
    browser.evaluate("document.querySelector('.squad thead button').click()");
    assertThat(names().get(0)).isEqualTo("Noor Vandermoor");
    assertThat(sorting("athlete")).isEqualTo("null");
  }

  @Test
  void sortsNumbersAsNumbers() {
    browser.open(page, View.DESK);
    browser.evaluate(
        "[...document.querySelectorAll('.squad thead button')]"
            + ".find(one => one.textContent.includes('ASK')).click()");
    assertThat(names().subList(0, TIMES)).containsOnly("Radek Soltanek");
  }

  @Test
  void filters() {
    browser.open(page, View.DESK);
    browser.evaluate("document.querySelector('[value=HOLD]').click()");
    assertThat(names()).hasSize(20).doesNotContain("Noor Vandermoor");
    assertThat(browser.evaluate("document.querySelector('.filter output').textContent").asText())
        .isEqualTo("20 of 40");
    browser.evaluate("document.querySelector('[value=HOLD]').click()");
    browser.evaluate(
        "(box => { box.value = 'RADEK'; box.dispatchEvent(new Event('input', {bubbles: true})) })"
            + "(document.querySelector('[type=search]'))");
    assertThat(names()).hasSize(TIMES).containsOnly("Radek Soltanek");
  }

  @Test
  void listsWhoSharesAFindingUnlessItIsOfHealth() {
    browser.open(page, View.DESK);
    String options =
        "[...document.querySelectorAll('[name=shared] option')].map(one => one.textContent).join()";
    assertThat(browser.evaluate(options).asText())
        .contains("No open-water swim before race week (10)")
        .doesNotContain("Running planned on pain");
    browser.evaluate(
        "(box => { box.selectedIndex = [...box.options].findIndex(one =>"
            + " one.textContent.startsWith('No open-water swim before race week'));"
            + " box.dispatchEvent(new Event('input', {bubbles: true})) })"
            + "(document.querySelector('[name=shared]'))");
    assertThat(names()).hasSize(TIMES).containsOnly("Noor Vandermoor");
  }

  @Test
  void leadsToAnAthletesPage() {
    browser.open(page, View.DESK);
    String link = "document.querySelector('.squad tbody a').getAttribute('href')";
    assertThat(browser.evaluate(link).asText()).isEqualTo("noor-0123abcd.html");
  }

  private static void unfold() {
    browser.evaluate("document.querySelectorAll('details').forEach(one => one.open = true)");
  }

  private static void tabTo(String text) {
    for (int i = 0; i < 100; i++) {
      browser.press("Tab");
      if (browser.evaluate("document.activeElement.textContent").asText().equals(text)) {
        return;
      }
    }
    throw new AssertionError("no key leads to " + text);
  }

  private static String sorting(String head) {
    return browser
        .evaluate(
            "String([...document.querySelectorAll('.squad thead th')].find(one => one.textContent"
                + " === '"
                + head
                + "').getAttribute('aria-sort'))")
        .asText();
  }

  private static List<String> names() {
    List<String> names = new ArrayList<>();
    browser
        .evaluate(SHOWN + ".map(row => row.cells[1].textContent)")
        .forEach(name -> names.add(name.asText()));
    return names;
  }
}
