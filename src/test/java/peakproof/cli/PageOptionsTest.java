package peakproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import peakproof.report.Ink;
import picocli.CommandLine;

class PageOptionsTest {
  private static final Surroundings TERMINAL = terminal(Map.of());

  @Test
  void colourOnATerminalOnly() {
    assertThat(page().ink(TERMINAL, false)).isEqualTo(Ink.COLOUR);
    assertThat(page().ink(TERMINAL, true)).isEqualTo(Ink.PLAIN);
    assertThat(page().ink(pipe(), false)).isEqualTo(Ink.PLAIN);
  }

  @Test
  void keepPlainWhenNoColourIsWanted() {
    assertThat(page().ink(terminal(Map.of("NO_COLOR", "1")), false)).isEqualTo(Ink.PLAIN);
    assertThat(page().ink(terminal(Map.of("NO_COLOR", "")), false)).isEqualTo(Ink.COLOUR);
    assertThat(page().ink(terminal(Map.of("TERM", "dumb")), false)).isEqualTo(Ink.PLAIN);
    assertThat(page("--color", "never").ink(TERMINAL, false)).isEqualTo(Ink.PLAIN);
  }

  @Test
  void colourAnywhereWhenAskedTo() {
    assertThat(page("--color", "always").ink(pipe(), true)).isEqualTo(Ink.COLOUR);
    assertThat(page("--color=always").ink(terminal(Map.of("NO_COLOR", "1")), false))
        .isEqualTo(Ink.COLOUR);
  }

  @Test
  void fitTheTerminalWithinReason() {
    assertThat(page().width(TERMINAL, false)).isEqualTo(80);
    assertThat(page().width(terminal(Map.of("COLUMNS", "72")), false)).isEqualTo(72);
    assertThat(page().width(terminal(Map.of("COLUMNS", "300")), false)).isEqualTo(100);
    assertThat(page().width(terminal(Map.of("COLUMNS", "7")), false)).isEqualTo(40);
    assertThat(page().width(terminal(Map.of("COLUMNS", "wide")), false)).isEqualTo(80);
  }

  @Test
  void useAHundredColumnsAwayFromATerminal() {
    assertThat(page().width(pipe(), false)).isEqualTo(100);
    assertThat(page().width(terminal(Map.of("COLUMNS", "72")), true)).isEqualTo(100);
  }

  @Test
  void takeTheWidthThatIsGiven() {
    assertThat(page("--width", "140").width(TERMINAL, true)).isEqualTo(140);
  }

  private static PageOptions page(String... arguments) {
    PageOptions page = new PageOptions();
    CommandLine line = new CommandLine(CommandLine.Model.CommandSpec.create().name("audit"));
    line.getCommandSpec().addMixin("page", CommandLine.Model.CommandSpec.forAnnotatedObject(page));
    line.setCaseInsensitiveEnumValuesAllowed(true).parseArgs(arguments);
    return page;
  }

  private static Surroundings terminal(Map<String, String> environment) {
    return new Surroundings(Path.of(""), Run.CLOCK, true, true, environment);
  }

  private static Surroundings pipe() {
    return new Surroundings(Path.of(""), Run.CLOCK, false, false, Map.of("COLUMNS", "72"));
  }
}
