package peakproof.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StreamedPlanTest {
  private static final String PLAN =
      "\"plan\": {\"format\": 1, \"athlete\": {\"name\": \"Tove\"}, \"event\": \"saltmarsh\","
          + " \"weeks\": [{\"starts\": \"2027-05-31\", \"days\": {\"tue\": [{\"run\": \"40min easy\"}]}}]}";
  private static final String EVENT =
      "\"event\": {\"name\": \"Saltmarsh\", \"date\": \"2027-07-04\","
          + " \"legs\": {\"swim\": \"1.5km\", \"bike\": \"40km\", \"run\": \"10km\"}}";

  @Test
  void takesADocumentAsAnObjectOrAsTheTextOfItsFile() {
    String text =
        "{\"plan\": \"plan:\\n  format: 1\\n  athlete: {name: Tove}\\n  event: saltmarsh\\n"
            + "  weeks:\\n    - starts: 2027-05-31\\n      days:\\n        tue:\\n"
            + "          - run: 40min easy\\n\", "
            + EVENT
            + "}";
    Dossier fromText = sound(text);
    Dossier fromObject = sound("{" + PLAN + ", " + EVENT + "}");
    assertThat(fromObject.plan()).isEqualTo(fromText.plan());
    assertThat(fromText.positions().of("/plan/weeks/0")).isEqualTo(new Place("plan", 6, 7));
    assertThat(fromObject.log()).isNull();
  }

  @Test
  void namesTheColumnOfTheLineInAnObject() {
    String line =
        "{" + PLAN.replace("Tove", "Tøve 🏊").replace("easy", "eesy") + ", " + EVENT + "}";
    Fault fault = faults(line).get(0);
    assertThat(fault.what()).contains("eesy");
    int chars = line.indexOf("eesy");
    assertThat(fault.place()).isEqualTo(new Place("plan", 1, line.codePointCount(0, chars) + 1));
  }

  @Test
  void saysWhatItMisses() {
    assertThat(what("{" + EVENT + "}")).containsExactly("there is no plan");
    assertThat(what("{" + PLAN + "}")).containsExactly("the event 'saltmarsh' is not given");
    assertThat(
            what(
                "{"
                    + PLAN.replace("\"event\"", "\"log\": \"log.yaml\", \"event\"")
                    + ", "
                    + EVENT
                    + "}"))
        .containsExactly("the log 'log.yaml' is not given");
  }

  @Test
  void refusesWhatIsNoLineOfAStream() {
    assertThat(what("[1]")).containsExactly("this is no object");
    assertThat(what("plan: 1")).containsExactly("this cannot be read as JSON");
    assertThat(what("{" + PLAN)).containsExactly("this cannot be read as JSON");
    assertThat(what("{" + PLAN + ", " + EVENT + "} {}"))
        .containsExactly("something follows the object");
    assertThat(what("{" + PLAN + ", " + EVENT + ", " + EVENT + "}"))
        .containsExactly("'event' is written twice");
    assertThat(what("{\"lgo\": {}, " + PLAN + ", " + EVENT + "}"))
        .containsExactly("'lgo' is no document");
    assertThat(what("{" + PLAN + ", " + EVENT + ", \"log\": null}"))
        .containsExactly("'log' is neither an object nor a text");
    assertThat(what("{\"plan\": " + "[".repeat(50) + "]".repeat(50) + "}"))
        .containsExactly("'plan' is neither an object nor a text");
    assertThat(what("{\"plan\": {\"weeks\": " + "[".repeat(50) + "]".repeat(50) + "}}"))
        .containsExactly("entries are nested more than 32 deep");
    assertThat(StreamedPlan.read(new byte[] {'{', (byte) 0xff, '}'}, null).faults())
        .extracting(Fault::what)
        .containsExactly("this is not UTF-8 text");
    assertThat(StreamedPlan.tooLong().faults())
        .extracting(Fault::what)
        .containsExactly("this line is longer than 2 MiB");
  }

  @Test
  void takesTheNumbersOfAHouseAndNoneOfItsRules() {
    String house = ", \"house\": {\"format\": 1, \"name\": \"Tidemill\"";
    House sound = sound("{" + PLAN + ", " + EVENT + house + "}}").house();
    assertThat(Objects.requireNonNull(sound).name()).isEqualTo("Tidemill");
    assertThat(what("{" + PLAN + ", " + EVENT + house + ", \"own-rules\": [\"no-such-folder\"]}}"))
        .containsExactly("a house in a stream brings no rules of its own");
  }

  @Test
  void takesAHouseFileOfWhoeverRunsItInstead(@TempDir Path folder) throws Exception {
    Path file =
        Files.writeString(
            folder.resolve("house.yaml"), "house:\n  format: 1\n  name: Federation\n");
    byte[] line =
        ("{" + PLAN + ", " + EVENT + ", \"house\": {\"own-rules\": [\"x\"]}}")
            .getBytes(StandardCharsets.UTF_8);
    House house = Objects.requireNonNull(StreamedPlan.read(line, file).dossier()).house();
    assertThat(Objects.requireNonNull(house).name()).isEqualTo("Federation");
  }

  private static Dossier sound(String line) {
    Reading reading = read(line);
    assertThat(reading.faults()).isEmpty();
    return Objects.requireNonNull(reading.dossier());
  }

  private static List<Fault> faults(String line) {
    Reading reading = read(line);
    assertThat(reading.dossier()).isNull();
    return reading.faults();
  }

  private static List<String> what(String line) {
    return faults(line).stream().map(Fault::what).toList();
  }

  private static Reading read(String line) {
    return StreamedPlan.read(line.getBytes(StandardCharsets.UTF_8), null);
  }
}
