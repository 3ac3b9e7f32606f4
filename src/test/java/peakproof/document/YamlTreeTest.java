package peakproof.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class YamlTreeTest {
  private static YamlTree.Parsed read(String text) {
    return YamlTree.read("plan.yaml", text.getBytes(StandardCharsets.UTF_8));
  }

  private static Tree value(String text, String key) {
    YamlTree.Parsed parsed = read(text);
    assertThat(parsed.faults()).isEmpty();
    Map<String, Tree.Entry> entries =
        ((Tree.Mapping) Objects.requireNonNull(parsed.tree())).entries();
    return Objects.requireNonNull(entries.get(key)).value();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "yes",
        "no",
        "012",
        "1:50",
        "1:10:00",
        "0x1F",
        "0b11",
        "1_000",
        ".5",
        "+1",
        "True",
        "-.inf",
        "2027-06-12",
        "1e3"
      })
  void leavesEveryScalarAsWritten(String text) {
    assertThat(((Tree.Scalar) value("a: " + text + "\n", "a")).text()).isEqualTo(text);
  }

  @Test
  void placesKeysAndValues() {
    YamlTree.Parsed parsed = read("\uFEFFa: 1\r\nb:\r\n  - {é😀: x, d: [y]}\r\n");
    assertThat(parsed.faults()).isEmpty();
    Map<String, Tree.Entry> root = ((Tree.Mapping) Objects.requireNonNull(parsed.tree())).entries();
    Tree.Entry b = Objects.requireNonNull(root.get("b"));
    assertThat(b.key()).hasToString("plan.yaml:2:1");
    Tree.Mapping item = (Tree.Mapping) ((Tree.Sequence) b.value()).items().get(0);
    assertThat(item.place()).hasToString("plan.yaml:3:5");
    Tree.Entry d = Objects.requireNonNull(item.entries().get("d"));
    assertThat(d.key()).hasToString("plan.yaml:3:13");
    assertThat(((Tree.Sequence) d.value()).items().get(0).place()).hasToString("plan.yaml:3:17");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '¦',
      quoteCharacter = '`',
      value = {
        "a: 400 easy, X r15s ¦ 1:14",
        "a: '400 easy, X r15s' ¦ 1:15",
        "a: 'it''s ''X'' here' ¦ 1:13",
        "a: \"400 e\\x61sy,\\n X\" ¦ 1:20",
        "a: \"say \\\"\\u00e9\\\" X\" ¦ 1:20",
        "a: \"one\\  two \\⏎   X\" ¦ 2:4",
        "a: |⏎    400 easy⏎⏎    8x50 X ¦ 4:10",
        "a: >-  # folded⏎  400⏎  X ¦ 3:3",
        "a: 400⏎  easy,⏎⏎   X ¦ 4:4",
        "a: 😀é X ¦ 1:7",
      })
  void mapsOffsetsBackToTheFile(String text, String place) {
    Tree.Scalar scalar = (Tree.Scalar) value(text.replace('⏎', '\n') + "\n", "a");
    assertThat(scalar.at(scalar.text().indexOf('X'))).hasToString("plan.yaml:" + place);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "a: &x 1              | 1:4: '&x' is an anchor; expected every value written out; leave '&x' out and write the value again where it is needed",
        "&k a: 1              | 1:1: '&k' is an anchor; expected every value written out; leave '&k' out and write the value again where it is needed",
        "a: [&y b]            | 1:5: '&y' is an anchor; expected every value written out; leave '&y' out and write the value again where it is needed",
        "a: &m⏎  b: 1         | 1:4: '&m' is an anchor; expected every value written out; leave '&m' out and write the value again where it is needed",
        "a: 1⏎b: *x           | 2:4: '*x' is an alias; expected every value written out; write the value itself here",
        "*x : 1               | 1:1: '*x' is an alias; expected every value written out; write the value itself here",
        "a: !!str 1           | 1:4: '!!str' is a tag; expected a plain value; leave '!!str' out",
        "!%A                  | 1:3: a value cannot begin with '*', '&' or '!'; expected text or a number; put the value in quotes",
        "a: {<<: b}           | 1:5: '<<' is a merge key; expected every key written out; write the keys themselves here (a week can say 'like: DATE')",
        "a: 1⏎---⏎b: 2        | 3:1: a second document begins here; expected one document in a file; put it in a file of its own",
        "a: 1⏎b: 2⏎a: 3       | 3:1: 'a' is written twice, first at plan.yaml:1:1; expected each key once; leave one of the two out",
        "a:⏎⇥b: 1             | 2:1: a tab stands where a line is indented; expected spaces; write two spaces for each step",
        "a:⏎b: 1              | 1:1: 'a' needs a value; expected something after the ':'; write it, or leave the line out",
        "a: ~                 | 1:1: 'a' needs a value; expected something after the ':'; write it, or leave the line out",
        "a: null              | 1:1: 'a' needs a value; expected something after the ':'; write it, or leave the line out",
        "a: ''                | 1:1: 'a' needs a value; expected something after the ':'; write it, or leave the line out",
        "a:⏎  - b⏎  -         | 3:4: this list item needs a value; expected something after the '-'; write it, or leave the line out",
        "a: {run 20min easy} | 1:5: 'run 20min easy' has no value; expected 'key: value'; write ': ' after the key, such as {run: 40min easy}",
        "a: {b: 400 easy, 8x50 drill, 200 easy} | 1:18: '8x50 drill' has no value: inside { } a comma ends the value before it; expected 'key: value'; put the set line in quotes or on its own line",
        "a: {b: 400           | 1:4: the '{' here is not closed by 2:1; expected ',' or '}' there; close the bracket, or put a value with ',' ':' or brackets in quotes",
        "a: [b, c}            | 1:4: the '[' here is not closed by 1:9; expected ',' or ']' there; close the bracket, or put a value with ',' ':' or brackets in quotes",
        "a: 'x⏎b: 1           | 1:4: the quote that opens here is not closed; expected the same quote again at the end of the value; close it, or leave the quotes out",
        "a: \"\\q\"           | 1:6: a backslash in double quotes begins an escape that does not exist; expected text; use single quotes",
        "a: @70%maxhr         | 1:4: a value cannot begin with '@'; expected text or a number; put the value in quotes",
        "a: b: c              | 1:5: a second ':' on one line; expected one 'key: value' a line; put what belongs to the first key on the next line or in { }, or quote the text",
        "a:1⏎b: 2             | 1:2: there is no space after this ':'; expected 'key: value' lines, indented alike; write ': '",
        "- a:1⏎  b: 2         | 1:4: there is no space after this ':'; expected 'key: value' lines, indented alike; write ': '",
        "a: x⏎  b: y          | 2:4: a ':' that belongs to no key; expected 'key: value' lines, indented alike; check the indentation and the line before, or put a value with ': ' in quotes",
        "a: - b               | 1:4: a list item '- ' on the line of its key; expected list items on lines of their own; move it to the next line",
        "a:⏎    b: 1⏎  c: 2  | 3:3: this line does not fit the ones above it; expected 'key: value' lines, indented alike; give it the indentation of its neighbours, and '- ' before each list item",
        "a: 1⏎- b             | 2:1: this line does not fit the ones above it; expected 'key: value' lines, indented alike; give it the indentation of its neighbours, and '- ' before each list item",
        "a: 1⏎word⏎b: 2       | 3:1: the line before has no ': '; expected 'key: value' lines, indented alike; write 'key: value' there, or quote the text",
        "? [a]⏎: b            | 1:3: a key must be a word; expected 'key: value' lines, indented alike; write a plain word before the ':'",
        "a: *                 | 1:5: a value cannot begin with '*', '&' or '!'; expected text or a number; put the value in quotes",
        "# nothing            | 1:1: this file is empty; expected a document that begins with plan, log, event or house; write it, or remove the file",
        "a: b\u0007c           | 1:5: the control character U+0007; expected text; delete it",
      })
  void refusesInPlainWords(String text, String fault) {
    String yaml = text.replace('⏎', '\n').replace('⇥', '\t') + "\n";
    assertThat(read(yaml).faults())
        .extracting(Fault::toString)
        .containsExactly("plan.yaml:" + fault);
  }

  @Test
  void reportsAllFaultsAndKeepsTheRest() {
    YamlTree.Parsed parsed = read("a: &x 1\nb: *x\nc: ~\nd: 4\n");
    assertThat(parsed.faults()).hasSize(3);
    assertThat(((Tree.Mapping) Objects.requireNonNull(parsed.tree())).entries())
        .containsKeys("a", "b", "c", "d");
  }

  @Test
  void refusesBytesThatAreNoUtf8() {
    byte[] bytes = {'a', ':', ' ', 'b', '\n', 'c', (byte) 0xE9, '\n'};
    assertThat(YamlTree.read("plan.yaml", bytes).faults())
        .extracting(Fault::toString)
        .containsExactly(
            "plan.yaml:2:2: this is not UTF-8 text; expected a text file in UTF-8; save the file as UTF-8 in your editor");
  }

  @Test
  void refusesWhatIsTooLarge() {
    assertThat(read("a: " + "x".repeat(2 * 1024 * 1024)).faults().get(0).what())
        .contains("larger than 2 MiB");
    assertThat(read("[".repeat(100_000)).faults().get(0).what()).contains("more than 32 deep");
    assertThat(read("- a\n".repeat(200_001)).faults().get(0).what()).contains("more than 200,000");
  }
}
