package peakproof.audit;

import java.util.Arrays;
import java.util.Set;
import peakproof.fact.Where;

/** Entries of plan and log that are about an athlete's health. */
final class HealthEntry {
  private static final Set<String> KEYS =
      Set.of("pain", "ill", "morning", "medicine", "medicines", "health", "injuries");

  private HealthEntry() {}

  /** True for such an entry and for everything in it. */
  static boolean isOne(Where where) {
    return Arrays.stream(where.pointer().split("/", -1)).anyMatch(KEYS::contains);
  }
}
