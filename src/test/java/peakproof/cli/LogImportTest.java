package peakproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.TimeZone;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The whole way of sessions into a log: what is taken, what stays, and what is said about it. */
class LogImportTest {
  private static final String HEAD = "date,at,sport,duration,distance,rpe,where,note\n";

  @TempDir private Path folder;
  private Path log;
  private Path table;

  @BeforeEach
  void names() {
    log = folder.resolve("log.yaml");
    table = folder.resolve("a.csv");
  }

  private static String read(Path file) {
    try {
      return Files.readString(file, StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new java.io.UncheckedIOException(unreadable);
    }
  }

  private static void write(Path file, String text) {
    try {
      Files.writeString(file, text, StandardCharsets.UTF_8);
    } catch (IOException unwritable) {
      throw new java.io.UncheckedIOException(unwritable);
    }
  }

  private Run importing(String rows, String... more) {
    write(table, HEAD + rows);
    List<String> arguments =
        new ArrayList<>(List.of("log", "import", log.toString(), table.toString()));
    arguments.addAll(List.of(more));
    return Run.of(arguments.toArray(String[]::new));
  }

  /** Whether a session of a.csv's second line goes in beside what the log has on that day. */
  private boolean takes(String day, String row) {
    write(log, "log:\n  format: 1\n  days:\n    2027-05-30:" + day + "\n");
    String before = read(log);
    Run run = importing("2027-05-30," + row + "\n", "--dry-run");
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    assertThat(read(log)).isEqualTo(before);
    return run.out().contains(" added\n") || run.out().contains(" added, without");
  }

  @Test
  void knowsASessionByLengthOnEachSideOfTheTolerance() {
    assertThat(takes(" run 60min", ",run,63min,,,,")).isFalse();
    assertThat(takes(" run 60min", ",run,63.2min,,,,")).isTrue();
    assertThat(takes(" run 20min", ",run,22min,,,,")).isFalse();
    assertThat(takes(" run 20min", ",run,22.1min,,,,")).isTrue();
    assertThat(takes(" run 10km", ",run,,10.5km,,,")).isFalse();
    assertThat(takes(" run 10km", ",run,,10.6km,,,")).isTrue();
    assertThat(takes(" swim 1000m", ",swim,,1100m,,,")).isFalse();
    assertThat(takes(" swim 1000m", ",swim,,1101m,,,")).isTrue();
    assertThat(takes(" run 60min", ",bike,60min,,,,")).isTrue();
    assertThat(takes(" bike 60min + run 20min", ",run,20min,,,,")).isFalse();
  }

  @Test
  void knowsASessionByItsStart() {
    String early = " {sessions: [{run: 30min, at: 07:00}]}";
    assertThat(takes(early, "07:15,run,50min,,,,")).isFalse();
    assertThat(takes(early, "07:16,run,50min,,,,")).isTrue();
    assertThat(takes(early, "11:00,run,30min,,,,")).isFalse();
    assertThat(takes(early, "11:01,run,30min,,,,")).isTrue();
    assertThat(takes(early, ",run,30min,,,,")).isFalse();
  }

  @Test
  void leavesAloneWhatItCannotCompare() {
    assertThat(takes(" {sessions: [{swim: \"400 easy, 10x100 hard\"}]}", ",swim,,1400m,,,"))
        .isFalse();
    assertThat(takes(" {sessions: [{swim: \"400 easy, 10x100 hard\"}]}", ",swim,,2400m,,,"))
        .isTrue();
    assertThat(takes(" {sessions: [{swim: \"10min easy, 10x100 hard\"}]}", ",swim,,2400m,,,"))
        .isFalse();
    assertThat(takes(" rest", ",swim,,2400m,,,")).isFalse();
    assertThat(takes(" missed work", ",swim,,2400m,,,")).isTrue();
    assertThat(takes("\n      pain: [{site: knee, level: 3}]", ",swim,,2400m,,,")).isTrue();
  }

  @Test
  void takesBothOfADaysTwoRunsAndNeitherTwice() {
    write(log, "log:\n  format: 1\n  days:\n    2027-05-30: run 40min\n");
    String rows = "2027-05-30,,run,41min,,,,\n2027-05-30,,run,40min,,,,\n";
    assertThat(importing(rows).out()).contains("1 added, 1 skipped").contains("run 41min  ");
    assertThat(read(log)).endsWith("2027-05-30: run 40min; run 41min\n");
    assertThat(importing(rows).out()).contains("0 added, 2 skipped");
    assertThat(importing("2027-05-30,,run,39min,,,,\n" + rows).out())
        .contains("1 added, 2 skipped");
  }

  @Test
  void saysWhatADayOnOneLineCannotHold() {
    write(log, "log:\n  format: 1\n  days:\n    2027-05-30: sleep 7h # late\n");
    Run run = importing("2027-05-30,07:00,run,49min,8.9km,5,road,windy\n");
    assertThat(run.out()).contains("added, without where, at, note (its day is on one line)");
    assertThat(read(log)).contains("2027-05-30: sleep 7h; run 49min 8.9km rpe5 # late\n");
  }

  @Test
  void putsAnotherSportsWordsLastOnALine() {
    write(log, "log:\n  format: 1\n  days:\n    2027-05-30: sleep 7h\n");
    write(
        folder.resolve("m.yaml"),
        """
        mapping:
          format: 1
          columns: {date: date, sport: sport, duration: duration, distance: distance, rpe: rpe}
          sports: {Nordic walk: other}
        """);
    String mapping = folder.resolve("m.yaml").toString();
    Run run = importing("2027-05-30,,Nordic walk,49min,5km,3,,\n", "--mapping", mapping);
    assertThat(run.out()).contains("added, without distance (its day is on one line)");
    assertThat(read(log)).endsWith("2027-05-30: sleep 7h; other rpe3 49min nordic walk\n");
  }

  @Test
  void takesAllOrNothing() {
    write(log, "log:\n  format: 1\n  days:\n    2027-05-29: rest\n");
    String before = read(log);
    Run run =
        importing(
            "2027-05-30,,run,49min,,,,\n2027-05-31,25:00,run,x,1:2,11,pol,\n31.05.2027,,run,1h,,,,\n"
                + ",,run,1h,,,,\n2027-05-30,,jog,1h,,,,\n");
    assertThat(run.code()).isEqualTo(3);
    assertThat(run.out()).isEmpty();
    assertThat(run.err().replace(folder + "/", "").lines().map(line -> line.split("; ", 2)[0]))
        .containsExactly(
            "a.csv:3:12: '25:00' is no time of day",
            "a.csv:3:22: 'x' is no duration",
            "a.csv:3:24: '1:2' is no distance",
            "a.csv:3:28: '11' is no rating",
            "a.csv:3:31: 'pol' is not a place to train",
            "a.csv:4:1: '31.05.2027' is no date here",
            "a.csv:5:1: this row has no date",
            "a.csv:6:13: 'jog' is no sport that is known here");
    assertThat(read(log)).isEqualTo(before);
    assertThat(Files.exists(folder.resolve("new.yaml"))).isFalse();
  }

  @Test
  void refusesARowWithACellTooMany() {
    Run run = importing("2027-05-30,,run,49min,8,9km,5,road,wet\n");
    assertThat(run.code()).isEqualTo(3);
    assertThat(run.err()).contains(":2:36: this row has 9 cells, the heading 8");
  }

  @Test
  void refusesAFaultyLogAsItIs() {
    write(log, "log:\n  format: 1\n  dais: {}\n");
    Run run = importing("2027-05-30,,run,49min,,,,\n");
    assertThat(run.code()).isEqualTo(3);
    assertThat(run.err()).contains("log.yaml:3:3: 'dais' is not a key of the log");
    write(log, "plan: {}\n");
    assertThat(importing("2027-05-30,,run,49min,,,,\n").code()).isEqualTo(3);
    write(log, "log: {a: [}");
    assertThat(importing("2027-05-30,,run,49min,,,,\n").code()).isEqualTo(3);
  }

  @Test
  void wantsToKnowItsInputs() {
    assertThat(Run.of("log", "import", log.toString()).code()).isEqualTo(2);
    write(folder.resolve("a.gpx"), "<gpx/>");
    Run run = Run.of("log", "import", log.toString(), folder.resolve("a.gpx").toString());
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("such as --zone Europe/Oslo");
    assertThat(importing("", "--where", "pol").err()).contains("did you mean 'pool'?");
    assertThat(importing("", "--zone", "CET+1").code()).isEqualTo(2);
    assertThat(importing("2027-05-30,,,49min,,,,\n", "--sport", "run").code()).isZero();
  }

  /**
   * Sessions at random into real logs: what was written stays, byte for byte, and once is enough.
   */
  @Test
  void keepsEveryLineAndAddsNothingTwice() throws IOException {
    List<String> sports = List.of("swim", "bike", "run", "strength", "other");
    for (int seed = 0; seed < 16; seed++) {
      Random random = new Random(seed);
      String name = List.of("tove", "gwen", "meera", "radek").get(seed % 4);
      String before = "# the coach's own\n" + Files.readString(Path.of("plans", name, "log.yaml"));
      before =
          before.replace(
              "      sessions:\n        - swim",
              "      # by hand\n      sessions:\n        - swim");
      before = seed % 3 == 0 ? before.replace("\n", "\r\n") : before;
      write(log, before);
      StringBuilder rows = new StringBuilder();
      for (int i = 0; i < 40; i++) {
        rows.append(
            String.format(
                Locale.ROOT,
                "2027-0%d-%02d,%s,%s,%dmin,%s,%s,,%s%n",
                3 + random.nextInt(4),
                1 + random.nextInt(30),
                random.nextInt(3) == 0
                    ? String.format(Locale.ROOT, "%02d:30", random.nextInt(24))
                    : "",
                sports.get(random.nextInt(5)),
                10 + random.nextInt(200),
                random.nextBoolean() ? "" : 1 + random.nextInt(90) + "km",
                random.nextBoolean() ? "" : random.nextInt(11),
                List.of("", "\"a, b: # c\"", "'x'", "yes", "🙂 {").get(random.nextInt(5))));
      }
      Run first = importing(rows.toString().replace("-03-31", "-03-30"));
      assertThat(first.code()).as("seed %d: %s", seed, first.err()).isZero();
      String after = read(log);
      assertThat(first.out()).contains(" added\n");
      assertThat(after).isNotEqualTo(before);
      keepsLines(before, after);
      assertThat(after.contains("\r\n")).isEqualTo(before.contains("\r\n"));
      Run again = importing(rows.toString().replace("-03-31", "-03-30"));
      assertThat(again.out()).as("seed %d", seed).contains("\n0 added, ");
      assertThat(read(log)).isEqualTo(after);
    }
  }

  /** Each old line stands in the new text, in order, whole or with more before its comment. */
  private static void keepsLines(String before, String after) {
    List<String> lines = after.lines().toList();
    int at = 0;
    for (String old : before.lines().toList()) {
      while (at < lines.size() && !lines.get(at).startsWith(old)) {
        at++;
      }
      assertThat(at).as(old).isLessThan(lines.size());
      boolean whole = lines.get(at).equals(old) || lines.get(at).startsWith(old + "; ");
      assertThat(whole).as(lines.get(at)).isTrue();
      at++;
    }
  }

  @Test
  void survivesTwistedTables() {
    String sound = HEAD + "2027-05-30,07:10,run,49min,8.9km,5,road,\"a, b\"\n".repeat(3);
    String[] twists = {
      ",",
      "\"",
      "\n",
      "\r",
      ";",
      "\t",
      "\0",
      "é",
      "😀",
      "\uFEFF",
      "9999999999",
      "-",
      "\u2028",
      "{",
      "#",
      ": ",
      "'",
      ""
    };
    for (int seed = 0; seed < 250; seed++) {
      Random random = new Random(seed);
      StringBuilder text = new StringBuilder(sound);
      for (int i = 0; i <= random.nextInt(4); i++) {
        int at = random.nextInt(text.length());
        text.replace(
            at,
            Math.min(text.length(), at + random.nextInt(8)),
            twists[random.nextInt(twists.length)]);
      }
      write(table, text.toString());
      Run run =
          Run.of(
              "log", "import", folder.resolve("n.yaml").toString(), table.toString(), "--dry-run");
      assertThat(run.code()).as("seed %d: %s", seed, run.err()).isIn(0, 3);
      assertThat(run.code() == 3).isEqualTo(run.err().contains("a.csv:"));
    }
  }

  @Test
  void saysTheSameUnderEveryLocaleAndZone() {
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    String rows = "2027-05-30T22:30:00Z,,SWIM,49.5min,1.5mi,5,POOL,I\n";
    write(
        folder.resolve("m.yaml"),
        """
        mapping:
          format: 1
          zone: Europe/Oslo
          columns: {date: date, sport: sport, duration: duration, distance: distance, where: where}
          sports: {SWIM: swim}
          places: {POOL: pool}
        """);
    String mapping = folder.resolve("m.yaml").toString();
    String expected = importing(rows, "--mapping", mapping, "--dry-run").out();
    assertThat(expected).startsWith("Mon 2027-05-31  swim 49min30s 1.5mi pool  ");
    try {
      Locale.setDefault(Locale.forLanguageTag("tr-TR"));
      TimeZone.setDefault(TimeZone.getTimeZone("Asia/Kathmandu"));
      assertThat(importing(rows, "--mapping", mapping, "--dry-run").out()).isEqualTo(expected);
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }
}
