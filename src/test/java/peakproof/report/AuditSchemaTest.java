package peakproof.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import peakproof.Golden;
import peakproof.audit.Audit;
import peakproof.audit.Background;
import peakproof.audit.Baseline;
import peakproof.audit.Comparison;
import peakproof.audit.Gone;
import peakproof.document.DocumentSchemas;
import peakproof.rule.Severity;

/** Holds the schema to what {@link JsonReport} writes, and the other way round. */
class AuditSchemaTest {
  private static List<String> wrong(JsonNode schema, JsonNode json) {
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7)
        .getSchema(schema)
        .validate(json)
        .stream()
        .map(Object::toString)
        .toList();
  }

  /** The schema with no key let through that it does not list. */
  private static ObjectNode closed() {
    ObjectNode schema = AuditSchema.schema();
    schema.put("additionalProperties", false);
    for (JsonNode object : schema.findParents("properties")) {
      ((ObjectNode) object).put("additionalProperties", false);
    }
    return schema;
  }

  private static JsonNode written() throws Exception {
    StringWriter out = new StringWriter();
    Audit held = Sample.audit("Bo", null, List.of(Sample.finding("brick-none", Severity.FIX)));
    Judged[] all =
        Stream.of(Sample.runa(), held).map(audit -> new Judged(audit, true)).toArray(Judged[]::new);
    Written.by(new JsonReport(out, "peakproof 0.1.0"), all.length, all);
    return new ObjectMapper().readTree(out.toString());
  }

  /** The same plan beside one in which something else was found, and a plan that is no more. */
  private static JsonNode compared() throws Exception {
    Audit now = Sample.audit("Bo", null, List.of(Sample.finding("brick-none", Severity.FIX)));
    Audit then = Sample.audit("Bo", null, List.of(Sample.finding("brick-long-none", Severity.FIX)));
    List<Gone> earlier = Baseline.findings(then);
    StringWriter out = new StringWriter();
    JsonReport report = new JsonReport(out, "peakproof 0.1.0");
    Judged judged = new Judged(now, true, Comparison.of(now, earlier), () -> Background.NONE);
    report.add(Rank.of(now), report.page(judged));
    Baseline.Who who = new Baseline.Who("Ida", now.raceDate());
    report.compared(
        new Balance("main", 1, 0, 1, List.of(new Baseline.Left("ida.yaml", who, earlier))));
    report.end(1);
    return new ObjectMapper().readTree(out.toString());
  }

  @Test
  void listsEveryKeyOfAComparison() throws Exception {
    JsonNode compared = compared();
    assertThat(compared.at("/audits/0/findings/0/since").asText()).isEqualTo("new");
    assertThat(compared.at("/audits/0/gone")).hasSize(1);
    assertThat(compared.at("/against/plansGone/0/gone")).hasSize(1);
    assertThat(wrong(closed(), compared)).isEmpty();
  }

  @Test
  void keepsTheSchemaOfTheReport() {
    Golden.assertMatches(
        Path.of("docs/schema/audit.schema.json"), DocumentSchemas.text(AuditSchema.schema()));
  }

  @Test
  void listsEveryKeyThatIsWritten() throws Exception {
    assertThat(wrong(closed(), written())).isEmpty();
    assertThat(wrong(closed(), new ObjectMapper().readTree("{\"format\":1}"))).hasSize(2);
  }

  @Test
  void asksForNoKeyThatIsNotWritten() throws Exception {
    JsonNode written = written();
    assertThat(written.at("/audits/0/accepted")).as("accepted findings").isNotEmpty();
    assertThat(written.at("/audits/0/silenced")).as("silenced rules").isNotEmpty();
    assertThat(written.at("/audits/0/notForThisPlan")).as("rules for others").isNotEmpty();
    assertThat(written.at("/audits/0/findings/0/values")).as("values").isNotEmpty();
    assertThat(wrong(AuditSchema.schema(), written)).isEmpty();
  }

  @Test
  void letsLaterKeysThrough() throws Exception {
    ObjectNode later = (ObjectNode) written();
    later.put("later", true);
    ((ObjectNode) later.at("/audits/0/findings/0")).put("later", "more");
    assertThat(wrong(AuditSchema.schema(), later)).isEmpty();
    assertThat(wrong(closed(), later)).isNotEmpty();
  }
}
