package peakproof;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import peakproof.cli.Program;
import peakproof.cli.Surroundings;

/** Where the program starts, and where it exits. */
public final class Main {
  private Main() {}

  /**
   * Runs a command and exits with its code, to which the launcher may have something added: Java
   * ends itself with codes that would pass for ours.
   */
  public static void main(String[] arguments) {
    int base = Integer.getInteger("peakproof.exit", 0);
    System.exit(
        base
            + Program.run(
                arguments,
                System.in,
                utf8(FileDescriptor.out),
                utf8(FileDescriptor.err),
                Surroundings.ofThisProcess()));
  }

  private static PrintWriter utf8(FileDescriptor stream) {
    return new PrintWriter(
        new OutputStreamWriter(new FileOutputStream(stream), StandardCharsets.UTF_8));
  }
}
