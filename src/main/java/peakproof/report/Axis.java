package peakproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import peakproof.fact.Words;

/**
 * A scale from nothing at the foot of a drawing up to a round number at its head.
 *
 * @param top the round number
 * @param step between two marks
 * @param head where the top is, pixels from the upper edge
 * @param height pixels from foot to head
 */
record Axis(double top, double step, double head, double height) {
  private static final int MOST_MARKS = 5;

  /** A mark of the scale, where it is and what it says. */
  record Mark(String y, String label) {}

  /** Wide enough for a value; of nothing or of no number it goes up to 1. */
  static Axis upTo(double largest, double head, double height) {
    double most = Double.isFinite(largest) && largest > 0 ? largest : 1;
    double power = Math.pow(10, Math.floor(Math.log10(most)) - 1);
    for (double times : new double[] {1, 2, 5, 10, 20, 50}) {
      double step = times * power;
      if (most / step <= MOST_MARKS) {
        return new Axis(step * Math.ceil(most / step - 1e-9), step, head, height);
      }
    }
    throw new IllegalStateException("no step for " + largest);
  }

  /** Where a value is, pixels from the upper edge; one beyond the top is at the head. */
  double at(double value) {
    return head + height * (1 - Math.min(value, top) / top);
  }

  /** The same, as a drawing writes it. */
  String y(double value) {
    return pixels(at(value));
  }

  /** Its marks from the foot up. */
  List<Mark> marks() {
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i * step <= top * (1 + 1e-9); i++) {
      marks.add(new Mark(y(i * step), Words.number(i * step)));
    }
    return marks;
  }

  /** Pixels with one decimal, the same on every machine. */
  static String pixels(double pixels) {
    return String.format(Locale.ROOT, "%.1f", pixels);
  }
}
