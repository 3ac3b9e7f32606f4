package peakproof.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Rules nobody would write: each is built, or its author hears why not in words of ours. */
class RuleFuzzTest {
  private static final Pattern TOKEN = Pattern.compile("\\$?\\w+|\\s+|\\S");
  private static final List<String> SCRAPS =
      List.of(
          "rule",
          "when",
          "then",
          "end",
          "not",
          "exists",
          "or",
          "and",
          "from",
          "eval",
          "accumulate",
          "in",
          "contains",
          "null",
          "true",
          "(",
          ")",
          ",",
          ":",
          ";",
          ".",
          "&&",
          "||",
          "!",
          "<",
          ">=",
          "==",
          "=",
          "+",
          "/",
          "\"",
          "$set",
          "$week",
          "$x",
          "Week",
          "Race",
          "Settings",
          "Phase.PEAK",
          "phase",
          "known",
          "label",
          "swims",
          "minutes",
          "starts",
          "findings",
          "report",
          "count",
          "\"most\"",
          "import",
          "package",
          "global",
          "query",
          "declare",
          "7",
          "\n",
          " ");

  /** Words of the engine and of what it makes, which say nothing to a coach. */
  private static final Pattern FOREIGN =
      Pattern.compile(
          "(?i)exception|antlr|drools|\\.java|mismatch|no viable|token|lambda|org\\.|java\\.|stack|"
              + "ERR \\d|\\[ERR|RuleMethods|resource|compil");

  private static final String NUMBERS =
      """
      swims rides minutes runKm minutesChange daysToRace $set.count("most") $swims
      """;

  @TempDir private Path folder;

  @Test
  @Timeout(120)
  void saysWhatIsWrongInWordsOfOurs() {
    Random random = new Random(20261126);
    RuleFiles files = RuleFiles.in(folder);
    List<String> slugs = new ArrayList<>();
    for (int i = 0; i < 400; i++) {
      String slug = "odd-" + i;
      Map<String, String> texts = RuleFiles.sound();
      texts.put(".drl", mutated(Objects.requireNonNull(texts.get(".drl")), random));
      files.named(slug, texts);
      slugs.add(slug);
    }
    Ruleset loaded = files.load();
    List<String> faults = files.faults(loaded);
    for (String slug : slugs) {
      boolean told = faults.stream().anyMatch(fault -> fault.startsWith("swim/" + slug + "."));
      assertThat(told).as(slug).isNotEqualTo(loaded.cards().containsKey(slug));
    }
    assertThat(loaded.cards()).hasSizeBetween(1, 200);
    assertThat(faults).noneMatch(fault -> FOREIGN.matcher(fault).find());
  }

  /** What passes our own checks of types must be something the engine can build. */
  @Test
  @Timeout(120)
  void buildsWhateverPassesTheChecks() {
    Random random = new Random(20261127);
    RuleFiles files = RuleFiles.in(folder);
    for (int i = 0; i < 150; i++) {
      Map<String, String> texts = RuleFiles.sound();
      texts.merge(
          ".drl",
          "swims > $set.count(\"most\")",
          (text, old) -> text.replace(old, old + ",\n        " + truth(random, 2)));
      files.named("odd-" + i, texts);
    }
    Ruleset loaded = files.load();
    assertThat(loaded.cards()).hasSizeGreaterThan(20);
    assertThat(files.faults(loaded))
        .noneMatch(fault -> fault.contains("cannot be turned into checks"));
  }

  @Test
  @Timeout(30)
  void takesNoLongTimeOverTheLongestRules() {
    RuleFiles files = RuleFiles.in(folder);
    String line = "known && ".repeat(8) + "\n      ";
    for (String condition : List.of(line.repeat(18) + "known", "!".repeat(60) + "known")) {
      Map<String, String> texts = RuleFiles.sound();
      texts.merge(".drl", "changeable", (text, old) -> text.replace(old, condition));
      Ruleset loaded = files.with(texts).load();
      assertThat(files.faults(loaded)).isEmpty();
      assertThat(loaded.cards()).hasSize(1);
    }
  }

  private static String mutated(String text, Random random) {
    int top = text.indexOf("package");
    List<String> tokens =
        new ArrayList<>(
            TOKEN.matcher(text.substring(top)).results().map(MatchResult::group).toList());
    for (int edits = 1 + random.nextInt(2); edits > 0; edits--) {
      int at = random.nextInt(tokens.size());
      switch (random.nextInt(4)) {
        case 0 -> tokens.remove(at);
        case 1 -> tokens.add(at, tokens.get(random.nextInt(tokens.size())));
        case 2 -> tokens.set(at, SCRAPS.get(random.nextInt(SCRAPS.size())));
        default -> tokens.add(at, SCRAPS.get(random.nextInt(SCRAPS.size())));
      }
    }
    return text.substring(0, top) + String.join("", tokens);
  }

  private static String truth(Random random, int depth) {
    return switch (random.nextInt(depth > 0 ? 9 : 5)) {
      case 0 -> pick(random, "known", "camp", "lighter", "!raceWeek", "known == true");
      case 1 -> number(random, 1) + pick(random, " < ", " >= ", " == ") + number(random, 1);
      case 2 -> "phase " + pick(random, "== Phase.PEAK", "in (Phase.PEAK, Phase.TAPER)", "== null");
      case 3 -> pick(random, "minutes", "runKm", "phase", "minutesChange") + " != null";
      case 4 ->
          pick(random, "starts", "label")
              + pick(random, " == ", " < ")
              + pick(random, "starts", "label");
      case 5 -> "(" + truth(random, depth - 1) + " && " + truth(random, depth - 1) + ")";
      case 6 -> "(" + truth(random, depth - 1) + " || " + truth(random, depth - 1) + ")";
      case 7 -> "!(" + truth(random, depth - 1) + ")";
      default ->
          "minutes != null && minutes" + pick(random, " < ", " + swims > ") + number(random, 1);
    };
  }

  private static String number(Random random, int depth) {
    if (depth > 0 && random.nextInt(3) == 0) {
      return number(random, 0) + pick(random, " + ", " - ", " * ", " / ") + number(random, 0);
    }
    return pick(random, NUMBERS.strip().split(" "));
  }

  private static String pick(Random random, String... choices) {
    return choices[random.nextInt(choices.length)];
  }
}
