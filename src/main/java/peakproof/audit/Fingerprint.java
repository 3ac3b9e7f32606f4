package peakproof.audit;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.util.HexFormat;
import org.jspecify.annotations.Nullable;

/** Names a finding by what it is about, so that moved lines and new wording change nothing. */
final class Fingerprint {
  private static final int LENGTH = 16;

  private Fingerprint() {}

  /**
   * Names a finding.
   *
   * @param group body part or illness, or null
   */
  static String of(String rule, String athlete, LocalDate race, @Nullable String group) {
    String what = String.join("\n", rule, athlete, race.toString(), group == null ? "" : group);
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(what.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(digest).substring(0, LENGTH);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
