package peakproof.audit;

import java.nio.file.Path;
import java.util.List;

/** The shipped rules, built once for all tests that only judge with them. */
final class Shipped {
  private static final Auditor AUDITOR = Auditor.load(List.of(Path.of("rules")));

  private Shipped() {}

  static Auditor auditor() {
    return AUDITOR;
  }
}
