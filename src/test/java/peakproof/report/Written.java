package peakproof.report;

import java.io.IOException;
import java.io.UncheckedIOException;

/** A whole report by way of a renderer. */
final class Written {
  private Written() {}

  static void by(Renderer renderer, int plans, Judged... all) {
    try {
      for (Judged judged : all) {
        renderer.add(Rank.of(judged.audit()), renderer.page(judged));
      }
      renderer.end(plans);
    } catch (IOException unexpected) {
      throw new UncheckedIOException(unexpected);
    }
  }
}
