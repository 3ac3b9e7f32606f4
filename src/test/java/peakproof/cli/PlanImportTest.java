package peakproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Planned sessions go into empty days, and nothing else changes. */
class PlanImportTest {
  private static final String PLAN =
      """
      plan:
        format: 1
        athlete: {name: Tove Lindqvist}
        event: {name: Saltmarsh, date: 2027-07-04, legs: {swim: 3.8km, bike: 180km, run: 42.2km}}
        weeks:
          # the first
          - starts: 2027-05-31
            days:
              mon: rest        # travels
              wed:
                - warning: smoke
              thu:
                - run: 40min
          # as the first
          - starts: 2027-06-14
            like: 2027-05-31
        aims: []
      """;

  @TempDir private Path folder;
  private Path plan;

  @BeforeEach
  void write() throws IOException {
    plan = folder.resolve("plan.yaml");
    Files.writeString(plan, PLAN, StandardCharsets.UTF_8);
  }

  private Run importing(String rows, String... more) throws IOException {
    Path table = folder.resolve("a.csv");
    Files.writeString(table, "date,sport,session,duration,note\n" + rows, StandardCharsets.UTF_8);
    String[] arguments = new String[4 + more.length];
    System.arraycopy(
        new String[] {"plan", "import", plan.toString(), table.toString()}, 0, arguments, 0, 4);
    System.arraycopy(more, 0, arguments, 4, more.length);
    return Run.of(arguments);
  }

  private String read() throws IOException {
    return Files.readString(plan, StandardCharsets.UTF_8);
  }

  @Test
  void fillsEmptyDaysAndBeginsWeeksInOrder() throws IOException {
    String rows =
        """
        2027-05-31,run,30min easy,,
        2027-06-01,swim,"400 easy, 8x50 drill r15s",,loose
        2027-06-02,bike,,1h15,
        2027-06-03,run,30min easy,,
        2027-06-08,run,20min easy,,
        2027-06-08,strength,,20min,
        2027-06-17,run,30min easy,,
        2027-06-18,run,30min easy,,
        2027-06-21,other,40min walk,,
        """;
    Run run = importing(rows);
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    assertThat(
            run.out().replace(folder + "/", "").lines().map(line -> line.replaceAll(" {2,}", "  ")))
        .containsExactly(
            "Mon 2027-05-31  run 30min easy  a.csv:2  skipped: the plan says rest, plan.yaml:9:9",
            "Tue 2027-06-01  swim 400 easy, 8x50 drill r15s  a.csv:3  added",
            "Wed 2027-06-02  bike 1h15  a.csv:4  added",
            "Thu 2027-06-03  run 30min easy  a.csv:5  skipped: the plan has this day, plan.yaml:12:9",
            "Tue 2027-06-08  run 20min easy  a.csv:6  added",
            "Tue 2027-06-08  strength 20min  a.csv:7  added",
            "Thu 2027-06-17  run 30min easy  a.csv:8  skipped: the plan has this day, plan.yaml:12:9",
            "Fri 2027-06-18  run 30min easy  a.csv:9  added",
            "Mon 2027-06-21  other 40min walk  a.csv:10  added",
            "6 added, 3 skipped. plan.yaml has them now.");
    String after =
        """
        plan:
          format: 1
          athlete: {name: Tove Lindqvist}
          event: {name: Saltmarsh, date: 2027-07-04, legs: {swim: 3.8km, bike: 180km, run: 42.2km}}
          weeks:
            # the first
            - starts: 2027-05-31
              days:
                mon: rest        # travels
                tue:
                  - swim: 400 easy, 8x50 drill r15s
                    note: loose
                wed:
                  - warning: smoke
                  - bike: 1h15
                thu:
                  - run: 40min
            - starts: 2027-06-07
              days:
                tue:
                  - run: 20min easy
                  - strength: 20min
            # as the first
            - starts: 2027-06-14
              like: 2027-05-31
              but:
                fri:
                  - run: 30min easy
            - starts: 2027-06-21
              days:
                mon:
                  - other: 40min walk
          aims: []
        """;
    assertThat(read()).isEqualTo(after);
    assertThat(importing(rows).out()).contains("0 added, 9 skipped");
    assertThat(read()).isEqualTo(after);
  }

  @Test
  void writesNothingOnADryRunOrAFault() throws IOException {
    assertThat(importing("2027-06-01,run,30min easy,,\n", "--dry-run").out())
        .contains("1 added, 0 skipped. ")
        .contains("would have them; nothing was written.");
    assertThat(read()).isEqualTo(PLAN);
    Run run = importing("2027-06-01,run,30min esy,,\n2027-06-02,run,30min easy,,\n");
    assertThat(run.code()).isEqualTo(3);
    assertThat(run.err())
        .contains("a.csv:2:16: 'esy' is no word of a set line")
        .contains("did you mean 'easy'?");
    assertThat(read()).isEqualTo(PLAN);
  }

  @Test
  void refusesAPlanThatIsWrongAsItIs() throws IOException {
    Files.writeString(plan, PLAN.replace("aims: []", "aim: []"), StandardCharsets.UTF_8);
    Run run = importing("2027-06-01,run,30min easy,,\n");
    assertThat(run.code()).isEqualTo(3);
    assertThat(run.err()).contains("plan.yaml:17:3: 'aim' is not a key of the plan");
    assertThat(
            Run.of("plan", "import", folder.resolve("none.yaml").toString(), plan.toString())
                .code())
        .isEqualTo(3);
  }
}
