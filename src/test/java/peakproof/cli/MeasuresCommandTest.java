package peakproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import peakproof.Golden;

class MeasuresCommandTest {
  private static final String TOVE = "plans/tove/plan.yaml";

  @Test
  void printsThePlanAndItsWeeks() {
    Run run = Run.of("measures", TOVE);
    assertThat(run.code()).isZero();
    Golden.assertMatches("report/measures-tove.txt", run.out());
  }

  @Test
  void everyValueHasAUnitAndItsEntriesAndEveryUnknownAReason() throws IOException {
    for (JsonNode value : values()) {
      assertThat(value.get("unit").asText()).as(value.toString()).isNotEmpty();
      if (value.get("value").isNull()) {
        assertThat(value.get("unknown").asText()).as(value.toString()).isNotEmpty();
      } else {
        assertThat(value.get("unknown").isNull()).as(value.toString()).isTrue();
        assertThat(value.get("value").isNumber()).as(value.toString()).isTrue();
      }
      boolean span = value.get("scope").has("week") || value.get("scope").has("day");
      boolean planned = value.get("scope").isEmpty() || value.get("scope").has("leg");
      assertThat(span || planned || value.get("scope").has("sport")).isTrue();
    }
  }

  @Test
  void theTableForASpreadsheetHoldsTheSameNumbers() throws IOException {
    Map<String, Integer> json = new HashMap<>();
    for (JsonNode value : values()) {
      json.merge(value.get("name").asText() + " " + number(value.get("value")), 1, Integer::sum);
    }
    Map<String, Integer> csv = new HashMap<>();
    String table = Run.of("measures", TOVE, "--format", "csv").out();
    for (NamedCsvRecord row : CsvReader.builder().ofNamedCsvRecord(table)) {
      csv.merge(row.getField("name") + " " + row.getField("value"), 1, Integer::sum);
    }
    assertThat(csv).isEqualTo(json).hasSizeGreaterThan(500);
  }

  @Test
  void daysAndSessionsComeWithAll() {
    String weeks = Run.of("measures", TOVE).out();
    String all = Run.of("measures", TOVE, "--all").out();
    assertThat(weeks).doesNotContain("run-spike").contains("--all");
    assertThat(all).contains("run-spike").contains("day-load").startsWith(weeks.substring(0, 500));
  }

  private static List<JsonNode> values() throws IOException {
    JsonNode page = new ObjectMapper().readTree(Run.of("measures", TOVE, "--format", "json").out());
    assertThat(page.get("format").asInt()).isEqualTo(1);
    assertThat(page.get("asOf").asText()).isEqualTo("2027-05-30");
    return List.copyOf(page.get("values").findParents("name"));
  }

  private static String number(JsonNode value) {
    return value.isNull() ? "" : value.decimalValue().stripTrailingZeros().toPlainString();
  }
}
