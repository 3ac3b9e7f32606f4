package peakproof.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.StringWriter;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import peakproof.Golden;
import peakproof.audit.Audit;

class SarifReportTest {
  @Test
  void keepsItsNamesAndShape() {
    Golden.assertMatches("report/runa.sarif", SarifSchema.valid(sarif(false, 1, Sample.runa())));
  }

  @Test
  void tellsWhatAHealthEntrySaysOnlyWhenAsked() {
    assertThat(sarif(false, 1, Sample.runa())).doesNotContain("achilles", "run-pain-rule");
    assertThat(sarif(true, 1, Sample.runa())).contains("left achilles", "run-pain-rule");
  }

  @Test
  void isValidWithoutAnyAuditAndSaysThatAPlanIsMissing() throws Exception {
    JsonNode invocation =
        new ObjectMapper().readTree(SarifSchema.valid(sarif(false, 2))).at("/runs/0/invocations/0");
    assertThat(invocation.at("/executionSuccessful").booleanValue()).isFalse();
    assertThat(invocation.at("/toolExecutionNotifications/0/message/text").textValue())
        .startsWith("2 plans were not audited");
  }

  @Test
  void isValidWhateverADocumentSays() throws Exception {
    Random random = new Random(2027);
    for (int i = 0; i < 120; i++) {
      String text = SarifSchema.valid(sarif(false, 1, Hostile.audit(random)));
      JsonNode result = new ObjectMapper().readTree(text).at("/runs/0/results/0");
      assertThat(result.at("/locations/0/physicalLocation/artifactLocation/uri").textValue())
          .matches("[A-Za-z0-9._~/%-]+");
      assertThat(result.at("/message/text").textValue()).doesNotContain("\u001b", "\u202e");
    }
  }

  @Test
  void refusesWhatTheSchemaRefuses() {
    String text =
        sarif(false, 1, Sample.runa()).replace("\"level\": \"error\"", "\"level\": \"HOLD\"");
    assertThat(SarifSchema.faults(text)).isNotEmpty();
  }

  @Test
  void writesAnAbsoluteFileAsAUri() {
    assertThat(FileUri.of("/plans/Åse:1/plan.yaml"))
        .isEqualTo("file:///plans/%C3%85se%3A1/plan.yaml");
    assertThat(FileUri.of("plans/a b/plan.yaml")).isEqualTo("plans/a%20b/plan.yaml");
  }

  private static String sarif(boolean withHealth, int plans, Audit... audits) {
    StringWriter out = new StringWriter();
    List<Judged> judged = List.of(audits).stream().map(audit -> new Judged(audit, true)).toList();
    Written.by(
        new SarifReport(out, Hostile.layout(withHealth)), plans, judged.toArray(Judged[]::new));
    return out.toString();
  }
}
