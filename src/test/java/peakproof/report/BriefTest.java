package peakproof.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import peakproof.Golden;
import peakproof.document.Plan;

class BriefTest {
  private static final Pattern ESCAPED = Pattern.compile("\\\\[!-/:-@\\[-`{-~]");

  @Test
  void readsWellInMarkdown() {
    Golden.assertMatches(
        "report/brief-tove.md", BriefMarkdown.of(Briefs.of("plans/tove/plan.yaml")));
  }

  @Test
  void keepsWhatIsTheCoachsAlone() {
    Brief brief = Briefs.of(Briefs.CANARY);
    assertThat(Briefs.texts(brief))
        .allSatisfy(
            text ->
                assertThat(text)
                    .contains("SAID2", "SAID3", "SAID4", "SAID5", "SAID6")
                    .doesNotContain("QUIET")
                    .doesNotContainIgnoringCase("illness week")
                    .doesNotContainIgnoringCase("saddle")
                    .doesNotContainIgnoringCase("asthma")
                    .doesNotContainIgnoringCase("beta")
                    .doesNotContainIgnoringCase("weight-loss")
                    .doesNotContain("77.7", "1971", "HOLD"));
    assertThat(BriefMarkdown.of(brief)).contains("SAID1");
  }

  @ParameterizedTest
  @MethodSource("peakproof.report.Briefs#demos")
  void keepsTheNotesOfEveryDemoPlan(String file) throws IOException {
    Plan plan = Briefs.workup(file).dossier().plan();
    Brief brief = Briefs.of(file);
    List<String> quiet =
        Stream.concat(
                plan.accepted().stream().map(Plan.Accepted::because),
                Stream.concat(
                    plan.athlete().health().injuries().stream().map(injury -> injury.site()),
                    Files.readString(Path.of(file))
                        .lines()
                        .map(String::strip)
                        .filter(line -> line.startsWith("note: "))
                        .map(line -> line.substring("note: ".length()))))
            .toList();
    assertThat(Briefs.texts(brief))
        .allSatisfy(
            text -> {
              quiet.forEach(words -> assertThat(text).doesNotContain(words));
              assertThat(text).doesNotContain("null", "NaN", "Optional[");
            });
  }

  @Test
  void sendsNobodyIntoOpenWaterAlone() {
    assertThat(BriefMarkdown.of(Briefs.of(Briefs.CANARY)))
        .doesNotContain("On your own")
        .contains("Never swim in open water alone");
  }

  @Test
  void leavesWeeksThatAreOverOut() {
    String plan = "plans/tove/plan.yaml";
    Brief later = Briefing.of(Briefs.workup(plan, LocalDate.parse("2027-06-14")), null);
    assertThat(later.weeks()).extracting(Brief.Week::title).first().asString().contains("14 Jun");
    assertThat(Briefs.of(plan).weeks()).hasSize(5);
  }

  @Test
  void tellsTheRaceByTheClock() {
    assertThat(Briefs.of("plans/tove/plan.yaml").card().rows())
        .extracting(RaceCard.Row::inWords)
        .containsExactly(
            "Start: 06:30",
            "Out of the water: 07:40, at the latest 08:50",
            "On the bike: 07:45",
            "Off the bike: 13:45, at the latest 17:00",
            "Running: 13:50",
            "Finish: 17:40, at the latest 23:30");
    assertThat(Briefs.of(Briefs.CANARY).card().rows())
        .extracting(RaceCard.Row::latest)
        .contains("00:30 the next day");
  }

  @Test
  void countsFromTheStartWhereThatIsNotKnown() {
    assertThat(Briefs.of("src/test/resources/brief/untested/plan.yaml").card().rows())
        .extracting(RaceCard.Row::inWords)
        .containsExactly("Out of the water: 1:10:00");
  }

  @Test
  void saysWhatIsNotWrittenYet() {
    assertThat(Briefs.of(Briefs.CANARY).open())
        .isEqualTo("The days from Mon 7 Jun to the race will follow.");
    assertThat(Briefs.of("plans/tove/plan.yaml").open()).isNull();
  }

  @Test
  void printsOnEitherPaper() {
    Brief brief = Briefs.of("plans/tove/plan.yaml");
    assertThat(BriefPage.of(brief, BriefPage.Paper.A4)).contains("@page { size: a4;");
    assertThat(BriefPage.of(brief, BriefPage.Paper.LETTER)).contains("@page { size: letter;");
  }

  /** What a stranger writes stays text: the page, the words and the calendar keep their shape. */
  @Test
  void letsNoNameBreakOut(@TempDir Path folder) throws IOException {
    Brief plain = hostile(folder, "Ann");
    String skeleton = skeleton(BriefMarkdown.of(plain));
    String tags = tags(BriefPage.of(plain, BriefPage.Paper.A4));
    List<String> names = names(BriefCalendar.of(plain));
    for (String name : hostileNames()) {
      Brief brief = hostile(folder, name);
      assertThat(skeleton(BriefMarkdown.of(brief))).as(name).isEqualTo(skeleton);
      assertThat(tags(BriefPage.of(brief, BriefPage.Paper.A4))).as(name).isEqualTo(tags);
      String calendar = BriefCalendar.of(brief);
      assertThat(names(calendar)).as(name).isEqualTo(names);
      assertThat(calendar.split("\r\n"))
          .allMatch(line -> line.getBytes(java.nio.charset.StandardCharsets.UTF_8).length <= 75);
      assertThat(calendar.replace("\r\n", "")).doesNotContain("\r", "\n");
    }
  }

  private static List<String> hostileNames() {
    Random random = new Random(20270704);
    List<String> pieces =
        List.of(
            "<script>",
            "</style>",
            "\"",
            "'",
            "&amp;",
            "\n",
            "\r\n",
            "END:VEVENT",
            "\\",
            ";",
            ",",
            "|",
            "`",
            "**",
            "_",
            "# ",
            "- ",
            "1. ",
            "[a](javascript:x)",
            "![",
            "https://x.example",
            "www.example",
            "🏊‍♀️",
            "é",
            "\u202e",
            "\u0007",
            "${x}",
            "BEGIN:VALARM",
            ":",
            "~~",
            "> ",
            "=",
            "+ ",
            "12) ",
            "<!--",
            "\t",
            "Z");
    Stream<String> random30 =
        IntStream.range(0, 30)
            .mapToObj(
                i ->
                    "x"
                        + IntStream.range(0, 12)
                            .mapToObj(j -> pieces.get(random.nextInt(pieces.size())))
                            .collect(Collectors.joining()));
    return Stream.concat(
            Stream.of("x" + "a🏊;".repeat(1250), "- x", "1. x", "=x", "+ x", "#x", "---"), random30)
        .toList();
  }

  private static Brief hostile(Path folder, String name) throws IOException {
    String quoted =
        name.codePoints()
            .mapToObj(
                c -> c < 32 || c > 126 || c == '"' || c == '\\' ? escape(c) : Character.toString(c))
            .collect(Collectors.joining("", "\"", "\""));
    Files.writeString(
        folder.resolve("plan.yaml"),
        """
        plan:
          format: 1
          athlete: {name: %1$s}
          event: {name: %1$s, date: 2027-07-04, legs: {swim: 3.8km}}
          weeks:
            - starts: 2027-06-28
              days:
                tue:
                  - race: %1$s
                  - run: 40min easy
          race-day: {warm-up: %1$s}
        """
            .formatted(quoted));
    return Briefs.of(folder.resolve("plan.yaml").toString());
  }

  private static String escape(int codePoint) {
    return String.format("\\U%08x", codePoint);
  }

  /** All characters that mean something in Markdown where they are not escaped, and line ends. */
  private static String skeleton(String markdown) {
    return ESCAPED
        .matcher(markdown)
        .replaceAll("x")
        .lines()
        .map(line -> line.replaceAll("^( *)([-+=]|\\d+[.)])", "$1§$2"))
        .map(line -> line.replaceAll("[^\\\\`*_\\[\\]<>#|~&§]|www\\.|://", ""))
        .collect(Collectors.joining("\n"));
  }

  private static String tags(String html) {
    return Pattern.compile("<[^>]*>")
        .matcher(html.replaceAll("(?s)<style>.*?</style>", ""))
        .results()
        .map(found -> found.group())
        .collect(Collectors.joining());
  }

  private static List<String> names(String calendar) {
    return calendar
        .replace("\r\n ", "")
        .lines()
        .map(line -> line.replaceFirst("[:;].*", ""))
        .toList();
  }
}
