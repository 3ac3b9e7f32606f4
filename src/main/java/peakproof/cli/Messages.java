package peakproof.cli;

import java.io.PrintWriter;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import peakproof.document.Fault;
import peakproof.report.Printable;

/**
 * What goes to standard error. Plans that share a wrong file say its faults once; on a terminal the
 * line below the last message tells how far a long run is.
 */
final class Messages {
  private static final int LONGEST_REASON = 200;

  private static final int MOST_TOLD = 10_000;

  private static final String START_OF_EMPTY_LINE = "\r\033[K";

  private final PrintWriter err;
  private final boolean terminal;

  /** The last few that were told or would have been told again; all of a long run are too many. */
  private final Map<String, Boolean> told = new LinkedHashMap<>(16, 0.75f, true);

  private boolean showing;

  /**
   * @param terminal true when someone watches and a line may be drawn over
   */
  Messages(PrintWriter err, boolean terminal) {
    this.err = err;
    this.terminal = terminal;
  }

  /** Shows how far the run is, in place of what was shown before. */
  void show(String progress) {
    if (terminal) {
      err.print(START_OF_EMPTY_LINE + Printable.of(progress));
      err.flush();
      showing = true;
    }
  }

  /** Takes away what {@link #show} left. */
  void clear() {
    if (showing) {
      err.print(START_OF_EMPTY_LINE);
      err.flush();
      showing = false;
    }
  }

  void tell(String message) {
    clear();
    err.println(Printable.of(message));
  }

  void tell(Collection<Fault> faults) {
    faults.stream().sorted().map(Fault::toString).filter(this::isNew).forEach(this::tell);
  }

  private boolean isNew(String message) {
    boolean known = told.put(message, true) != null;
    if (told.size() > MOST_TOLD) {
      told.remove(told.keySet().iterator().next());
    }
    return !known;
  }

  /** Says that the program itself failed, with what helps to mend it and without a stack trace. */
  void tellOurMistake(Throwable mistake, @Nullable String during) {
    tell(
        "peakproof: internal error"
            + (during == null ? "" : " at " + during)
            + ": "
            + reason(mistake)
            + place(mistake));
    String appeal =
        "This is a mistake in Peakproof. Please report the line above, without names or health"
            + " entries, with: "
            + Version.PROGRAM
            + ", Java "
            + Runtime.version()
            + ", "
            + System.getProperty("os.name");
    if (isNew(appeal)) {
      tell(appeal);
    }
  }

  private static String reason(Throwable mistake) {
    String message = String.valueOf(mistake.getMessage());
    return mistake.getClass().getSimpleName()
        + ": "
        + message.substring(0, Math.min(message.length(), LONGEST_REASON));
  }

  private static String place(Throwable mistake) {
    return Arrays.stream(mistake.getStackTrace())
        .filter(frame -> frame.getClassName().startsWith("peakproof."))
        .findFirst()
        .map(frame -> " in " + frame)
        .orElse("");
  }
}
