package peakproof.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class WaterTableTest {
  private static final String SOUND =
      """
      editions:
        - edition: next
          authority: a federation
          source: "its sheet"
          rows:
            - {category: elite, up-to: 1.5km, forbidden-above: 20C, mandatory-below: 16C}
            - {category: age-group, up-to: 750m, forbidden-above: 68F, mandatory-below: 16C, limit: 20min}
          shortened:
            - {from: -5C, below: 12C, longest: 0m}
            - {from: 31C, below: 32C}
      """;

  @Test
  void readsEditionsWithTheirRows() {
    WaterTable.Read read = read(SOUND);
    assertThat(read.faults()).isEmpty();
    assertThat(read.table().editions())
        .containsExactly(
            new WaterTable.Edition(
                "next",
                "a federation",
                "its sheet",
                List.of(
                    new WaterTable.Row("elite", 1500, 20, 16, null),
                    new WaterTable.Row("age-group", 750, 20, 16, 1200.0)),
                List.of(
                    new WaterTable.Shortened(-5, 12, 0.0),
                    new WaterTable.Shortened(31, 32, null))));
  }

  @Test
  void tellsEveryFaultWithItsPlaceAndGivesNoTable() {
    WaterTable.Read read =
        read(SOUND.replace("category: elite", "category: elites").replace("20min", "20"));
    assertThat(read.table()).isNull();
    assertThat(read.faults()).hasSize(2);
    assertThat(read.faults().get(0).place().line()).isEqualTo(6);
    assertThat(read.faults().get(1).place().line()).isEqualTo(7);
  }

  @Test
  void asksForEveryKeyARowNeeds() {
    for (String key : List.of("up-to: 1.5km, ", "forbidden-above: 20C, ", "category: elite, ")) {
      assertThat(read(SOUND.replace(key, "")).faults()).hasSize(1);
    }
    assertThat(read(SOUND.replace("{from: 31C, below: 32C}", "{below: 32C}")).faults()).hasSize(1);
    assertThat(read(SOUND.replace("    authority: a federation\n", "")).faults()).hasSize(1);
    assertThat(read("editions: []\nmore: 1\n").faults()).hasSize(1);
    assertThat(read("{}\n").faults()).hasSize(1);
  }

  @Test
  void refusesWhatIsNoTable() {
    assertThat(read("- 1\n").table()).isNull();
    assertThat(read("").table()).isNull();
    assertThat(read("editions:\n  - 1\n").table()).isNull();
    assertThat(read("editions: [{rows: 1}]\n").table()).isNull();
    assertThat(read("editions: [").table()).isNull();
  }

  private static WaterTable.Read read(String text) {
    return WaterTable.read(YamlTree.read("water.yaml", text.getBytes(StandardCharsets.UTF_8)));
  }
}
