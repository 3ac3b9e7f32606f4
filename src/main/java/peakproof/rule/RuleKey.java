package peakproof.rule;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * What a rule's classes follow from, beside the program: its name, its card and its logic.
 *
 * @param hash SHA-256, 64 hexadecimal digits
 */
record RuleKey(String slug, String hash) {
  /** The key of a rule by the hashes of its two files as they are. */
  static RuleKey of(String slug, String theme, String card, String logic) {
    return new RuleKey(
        slug, hash((theme + "/" + slug + " " + card + " " + logic).getBytes(StandardCharsets.UTF_8)));
  }

  /** SHA-256 of some bytes, 64 hexadecimal digits. */
  static String hash(byte[] bytes) {
    return HexFormat.of().formatHex(digest().digest(bytes));
  }

  static MessageDigest digest() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
