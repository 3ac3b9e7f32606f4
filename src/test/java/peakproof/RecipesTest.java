package peakproof;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import peakproof.rule.TestClassPath;

/**
 * Replays the recipes of {@code rules/README.md} as a reader would: writes the files it shows, runs
 * its commands in that folder and looks for what it says they print.
 */
class RecipesTest {
  private static final Path PAGE = Path.of("rules/README.md");
  private static final List<String> RECIPES =
      List.of("Change a number", "Silence a rule", "Reword a remedy", "Write a rule");
  private static final Pattern BLOCK =
      Pattern.compile("^```(\\w+)(?: (\\S+))?\\n(.*?)^```$", Pattern.DOTALL | Pattern.MULTILINE);
  private static final String PROGRAM = "./peakproof ";

  @TempDir private Path folder;

  @TestFactory
  Stream<DynamicTest> everyRecipeWorksAsWritten() throws IOException {
    String page = Files.readString(PAGE, StandardCharsets.UTF_8);
    return RECIPES.stream()
        .map(recipe -> DynamicTest.dynamicTest(recipe, () -> replay(recipe, part(page, recipe))));
  }

  private static String part(String page, String recipe) {
    int from = page.indexOf("\n## " + recipe + "\n");
    assertThat(from).as(recipe).isNotNegative();
    int to = page.indexOf("\n## ", from + 1);
    return page.substring(from, to);
  }

  private void replay(String recipe, String part) throws IOException, InterruptedException {
    Path place = Files.createDirectory(folder.resolve(recipe.replace(' ', '-')));
    String printed = "";
    int checked = 0;
    Matcher block = BLOCK.matcher(part);
    while (block.find()) {
      String language = block.group(1);
      String file = block.group(2);
      if (file != null) {
        Path target = place.resolve(file);
        Files.createDirectories(target.getParent());
        Files.writeString(target, block.group(3), StandardCharsets.UTF_8);
      } else if (language.equals("sh")) {
        printed = run(place, block.group(3).strip());
      } else {
        assertThat(language).as("a block without a file's name").isEqualTo("text");
        assertThat(printed).contains(block.group(3).stripTrailing());
        checked++;
      }
    }
    assertThat(checked).as("what the recipe promises").isPositive();
  }

  /** What a command prints; it must end without a fault. */
  private static String run(Path place, String line) throws IOException, InterruptedException {
    assertThat(line).startsWith(PROGRAM).doesNotContain("\n");
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"));
    command.add("-Dpeakproof.home=" + Path.of("").toAbsolutePath());
    command.addAll(List.of("-cp", TestClassPath.text(), "peakproof.Main"));
    command.addAll(Arrays.asList(line.substring(PROGRAM.length()).split(" ")));
    Path said = place.resolve(".said");
    Process process =
        new ProcessBuilder(command)
            .directory(place.toFile())
            .redirectErrorStream(true)
            .redirectOutput(said.toFile())
            .start();
    int code = process.waitFor();
    String printed = Files.readString(said, StandardCharsets.UTF_8);
    assertThat(code).as(line + "\n" + printed).isZero();
    return printed;
  }
}
