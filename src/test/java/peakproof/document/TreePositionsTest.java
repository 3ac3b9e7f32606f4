package peakproof.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

final class TreePositionsTest {
  private static final Place NOWHERE = new Place("plan.yaml", 99, 1);
  private static final Place INSIDE = new Place("plan.yaml", 3, 14);
  private static final Positions POSITIONS =
      positions(
          """
          name: Tove
          weeks:
            - mon: [swim, run]
            - a/b~c: 1
          """);

  private static Positions positions(String yaml) {
    byte[] bytes = yaml.getBytes(StandardCharsets.UTF_8);
    Tree tree = Objects.requireNonNull(YamlTree.read("plan.yaml", bytes).tree());
    Node root = new Node("/plan", tree.place(), tree);
    return new TreePositions(List.of(root), Map.of("/plan/weeks/0/mon/1/then", INSIDE), NOWHERE);
  }

  private static String at(String pointer) {
    Place place = POSITIONS.of(pointer);
    return place.line() + ":" + place.column();
  }

  @Test
  void anEntryStandsAtItsKeyAndAnItemAtItself() {
    assertThat(at("/plan")).isEqualTo("1:1");
    assertThat(at("/plan/weeks")).isEqualTo("2:1");
    assertThat(at("/plan/weeks/0/mon/1")).isEqualTo("3:17");
  }

  @Test
  void aKeyIsFoundAsPointersWriteIt() {
    assertThat(at("/plan/weeks/1/a~1b~0c")).isEqualTo("4:5");
  }

  @Test
  void whatIsNotWrittenStandsAtTheNearestThingAroundIt() {
    assertThat(at("/plan/weeks/0/tue/0")).isEqualTo("3:5");
    assertThat(at("/plan/weeks/2")).isEqualTo("2:1");
    assertThat(at("/plan/weeks/-1")).isEqualTo("2:1");
    assertThat(at("/plan/weeks/00")).isEqualTo("2:1");
    assertThat(at("/plan/weeks/99999999999")).isEqualTo("2:1");
    assertThat(at("/plan/name/first")).isEqualTo("1:1");
  }

  @Test
  void whatStandsInsideATextHasItsOwnPlace() {
    assertThat(POSITIONS.of("/plan/weeks/0/mon/1/then")).isEqualTo(INSIDE);
    assertThat(POSITIONS.of("/plan/weeks/0/mon/1/then/set")).isEqualTo(INSIDE);
  }

  @Test
  void whatNoTreeHoldsStandsAtTheFirstPlace() {
    assertThat(POSITIONS.of("/log/2027-05-01")).isEqualTo(NOWHERE);
    assertThat(POSITIONS.of("/planning")).isEqualTo(NOWHERE);
    assertThat(POSITIONS.of("")).isEqualTo(NOWHERE);
  }
}
