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
