package peakproof.bench;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import peakproof.document.Documents;

/**
 * Reads the plans of a folder with their events, logs and houses on all cores and does nothing else
 * with them: what an audit of the folder is measured against.
 */
public final class ReadAlone {
  private ReadAlone() {}

  /** Takes the folder; says how many of its plans are without fault. */
  public static void main(String[] arguments) {
    List<Path> plans = Documents.plansUnder(Path.of(arguments[0]));
    long sound =
        plans.parallelStream().filter(plan -> Documents.read(plan, null).dossier() != null).count();
    new PrintStream(System.out, true, StandardCharsets.UTF_8)
        .println(sound + " of " + plans.size() + " plans read");
  }
}
