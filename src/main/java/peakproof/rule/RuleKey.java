package peakproof.rule;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;

/**
 * What a rule's classes follow from, beside the program: its name, its card and its logic, byte for
 * byte.
 */
final class RuleKey {
  private final String theme;
  private final String slug;
  private final byte[] card;
  private final byte[] logic;

  RuleKey(String theme, String slug, byte[] card, byte[] logic) {
    this.theme = theme;
    this.slug = slug;
    this.card = card;
    this.logic = logic;
  }

  String slug() {
    return slug;
  }

  String theme() {
    return theme;
  }

  byte[] card() {
    return card;
  }

  byte[] logic() {
    return logic;
  }

  /** True for the same rule to the byte. */
  boolean matches(RuleKey other) {
    return theme.equals(other.theme)
        && slug.equals(other.slug)
        && Arrays.equals(card, other.card)
        && Arrays.equals(logic, other.logic);
  }

  /** A short name for all of it that no other rule has: SHA-256, 64 hexadecimal digits. */
  String hash() {
    String parts = theme + "/" + slug + " " + hash(card) + " " + hash(logic);
    return hash(parts.getBytes(StandardCharsets.UTF_8));
  }

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
