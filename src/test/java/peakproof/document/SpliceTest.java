package peakproof.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** Additions stand where a careful hand would put them, and nothing else changes. */
class SpliceTest {
  private static final YamlValue ACCEPTED =
      YamlValue.Keys.NONE.with("rule", "swim-none").with("because", "pool closed, lake too: cold");

  private static Splice open(String text) {
    Splice.Opened opened = Splice.of("x.yaml", text.getBytes(StandardCharsets.UTF_8));
    assertThat(opened.faults()).isEmpty();
    return opened.splice();
  }

  private static String spliced(String text, UnaryOperator<YamlValue.Keys> change) {
    Splice splice = open(text);
    Splice.Result result = splice.to(under(splice, change));
    assertThat(result.faults()).isEmpty();
    return result.text();
  }

  /** The content with a change of what stands under its first key. */
  private static YamlValue under(Splice splice, UnaryOperator<YamlValue.Keys> change) {
    YamlValue.Keys root = (YamlValue.Keys) splice.content();
    String first = root.entries().keySet().iterator().next();
    return root.with(first, change.apply((YamlValue.Keys) root.get(first)));
  }

  private static UnaryOperator<YamlValue.Keys> day(String date) {
    YamlValue rest = new YamlValue.Text("rest");
    return log ->
        log.with(
            "days",
            ((YamlValue.Keys) log.get("days")).inOrder(date, rest, Comparator.naturalOrder()));
  }

  private static UnaryOperator<YamlValue.Keys> accepted() {
    return plan -> {
      YamlValue.Items before = (YamlValue.Items) plan.get("accepted");
      return plan.with(
          "accepted",
          before == null
              ? YamlValue.items(List.of(ACCEPTED))
              : before.with(before.items().size(), ACCEPTED));
    };
  }

  @Test
  void putsADayBetweenItsNeighboursAboveTheNextOnesComment() {
    assertThat(
            spliced(
                """
                log:   # ours
                    days:
                        2027-05-01: rest   # tired

                        # the wedding
                        2027-05-03: rest
                """,
                day("2027-05-02")))
        .isEqualTo(
            """
            log:   # ours
                days:
                    2027-05-01: rest   # tired

                    2027-05-02: rest
                    # the wedding
                    2027-05-03: rest
            """);
  }

  @Test
  void putsALaterDayBelowEverythingOfTheLast() {
    assertThat(
            spliced(
                """
                log:
                  days:
                    2027-05-01:
                      sessions:
                      - run: 40min
                        note: |
                          slow

                          # no comment
                      # said later
                  # of the log
                  weeks: {2027-04-26: lighter}
                """,
                day("2027-05-02")))
        .contains(
            "          # no comment\n      # said later\n    2027-05-02: rest\n  # of the log\n");
  }

  @Test
  void seesAListAtTheIndentationOfItsKey() {
    assertThat(
            spliced(
                "log:\n  days:\n    2027-05-01:\n      pain:\n      - site: knee\n  format: 1\n",
                day("2027-05-02")))
        .isEqualTo(
            "log:\n  days:\n    2027-05-01:\n      pain:\n      - site: knee\n    2027-05-02: rest\n"
                + "  format: 1\n");
    assertThat(spliced("plan:\n  accepted:\n  - rule: a\n    because: b\n  aims: []\n", accepted()))
        .isEqualTo(
            "plan:\n  accepted:\n  - rule: a\n    because: b\n  - rule: swim-none\n    because:"
                + " 'pool closed, lake too: cold'\n  aims: []\n");
  }

  @Test
  void writesIntoBrackets() {
    assertThat(spliced("log: {days: {2027-05-01: rest, 2027-05-04: rest}}", day("2027-05-02")))
        .isEqualTo("log: {days: {2027-05-01: rest, 2027-05-02: rest, 2027-05-04: rest}}");
    assertThat(spliced("log: {days: {2027-05-01: 'a, b}'}} # x", day("2027-05-02")))
        .isEqualTo("log: {days: {2027-05-01: 'a, b}', 2027-05-02: rest}} # x");
    assertThat(spliced("plan:\n  accepted: []   # none\n", accepted()))
        .isEqualTo(
            "plan:\n  accepted: [{rule: swim-none, because: 'pool closed, lake too: cold'}]   #"
                + " none\n");
  }

  @Test
  void beginsAListThatIsNotThere() {
    assertThat(spliced("plan:\n  name: x\n\n# end\n", accepted()))
        .isEqualTo(
            "plan:\n  name: x\n  accepted:\n    - rule: swim-none\n      because: 'pool closed, lake"
                + " too: cold'\n\n# end\n");
  }

  @Test
  void keepsLineEndsByteOrderMarkAndAnUnendedLine() {
    assertThat(spliced("\uFEFFlog:\r\n  days:\r\n    2027-05-01: rest", day("2027-05-02")))
        .isEqualTo("\uFEFFlog:\r\n  days:\r\n    2027-05-01: rest\r\n    2027-05-02: rest");
    assertThat(spliced("log: # 😀😀\n  days:\n    2027-05-03: rest # 😀\n", day("2027-05-02")))
        .isEqualTo("log: # 😀😀\n  days:\n    2027-05-02: rest\n    2027-05-03: rest # 😀\n");
  }

  @Test
  void lengthensAText() {
    for (String written : List.of("run 40min", "'run 40min'", "\"run 40min\"")) {
      String longer = written.replace("40min", "40min; swim 30min");
      assertThat(
              spliced(
                  "log:\n  day: " + written + "   # wet\n",
                  log -> log.with("day", "run 40min; swim 30min")))
          .isEqualTo("log:\n  day: " + longer + "   # wet\n");
    }
  }

  @Test
  void refusesToChangeOrTakeAway() {
    Splice splice = open("log:\n  a: one\n  b: [x, y]\n");
    assertThat(splice.to(under(splice, log -> log.with("a", "two"))).faults())
        .extracting(Fault::toString)
        .containsExactly(
            "x.yaml:2:6: nothing can be added here without changing what stands around it; expected"
                + " keys and lists on lines of their own; write it with a line for each entry, or"
                + " add by hand");
    assertThat(splice.to(YamlValue.Keys.NONE).text()).isNull();
    YamlValue.Items fewer = YamlValue.items(List.of(new YamlValue.Text("y")));
    assertThat(splice.to(under(splice, log -> log.with("b", fewer))).text()).isNull();
  }

  /** What was written stays, line for line, in real files at whatever place something is added. */
  @Test
  void keepsEveryLineOfTheDemoFiles() throws IOException {
    for (String file :
        List.of("plans/tove/log.yaml", "plans/gwen/log.yaml", "rules/base/log.yaml")) {
      String text = Files.readString(Path.of(file), StandardCharsets.UTF_8);
      for (int seed = 0; seed < 40; seed++) {
        Random random = new Random(seed);
        String date = "2027-0" + (3 + random.nextInt(5)) + "-" + (10 + random.nextInt(18)) + "x";
        String after = spliced(text, day(date));
        List<String> added = after.lines().filter(line -> line.contains(date)).toList();
        assertThat(added).containsExactly("    " + date + ": rest");
        assertThat(after.replace(added.get(0) + "\n", "")).isEqualTo(text);
      }
    }
  }
}
