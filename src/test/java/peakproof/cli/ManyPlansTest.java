package peakproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import peakproof.bench.ManyPlans;

/** Folders and streams of many plans, on one thread and on many. */
class ManyPlansTest {
  private static final int PLANS = 24;
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir private static Path temporary;
  private static Path squad;

  @BeforeAll
  static void write() throws IOException {
    squad = temporary.resolve("squad");
    ManyPlans.write(PLANS, squad, Path.of("rules/base"), 1);
    Files.writeString(squad.resolve("athletes/00003/plan.yaml"), "plan: {format: 1}\n");
    Files.writeString(squad.resolve("athletes/00017/log.yaml"), "log: [\n");
  }

  @AfterEach
  void forget() {
    System.clearProperty(AuditCommand.CORES);
  }

  @ParameterizedTest
  @CsvSource({"text, 3", "text, 0", "json, 3", "ndjson, 3"})
  void giveTheSameBytesOnOneThreadAndOnMany(String format, String top) {
    Run alone = audit(1, "audit", squad.toString(), "--format", format, "--top", top);
    Run together = audit(4, "audit", squad.toString(), "--format", format, "--top", top);
    assertThat(together).isEqualTo(alone);
    assertThat(alone.code()).isEqualTo(ExitCode.WRONG_DOCUMENT.number());
    assertThat(alone.err()).contains("00003/plan.yaml:1:").contains("00017/log.yaml:");
  }

  @Test
  void saysInTextHowManyWereNotAudited() {
    Run run = audit(4, "audit", squad.toString(), "--top", "0");
    assertThat(run.out()).contains("\n24 plans, each at its worst: ").contains("2 not audited");
  }

  @Test
  void comeInTheOrderOfTheirPathsInJson() throws IOException {
    JsonNode audits =
        JSON.readTree(audit(4, "audit", squad.toString(), "--format", "json").out()).get("audits");
    List<String> plans = new ArrayList<>();
    audits.forEach(audit -> plans.add(audit.get("plan").textValue()));
    assertThat(plans).hasSize(PLANS - 2).isSorted();
  }

  @Test
  void areTheSameInAFileAsOnStandardOutput() throws IOException {
    Path file = temporary.resolve("audits.json");
    Run toFile =
        audit(4, "audit", squad.toString(), "--format", "json", "--output", file.toString());
    assertThat(toFile.out()).isEmpty();
    assertThat(file).hasContent(audit(4, "audit", squad.toString(), "--format", "json").out());
  }

  @Test
  void areJudgedInAStreamAsInTheirFiles() throws IOException {
    StringBuilder input = new StringBuilder("\n");
    List<JsonNode> fromFiles = new ArrayList<>();
    for (String athlete : List.of("00001", "00002", "00004")) {
      input.append(line(athlete)).append("\r\n");
      String plan = squad.resolve("athletes").resolve(athlete).toString();
      String house = squad.resolve("house.yaml").toString();
      fromFiles.add(
          JSON.readTree(audit(1, "audit", plan, "--house", house, "--format", "ndjson").out()));
    }
    Run run = stream(4, input.toString());
    List<String> lines = run.out().lines().toList();
    assertThat(lines).hasSize(3);
    for (int i = 0; i < 3; i++) {
      JsonNode audit = JSON.readTree(lines.get(i));
      assertThat(audit.get("line").intValue()).isEqualTo(i + 2);
      assertThat(audit.get("athlete")).isEqualTo(fromFiles.get(i).get("athlete"));
      assertThat(audit.get("summary")).isEqualTo(fromFiles.get(i).get("summary"));
      assertThat(withoutPlaces(audit)).isEqualTo(withoutPlaces(fromFiles.get(i)));
    }
  }

  @Test
  void goOnInAStreamAfterALineThatIsWrong() throws IOException {
    String tooLong = "{\"plan\": \"" + " ".repeat(3 << 20) + "\"}";
    String input = line("00001") + "\nnonsense\n" + tooLong + "\n\n" + line("00002");
    Run alone = stream(1, input);
    assertThat(stream(4, input)).isEqualTo(alone);
    assertThat(alone.code()).isEqualTo(ExitCode.WRONG_DOCUMENT.number());
    assertThat(alone.err()).isEmpty();
    List<String> lines = alone.out().lines().toList();
    assertThat(lines).hasSize(4);
    assertThat(JSON.readTree(lines.get(0)).get("findings")).isNotNull();
    assertThat(lines.get(1)).contains("\"line\":2,\"faults\"");
    assertThat(lines.get(2)).contains("\"line\":3,\"faults\"").contains("longer than 2 MiB");
    assertThat(JSON.readTree(lines.get(3)).get("line").intValue()).isEqualTo(5);
  }

  @Test
  void needNoInputInAStream() {
    assertThat(stream(2, "")).isEqualTo(new Run(0, "", ""));
  }

  @Test
  void areReadFromEitherFilesOrAStream() {
    assertThat(audit(1, "audit", "--stream", "plans").code()).isEqualTo(2);
    assertThat(audit(1, "audit", "--stream", "--format", "text").code()).isEqualTo(2);
  }

  private static Run audit(int cores, String... arguments) {
    return fed(cores, "", arguments);
  }

  private static Run stream(int cores, String input) {
    return fed(cores, input, "audit", "--stream");
  }

  /** The rules are compiled once for all runs. */
  private static Run fed(int cores, String input, String... arguments) {
    System.setProperty(AuditCommand.CORES, String.valueOf(cores));
    Map<String, String> environment = Map.of("XDG_CACHE_HOME", temporary.toString());
    Path here = Path.of("").toAbsolutePath();
    return Run.fed(input, new Surroundings(here, Run.CLOCK, false, false, environment), arguments);
  }

  private static String line(String athlete) throws IOException {
    Path folder = squad.resolve("athletes").resolve(athlete);
    ObjectNode line = JSON.createObjectNode();
    line.put("plan", Files.readString(folder.resolve("plan.yaml")));
    line.put("log", Files.readString(folder.resolve("log.yaml")));
    line.put("event", Files.readString(squad.resolve("events/saltmarsh.yaml")));
    line.put("house", Files.readString(squad.resolve("house.yaml")));
    return line.toString();
  }

  private static JsonNode withoutPlaces(JsonNode audit) {
    ObjectNode copy = ((ObjectNode) audit.deepCopy()).without(List.of("line", "plan", "log"));
    copy.withArray("findings").forEach(finding -> ((ObjectNode) finding).remove("where"));
    return copy;
  }
}
