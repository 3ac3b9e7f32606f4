package peakproof.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The page on the numbers names each of them, and no other. */
class MeasuresPageTest {
  private static final Pattern MADE =
      Pattern.compile("(?:add|Measured\\.of|values\\.add\\(of)\\(\\s*\"([a-z]+(?:-[a-z]+)*)\",");
  private static final Pattern TOLD =
      Pattern.compile("`([a-z]+(?:-[a-z]+)+|monotony|age|fluid|carbohydrate|wbgt)`");

  @Test
  void namesEveryNumberThatIsComputed() throws IOException {
    Set<String> told = new TreeSet<>();
    Matcher name = TOLD.matcher(Files.readString(Path.of("docs/measures.md")));
    while (name.find()) {
      told.add(name.group(1));
    }
    Set<String> made = new TreeSet<>();
    for (String file : new String[] {"PlanMeasures", "WeekMeasures", "SessionMeasures"}) {
      Path source = Path.of("src/main/java/peakproof/fact/" + file + ".java");
      Matcher call = MADE.matcher(Files.readString(source));
      while (call.find()) {
        made.add(call.group(1));
      }
    }
    assertThat(made).hasSizeGreaterThan(45);
    assertThat(told).containsAll(made);
  }
}
