package peakproof.rule;

import java.nio.ByteBuffer;
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
  /** The key of a rule's two files as they are. */
  static RuleKey of(String slug, String theme, byte[] card, byte[] logic) {
    MessageDigest digest = digest();
    add(digest, slug.getBytes(StandardCharsets.UTF_8));
    add(digest, theme.getBytes(StandardCharsets.UTF_8));
    add(digest, card);
    add(digest, logic);
    return new RuleKey(slug, HexFormat.of().formatHex(digest.digest()));
  }

  /** Each part goes after its length, so that none can pass for the end of another. */
  private static void add(MessageDigest digest, byte[] part) {
    digest.update(ByteBuffer.allocate(Integer.BYTES).putInt(0, part.length));
    digest.update(part);
  }

  static MessageDigest digest() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
