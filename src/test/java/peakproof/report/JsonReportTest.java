package peakproof.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.StringWriter;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import peakproof.Golden;
import peakproof.audit.Audit;
import peakproof.rule.Severity;

class JsonReportTest {
  @Test
  void keepsItsNamesAndShape() {
    Golden.assertMatches("report/runa.json", json(Sample.runa()));
  }

  @Test
  void hasEveryAuditInTheOrderOfThePlans() throws Exception {
    Audit calm = Sample.audit("Ask", null, List.of());
    String one = json(Sample.runa());
    String two = json(calm, Sample.runa());
    JsonNode read = new ObjectMapper().readTree(two);
    assertThat(read.at("/audits")).hasSize(2);
    assertThat(read.at("/audits/0/athlete").textValue()).isEqualTo("Ask");
    assertThat(two).endsWith(one.substring(one.indexOf("    {\n")));
  }

  @Test
  void escapesWhatADocumentSays() throws Exception {
    String name = "O\"dd\\ \u0007 \u2028 Bjørnå 🏊";
    JsonNode read = new ObjectMapper().readTree(json(Sample.audit(name, null, List.of())));
    assertThat(read.at("/audits/0/athlete").textValue()).isEqualTo(name);
    assertThat(read.at("/audits/0/log").isNull()).isTrue();
  }

  @Test
  void saysWhenAnAuditIsIncomplete() throws Exception {
    Audit audit = Sample.audit("Bo", null, List.of(Sample.finding("brick-none", Severity.FIX)));
    JsonNode read = new ObjectMapper().readTree(json(1, new Judged(audit, false)));
    assertThat(read.at("/audits/0/complete").booleanValue()).isFalse();
  }

  @Test
  void isADocumentEvenWithoutAnyAudit() {
    assertThat(json(1))
        .isEqualTo(
            """
            {
              "format": 1,
              "program": "peakproof 0.1.0",
              "audits": []
            }
            """);
  }

  private static String json(Audit... audits) {
    return json(
        audits.length,
        Stream.of(audits).map(audit -> new Judged(audit, true)).toArray(Judged[]::new));
  }

  private static String json(int plans, Judged... all) {
    StringWriter out = new StringWriter();
    Written.by(new JsonReport(out, "peakproof 0.1.0"), plans, all);
    return out.toString();
  }
}
