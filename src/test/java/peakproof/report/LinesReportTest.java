package peakproof.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;
import peakproof.document.Fault;
import peakproof.document.Place;

class LinesReportTest {
  private static final Judged RUNA = new Judged(Sample.runa(), true);

  private final StringWriter out = new StringWriter();
  private final LinesReport report = new LinesReport(out, "peakproof 0.1.0");

  @Test
  void saysOnALineWhatTheWholeReportSays() throws Exception {
    Written.by(report, 2, RUNA, new Judged(Sample.audit("Ask", null, List.of()), true));
    StringWriter whole = new StringWriter();
    Written.by(new JsonReport(whole, "peakproof 0.1.0"), 1, RUNA);
    List<String> lines = out.toString().lines().toList();
    assertThat(lines).hasSize(2);
    ObjectNode line = (ObjectNode) new ObjectMapper().readTree(lines.get(0));
    assertThat(line.remove("format").intValue()).isEqualTo(1);
    assertThat(line.remove("program").textValue()).isEqualTo("peakproof 0.1.0");
    assertThat(line).isEqualTo(new ObjectMapper().readTree(whole.toString()).at("/audits/0"));
  }

  @Test
  void namesTheLineThatAnAuditOrItsFaultsCameFrom() throws Exception {
    assertThat(new ObjectMapper().readTree(report.page(RUNA, 12)).at("/line").intValue())
        .isEqualTo(12);
    Fault fault = new Fault(new Place("log", 3, 5), "what", "expected", "instead");
    JsonNode faulty = new ObjectMapper().readTree(report.page(List.of(fault), 7));
    assertThat(faulty.at("/line").intValue()).isEqualTo(7);
    assertThat(faulty.at("/faults/0").toString())
        .isEqualTo(
            "{\"file\":\"log\",\"line\":3,\"column\":5,\"what\":\"what\","
                + "\"expected\":\"expected\",\"instead\":\"instead\"}");
  }
}
