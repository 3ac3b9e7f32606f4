package peakproof.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import peakproof.audit.Finding;

class AuditPageTest {
  private static final int MOST_BYTES = 400_000;

  static Stream<Path> plans() {
    return Stream.of("gwen", "haruki", "ines", "mateus", "meera", "noor", "radek", "tove")
        .map(AuditPageTest::plan);
  }

  private static Path plan(String athlete) {
    return Path.of("plans", athlete, "plan.yaml");
  }

  @ParameterizedTest
  @MethodSource("plans")
  void isSmallAndTheSameEveryTime(Path plan) {
    String page = Pages.of(plan);
    assertThat(page.getBytes(StandardCharsets.UTF_8)).hasSizeBetween(20_000, MOST_BYTES);
    assertThat(Pages.of(plan)).isEqualTo(page);
  }

  @ParameterizedTest
  @MethodSource("plans")
  void hasEveryFindingWithItsPins(Path plan) {
    Judged judged = Pages.judged(plan);
    String page = HtmlReport.of(judged);
    int order = 0;
    for (Finding finding : judged.audit().findings()) {
      order++;
      assertThat(page)
          .as("%s", finding)
          .contains("id=\"f-" + order + "\"")
          .contains("class=\"pin\" href=\"#f-" + order + "\"")
          .contains("<h3>" + escaped(finding.title()) + "</h3>")
          .contains(escaped(finding.why()))
          .contains(escaped(finding.remedy()))
          .contains(escaped(Objects.requireNonNullElse(finding.care(), "")));
    }
    assertThat(all(page, "class=\"(card) ")).hasSize(order);
  }

  @ParameterizedTest
  @MethodSource("plans")
  void linksLeadSomewhereAndNoNameIsTwice(Path plan) {
    String page = Pages.of(plan);
    assertThat(all(page, " id=\"([^\"]*)\"")).doesNotHaveDuplicates();
    assertThat(all(page, " id=\"([^\"]*)\""))
        .containsAll(all(page, " href=\"#([^\"]*)\""))
        .containsAll(all(page, " aria-labelledby=\"([^\" ]*)"));
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }

  private static List<String> all(String page, String pattern) {
    return Pattern.compile(pattern).matcher(page).results().map(found -> found.group(1)).toList();
  }

  @Test
  void hasEveryPart() {
    assertThat(all(Pages.of(plan("mateus")), "<h2 id=\"h-([a-z]*)\""))
        .containsExactly(
            "findings",
            "block",
            "hours",
            "load",
            "taper",
            "goal",
            "ledger",
            "mornings",
            "open",
            "decided");
  }

  @Test
  void showsTheCoachWhatHurts() {
    assertThat(Pages.of(plan("mateus"))).contains("pain left achilles");
  }

  @Test
  void showsWhatIsAcceptedSilencedAndNotJudged() {
    String page = HtmlReport.of(new Judged(Sample.runa(), false));
    assertThat(page)
        .contains("Incomplete: a broken rule could not run")
        .contains("HOLD rule silenced by the house: swim-alone-open-water")
        .contains("Found by strength-none")
        .contains("by MK until Tue 22 Jun")
        .contains("physiotherapist has her exercises")
        .contains("swim-in-company: we always swim together")
        .contains("<b>fluid-overplan</b>")
        .contains("<th scope=\"row\">athlete.heart-rate.max</th>")
        .contains("swim-set-impossible: no swim set with a send-off")
        .contains("someone could be hurt")
        .doesNotContain("id=\"h-block\"");
  }

  @Test
  void opensEveryHoldAndThreeMore() {
    String page = HtmlReport.of(new Judged(Sample.runa(), true));
    assertThat(all(page, "<details (open)>\n<summary><svg class=\"mark\"")).hasSize(4);
  }

  @Test
  void saysWhatItCannotDrawWithoutALog(@TempDir Path folder) throws IOException {
    Path plan = folder.resolve("plan.yaml");
    Files.writeString(
        plan,
        """
        plan:
          format: 1
          athlete: {name: Bo}
          event: {name: Short One, date: 2027-07-04, legs: {swim: 750m, bike: 20km, run: 5km}}
          weeks: []
        """);
    assertThat(Pages.of(plan))
        .contains("<h1>Bo</h1>")
        .contains("Fewer than four past weeks are wholly known")
        .contains("not written")
        .doesNotContain("NaN", "Infinity", ">null", "id=\"h-taper\"", "id=\"h-mornings\"");
  }
}
