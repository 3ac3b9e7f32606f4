package peakproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import peakproof.Repository;
import peakproof.audit.Auditor;
import peakproof.document.Documents;
import peakproof.git.Snapshot;
import peakproof.report.SarifSchema;

/** A club's repository and the changes its coaches propose, judged as a pipeline would. */
class SinceTest {
  private static final String LOG = "plans/mateus/log.yaml";

  @TempDir private static Path home;
  private static FewRules rules;

  @TempDir private Path folder;
  private Repository club;
  private String sore;

  @BeforeAll
  static void takeRules() throws IOException {
    rules = FewRules.in(home);
  }

  /** On the main branch the tendon is sound, on the others it hurts. */
  @BeforeEach
  void begin() throws IOException {
    club = Repository.of(folder.toRealPath(), "mateus", "noor");
    sore = Files.readString(club.file(LOG));
    club.edit(LOG, text -> text.replaceAll("(?m)^ +pain: .*achilles.*\\R", ""));
    club.commit("sound again");
  }

  @Test
  void reportsOnlyPlansOfWhichAFileChanged() throws IOException {
    assertThat(changed()).isEmpty();
    club.edit(LOG, text -> text + "# a word\n");
    assertThat(changed()).containsExactly("mateus");
    club.git("checkout", "-q", ".");
    Files.delete(club.file("plans/noor/log.yaml"));
    assertThat(changed()).containsExactly("noor");
    club.git("checkout", "-q", ".");
    club.edit("plans/events/merrow.yaml", text -> text.replace("air: 19C", "air: 20C"));
    assertThat(changed()).hasSize(2);
    club.git("checkout", "-q", ".");
    club.write("plans/noor/house.yaml", "house:\n  format: 1\n");
    assertThat(changed()).containsExactly("noor");
    Files.delete(club.file("plans/noor/house.yaml"));
    club.write("own/odd.yaml", "x");
    assertThat(changed()).hasSize(2);
    Files.delete(club.file("own/odd.yaml"));
    club.write("plans/new/plan.yaml", Files.readString(club.file("plans/noor/plan.yaml")));
    assertThat(changed()).containsExactly("new");
  }

  @Test
  void failsForANewFindingAndNotForAKnownOne() throws IOException {
    Run calm = audit("--against", "main", "--fail-on-new");
    assertThat(calm.code()).isZero();
    assertThat(calm.out()).contains("known · someone could be hurt", "against main: 0 new · ");
    club.write(LOG, sore);
    Run alarm = audit("--against", "main", "--fail-on-new", "--changed-since", "main");
    assertThat(alarm.code()).isEqualTo(1);
    assertThat(alarm.err()).contains("of 2 plans 1 changed since main");
    assertThat(alarm.out())
        .contains("new · someone could be hurt", "against main: 1 new · 0 known · 0 gone")
        .doesNotContain("Noor");
    assertThat(audit("--fail-on-new").err()).contains("'--fail-on-new' needs '--against'");
  }

  @Test
  void marksWhatIsNewKnownAndGoneInEveryReport() throws IOException {
    club.write(LOG, sore);
    club.commit("it hurts");
    club.edit(LOG, text -> text.replaceAll("(?m)^ +pain: .*achilles.*\\R", ""));
    club.git("mv", "plans/noor", "plans/b");
    club.git("mv", "plans/b/plan.yaml", "plans/b/half.yaml");
    Path sarif = folder.resolve("a.sarif");
    Path markdown = folder.resolve("a.md");
    Run run =
        audit(
            "--against",
            "HEAD",
            "--format=json",
            "--report=sarif=" + sarif,
            "--report=markdown=" + markdown);
    JsonNode json = new ObjectMapper().readTree(run.out());
    JsonNode noor = json.at("/audits/0");
    assertThat(noor.at("/plan").textValue()).endsWith("plans/b/half.yaml");
    assertThat(noor.at("/findings").findValuesAsText("since"))
        .hasSizeGreaterThan(2)
        .containsOnly("known");
    JsonNode mateus = json.at("/audits/1");
    assertThat(mateus.at("/gone/0/rule").textValue()).isEqualTo("run-pain-rule");
    assertThat(mateus.at("/gone/0/now").textValue()).isEqualTo("clear");
    assertThat(mateus.at("/gone/0/where/0/file").textValue())
        .isEqualTo(club.file("plans/mateus/plan.yaml").toString());
    assertThat(mateus.at("/summary/gone").intValue()).isEqualTo(1);
    assertThat(json.at("/against/new").intValue()).isZero();
    assertThat(json.at("/against/gone").intValue()).isEqualTo(1);
    assertThat(json.at("/against/plansGone")).isEmpty();
    JsonNode results =
        new ObjectMapper()
            .readTree(SarifSchema.valid(Files.readString(sarif)))
            .at("/runs/0/results");
    assertThat(results.findValuesAsText("baselineState"))
        .hasSize(results.size())
        .contains("unchanged", "absent")
        .doesNotContain("new");
    assertThat(Files.readString(markdown))
        .contains("1 finding gone", "A health entry needs the coach's eye", "0 new, ")
        .doesNotContain("pain that should");
  }

  @Test
  void comparesWithAnEarlierReportAsWithItsRevision() throws IOException {
    Path earlier = folder.resolve("earlier.json");
    audit("--format=json", "--output", earlier.toString());
    club.write(LOG, sore);
    club.git("rm", "-rq", "plans/noor");
    Run file = audit("--against", earlier.toString(), "--fail-on-new", "--as-of=2027-05-30");
    Run revision = audit("--against", "main", "--fail-on-new", "--as-of=2027-05-30");
    assertThat(file.code()).isEqualTo(1);
    assertThat(file.out())
        .contains("new · someone could be hurt", "gone with ", "(Noor Vandermoor): HOLD ")
        .isEqualTo(revision.out().replace("against main:", "against " + earlier + ":"));
    club.write("junk.json", "{\"format\": 1, \"audits\": [{}]}");
    Run junk = audit("--against", club.file("junk.json").toString());
    assertThat(junk.code()).isEqualTo(2);
    assertThat(junk.err()).contains("is not what '--format json' writes");
  }

  @Test
  void judgesTheEarlierPlanByTheRulesOfItsDay() throws IOException {
    club.edit(
        "plans/house.yaml",
        text ->
            text.replace("strength-none: ASK", "strength-none: ASK, swim-open-water-none: FIX"));
    assertThat(audit("--against", "main").out()).contains("against main: 0 new · ");
    club.commit("lenient");
    club.git("checkout", "-q", "HEAD^", "--", "plans/house.yaml");
    assertThat(audit("--against", "main").out()).contains("against main: 1 new · ");
  }

  @Test
  void saysWhenThereIsNothingToCompareWith(@TempDir Path bare) {
    Run unknown = audit("--changed-since", "nosuch");
    assertThat(unknown.code()).isEqualTo(2);
    assertThat(unknown.err()).contains("git knows no revision 'nosuch'");
    Run nowhere = rules.run("audit", "plans", bare.toString(), "--against", "--upload-pack=x");
    assertThat(nowhere.code()).isEqualTo(2);
    Run outside =
        rules.run("audit", club.file("plans").toString(), bare.toString(), "--against=main");
    assertThat(outside.err()).contains("lies outside the git repository");
    Run stream = rules.run("audit", "--stream", "--against=main");
    assertThat(stream.code()).isEqualTo(2);
  }

  /** The athletes whose plans changed since the main branch, by the folders they lie in. */
  private List<String> changed() {
    Path own = club.file("own");
    Auditor.Options usual = new Auditor.Options(null, null);
    List<Path> plans = Documents.plansUnder(club.file("plans"));
    try (Snapshot snapshot =
        ((Snapshot.Outcome.Taken) Snapshot.take(club.folder(), "main")).snapshot()) {
      ChangedPlans changed =
          new ChangedPlans(
              snapshot, new SinceOptions.Here(plans, plans, usual, List.of(own), Auditor::load));
      return plans.stream()
          .filter(changed::has)
          .map(plan -> plan.getParent().getFileName().toString())
          .toList();
    }
  }

  private Run audit(String... options) {
    List<String> all = new ArrayList<>(List.of("audit", club.file("plans").toString()));
    all.addAll(Arrays.asList(options));
    return rules.run(all.toArray(String[]::new));
  }
}
