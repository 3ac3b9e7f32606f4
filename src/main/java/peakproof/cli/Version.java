package peakproof.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine.IVersionProvider;

/** The program's name and version, as the build wrote it down. */
final class Version implements IVersionProvider {
  static final String PROGRAM = "peakproof " + number();

  @Override
  public String[] getVersion() {
    return new String[] {PROGRAM};
  }

  private static String number() {
    try (InputStream version = Version.class.getResourceAsStream("version.txt")) {
      if (version == null) {
        throw new IllegalStateException("the build left out version.txt");
      }
      return new String(version.readAllBytes(), StandardCharsets.UTF_8).strip();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
