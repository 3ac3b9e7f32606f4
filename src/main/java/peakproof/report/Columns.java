package peakproof.report;

/**
 * Where the weeks of a drawing stand, from left to right.
 *
 * @param count how many
 * @param foot pixels from the upper edge to the line they stand on
 */
record Columns(int count, double foot) {
  static final int MARGIN = 40;
  static final int PITCH = 48;
  static final int BAR = 30;
  private static final int LABELS = 22;

  static Columns of(int count, double foot) {
    return new Columns(count, foot);
  }

  String middle(int index) {
    return Axis.pixels(MARGIN + PITCH * (index + 0.5));
  }

  String left(int index) {
    return Axis.pixels(MARGIN + PITCH * (index + 0.5) - BAR / 2.0);
  }

  String barWidth() {
    return String.valueOf(BAR);
  }

  String width() {
    return String.valueOf(MARGIN + PITCH * count + 6);
  }

  String right() {
    return String.valueOf(MARGIN + PITCH * count);
  }

  String height() {
    return Axis.pixels(foot + LABELS);
  }

  String floor() {
    return Axis.pixels(foot);
  }

  /** Where the marks of the axis end. */
  String marks() {
    return String.valueOf(MARGIN - 6);
  }

  /** Where the line they stand on begins. */
  String start() {
    return String.valueOf(MARGIN);
  }

  String labels() {
    return Axis.pixels(foot + LABELS - 6);
  }
}
