package peakproof.cli;

import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What a run takes from the machine around it.
 *
 * @param home the folder that holds the shipped {@code rules}
 * @param terminal true when standard output goes to a terminal
 * @param watched true when standard error does
 * @param answering true when standard input comes from a terminal, where somebody can answer
 */
public record Surroundings(
    Path home,
    Clock clock,
    boolean terminal,
    boolean watched,
    boolean answering,
    Map<String, String> environment) {

  /** Surroundings in which nobody answers. */
  public Surroundings(
      Path home, Clock clock, boolean terminal, boolean watched, Map<String, String> environment) {
    this(home, clock, terminal, watched, false, environment);
  }

  /**
   * This process as the launcher started it: it passes the home folder and, since Java 22 answers
   * differently from Java 17, what is a terminal.
   */
  public static Surroundings ofThisProcess() {
    String home = System.getProperty("peakproof.home");
    return new Surroundings(
        home == null ? besideTheProgram() : Path.of(home),
        Clock.system(ZoneId.systemDefault()),
        Boolean.getBoolean("peakproof.terminal"),
        Boolean.getBoolean("peakproof.watched"),
        Boolean.getBoolean("peakproof.answering"),
        System.getenv());
  }

  /** The jar this program runs from; null when it runs from classes. */
  @Nullable Path program() {
    Path program = programFile();
    return Files.isRegularFile(program) ? program : null;
  }

  /** The value of an environment variable, null when it is absent or empty. */
  @Nullable String variable(String name) {
    String value = environment.get(name);
    return value == null || value.isEmpty() ? null : value;
  }

  /** Both the jar and the compiled classes lie in the folder {@code target} of the home folder. */
  private static Path besideTheProgram() {
    Path target = programFile().getParent();
    Path home = target == null ? null : target.getParent();
    return home == null ? Path.of("") : home;
  }

  private static Path programFile() {
    CodeSource source = Surroundings.class.getProtectionDomain().getCodeSource();
    try {
      return Path.of(source.getLocation().toURI()).toAbsolutePath();
    } catch (URISyntaxException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
