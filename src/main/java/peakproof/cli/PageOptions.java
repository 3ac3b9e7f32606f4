package peakproof.cli;

import org.jspecify.annotations.Nullable;
import peakproof.report.Ink;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** How wide and in what ink a text report comes out. */
final class PageOptions {
  /** A finding's margin and rule name need this much. */
  private static final int NARROWEST = 40;

  /** Longer lines tire the eye, and files are read beside other things. */
  private static final int WIDEST = 100;

  private static final int USUAL_TERMINAL = 80;

  /** When to use colour. */
  enum Colour {
    AUTO,
    ALWAYS,
    NEVER
  }

  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  @Option(
      names = "--color",
      paramLabel = "auto|always|never",
      description = "Colour in text; auto: on a terminal, unless NO_COLOR is set. Default: auto.")
  private Colour colour = Colour.AUTO;

  @Option(
      names = "--width",
      paramLabel = "N",
      description = "Columns of text, 40 or more. Default: the terminal's, at most 100.")
  private @Nullable Integer width;

  /**
   * The columns of a line.
   *
   * @param toFile true when the text goes to a file rather than to standard output
   */
  int width(Surroundings surroundings, boolean toFile) {
    if (width != null) {
      if (width < NARROWEST) {
        throw new ParameterException(
            command.commandLine(),
            "Invalid value for option '--width': expected " + NARROWEST + " or more");
      }
      return width;
    }
    if (toFile || !surroundings.terminal()) {
      return WIDEST;
    }
    return Math.max(NARROWEST, Math.min(WIDEST, columns(surroundings)));
  }

  Ink ink(Surroundings surroundings, boolean toFile) {
    boolean inColour =
        switch (colour) {
          case ALWAYS -> true;
          case NEVER -> false;
          case AUTO ->
              !toFile
                  && surroundings.terminal()
                  && surroundings.variable("NO_COLOR") == null
                  && !"dumb".equals(surroundings.variable("TERM"));
        };
    return inColour ? Ink.COLOUR : Ink.PLAIN;
  }

  private static int columns(Surroundings surroundings) {
    String columns = surroundings.variable("COLUMNS");
    return columns != null && columns.matches("[1-9][0-9]{0,4}")
        ? Integer.parseInt(columns)
        : USUAL_TERMINAL;
  }
}
