package peakproof.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import org.junit.jupiter.api.Test;
import peakproof.Golden;
import peakproof.audit.Audit;
import peakproof.report.Report.Choice;
import peakproof.report.Report.Judged;
import peakproof.rule.Severity;

class JsonReportTest {
  @Test
  void keepsItsNamesAndShape() {
    Golden.assertMatches("report/runa.json", json(new Choice(false, 3), Sample.runa()));
  }

  @Test
  void hasEveryFindingWhateverTheReaderChose() {
    assertThat(json(new Choice(false, 0), Sample.runa()))
        .isEqualTo(json(new Choice(true, 3), Sample.runa()));
  }

  @Test
  void escapesWhatADocumentSays() throws Exception {
    String name = "O\"dd\\ \u0007 \u2028 Bjørnå 🏊";
    JsonNode read =
        new ObjectMapper().readTree(json(new Choice(true, 3), Sample.audit(name, null, List.of())));
    assertThat(read.at("/audits/0/athlete").textValue()).isEqualTo(name);
    assertThat(read.at("/audits/0/log").isNull()).isTrue();
  }

  @Test
  void saysWhenAnAuditIsIncomplete() throws Exception {
    Audit audit = Sample.audit("Bo", null, List.of(Sample.finding("brick-none", Severity.FIX)));
    Report report = Report.of(List.of(new Judged(audit, false)), 1, new Choice(false, 3));
    JsonNode read = new ObjectMapper().readTree(JsonReport.of(report, "peakproof"));
    assertThat(read.at("/audits/0/complete").booleanValue()).isFalse();
  }

  @Test
  void isADocumentEvenWithoutAnyAudit() {
    assertThat(JsonReport.of(Report.of(List.of(), 1, new Choice(false, 3)), "peakproof 0"))
        .isEqualTo(
            """
            {
              "format": 1,
              "program": "peakproof 0",
              "audits": []
            }
            """);
  }

  private static String json(Choice choice, Audit audit) {
    return JsonReport.of(Report.of(List.of(new Judged(audit, true)), 1, choice), "peakproof 0.1.0");
  }
}
