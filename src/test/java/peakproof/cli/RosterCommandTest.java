package peakproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import peakproof.Golden;
import peakproof.bench.ManyPlans;

class RosterCommandTest {
  private static final String[] DEMO = {
    "roster", "plans", "--as-of", "2027-05-30", "--since", "2027-05-23"
  };

  @TempDir private static Path temporary;
  private static Path squad;

  @BeforeAll
  static void write() throws IOException {
    squad = temporary.resolve("squad");
    ManyPlans.write(12, squad, Path.of("rules/base"), 1);
    Files.writeString(squad.resolve("athletes/00003/plan.yaml"), "plan: {format: 1}\n");
  }

  @AfterEach
  void forget() {
    System.clearProperty(AuditCommand.CORES);
  }

  @Test
  void listsWhoNeedsTheCoachFirst() {
    Run run = run(DEMO);
    assertThat(run.code()).isZero();
    assertThat(run.err()).isEmpty();
    Golden.assertMatches("report/roster-100.txt", run.out());
  }

  @Test
  void writesTheSameAsJson() {
    Golden.assertMatches("report/roster.json", run(DEMO, "--format", "json").out());
  }

  @Test
  void comparesWithWhatTheSameFilesSayAsOfThatDay() throws IOException {
    JsonNode athletes = json(run(DEMO, "--format", "json")).get("athletes");
    Map<String, List<String>> before = fingerprints("2027-05-23");
    Map<String, List<String>> after = fingerprints("2027-05-30");
    assertThat(athletes).hasSize(8);
    for (JsonNode athlete : athletes) {
      List<String> then = before.get(athlete.get("plan").asText());
      List<String> now = after.get(athlete.get("plan").asText());
      assertThat(texts(athlete.get("new")))
          .containsExactlyElementsOf(now.stream().filter(one -> !then.contains(one)).toList());
      assertThat(texts(athlete.get("gone")))
          .containsExactlyElementsOf(then.stream().filter(one -> !now.contains(one)).toList());
    }
  }

  @Test
  void tellsFaultsAsAnAuditDoesAndListsTheOthers() {
    Run run = run("roster", squad.toString());
    Run audit = run("audit", squad.toString());
    assertThat(run.code()).isEqualTo(3).isEqualTo(audit.code());
    assertThat(run.err()).isEqualTo(audit.err()).contains("00003/plan.yaml:1:");
    assertThat(run.out())
        .startsWith("11 athletes")
        .contains("1 not audited")
        .contains("not audited: " + squad + "/athletes/00003/plan.yaml")
        .contains("\nIn common\n")
        .containsPattern("\\(\\d+ of 11\\)")
        .contains("to the squad: This is for ");
  }

  @Test
  void givesTheSameBytesOnOneThreadAndOnMany() {
    System.setProperty(AuditCommand.CORES, "1");
    Run alone = run("roster", squad.toString(), "--format", "json");
    System.setProperty(AuditCommand.CORES, "4");
    assertThat(run("roster", squad.toString(), "--format", "json")).isEqualTo(alone);
  }

  @Test
  void saysWhenNothingIsLoggedSince() {
    Run run = run("roster", "plans/tove", "--since", "2027-06-20");
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .contains("1 not compared")
        .contains("not compared: judged as of Sun 30 May, nothing is logged since");
  }

  @Test
  void refusesWhatItCannotUse() {
    assertThat(run("roster").code()).isEqualTo(2);
    assertThat(run("roster", "plans", "--since", "last week").err())
        .contains("'--since': expected a date such as 2027-05-30 but was 'last week'");
    Run later = run("roster", "plans", "--as-of", "2027-05-20", "--since", "2027-05-20");
    assertThat(later.code()).isEqualTo(2);
    assertThat(later.err()).contains("'--since' is to be a day before '--as-of'");
    assertThat(run("roster", "nowhere").code()).isEqualTo(3);
    assertThat(run("roster", "nowhere").out()).isEmpty();
  }

  @Test
  void writesAFolderOfPagesThatLeadToEachOther(@TempDir Path folder) throws IOException {
    Path site = folder.resolve("squad");
    Run run = run(DEMO, "--output", site.toString());
    assertThat(run).isEqualTo(new Run(0, "", ""));
    List<String> pages = new ArrayList<>(names(site));
    assertThat(pages).hasSize(9).contains("index.html");
    String index = Files.readString(site.resolve("index.html"));
    pages.remove("index.html");
    pages.forEach(page -> assertThat(index).contains("<a href=\"" + page + "\">"));
    Run tove = run("audit", "plans/tove", "--as-of", "2027-05-30", "--format", "html");
    String page = pages.stream().filter(one -> one.startsWith("tove-")).findFirst().orElseThrow();
    assertThat(site.resolve(page)).hasContent(tove.out());
  }

  @Test
  void writesOnePageWhereAFileIsNamed(@TempDir Path folder) throws IOException {
    Path page = folder.resolve("roster.html");
    Run run = run(DEMO, "--format", "html", "--output", page.toString());
    assertThat(run.code()).isZero();
    assertThat(names(folder)).containsExactly("roster.html");
    assertThat(Files.readString(page)).doesNotContain("<a href=\"tove");
  }

  @Test
  void leavesAloneWhatElseLiesInTheFolder(@TempDir Path folder) throws IOException {
    Files.writeString(folder.resolve("notes.html"), "mine");
    Files.createDirectory(folder.resolve("pictures"));
    Files.writeString(folder.resolve("moved-away-0123abcd.html"), "of an earlier run");
    Run run = run("roster", "plans/tove", "--output", folder.toString());
    assertThat(run.code()).isZero();
    assertThat(run.err())
        .contains("pages of earlier runs that nothing leads to: moved-away-0123abcd.html");
    assertThat(names(folder)).hasSize(5).contains("notes.html", "moved-away-0123abcd.html");
    assertThat(folder.resolve("notes.html")).hasContent("mine");
  }

  @Test
  void refusesAFolderThatLeadsToSomethingElse(@TempDir Path folder) throws IOException {
    Files.writeString(folder.resolve("index.html"), "<h1>Our club</h1>");
    Run run = run("roster", "plans/tove", "--output", folder.toString());
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("has an index.html of something else");
    assertThat(names(folder)).containsExactly("index.html");
    assertThat(folder.resolve("index.html")).hasContent("<h1>Our club</h1>");
  }

  @Test
  void writesNothingWithoutAPlan(@TempDir Path folder) throws IOException {
    Run run = run("roster", folder.toString(), "--output", folder.resolve("site").toString());
    assertThat(run.code()).isEqualTo(3);
    assertThat(folder.resolve("site")).doesNotExist();
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  private static Map<String, List<String>> fingerprints(String day) throws IOException {
    Map<String, List<String>> all = new HashMap<>();
    json(run("audit", "plans", "--as-of", day, "--format", "json"))
        .get("audits")
        .forEach(audit -> all.put(audit.get("plan").asText(), texts(audit.get("findings"))));
    return all;
  }

  private static List<String> texts(JsonNode findings) {
    List<String> texts = new ArrayList<>();
    findings.forEach(one -> texts.add(one.get("fingerprint").asText()));
    return texts;
  }

  private static JsonNode json(Run run) throws IOException {
    return new ObjectMapper().readTree(run.out());
  }

  private static Run run(String[] some, String... more) {
    return run(Stream.of(some, more).flatMap(Stream::of).toArray(String[]::new));
  }

  /** The rules are compiled once for all runs. */
  private static Run run(String... arguments) {
    Map<String, String> environment = Map.of("XDG_CACHE_HOME", temporary.toString());
    Path here = Path.of("").toAbsolutePath();
    return Run.in(new Surroundings(here, Run.CLOCK, false, false, environment), arguments);
  }
}
