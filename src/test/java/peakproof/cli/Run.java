package peakproof.cli;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Map;

/** A whole run of the program in this process: its code and what it said. */
record Run(int code, String out, String err) {
  static final Clock CLOCK = Clock.fixed(Instant.parse("2027-05-31T20:00:00Z"), ZoneOffset.UTC);

  static Run of(String... arguments) {
    return in(
        new Surroundings(Path.of("").toAbsolutePath(), CLOCK, false, false, Map.of()), arguments);
  }

  static Run in(Surroundings surroundings, String... arguments) {
    return fed("", surroundings, arguments);
  }

  /** A run with something on standard input. */
  static Run fed(String input, Surroundings surroundings, String... arguments) {
    InputStream in = new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8));
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code = Program.run(arguments, in, new PrintWriter(out), new PrintWriter(err), surroundings);
    return new Run(code, out.toString(), err.toString());
  }
}
