package peakproof.fact;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.SetLine;
import peakproof.document.SetLine.Group;
import peakproof.document.SetLine.Part;

/** The parts of a set line that are swum with paddles. */
final class PaddleWork {
  private PaddleWork() {}

  /** Those parts alone, as a line of their own; null without any. */
  static @Nullable SetLine of(SetLine line) {
    List<Part> paddles = parts(line.parts());
    return paddles.isEmpty() ? null : new SetLine(line.text(), paddles);
  }

  private static List<Part> parts(List<Part> all) {
    List<Part> kept = new ArrayList<>();
    for (Part part : all) {
      if (part.kit().contains("paddles")) {
        kept.add(part);
      } else if (part.work() instanceof Group group) {
        List<Part> inner = parts(group.parts());
        if (!inner.isEmpty()) {
          kept.add(
              new Part(
                  part.count(),
                  new Group(inner),
                  part.effort(),
                  part.target(),
                  part.kit(),
                  part.rest()));
        }
      }
    }
    return kept;
  }
}
