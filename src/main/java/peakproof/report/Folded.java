package peakproof.report;

import java.nio.charset.StandardCharsets;

/**
 * Content lines folded as RFC 5545, section 3.1, asks: at most 75 octets without the line break,
 * the rest after a space on the next line. Counted in octets of UTF-8, and no character is parted,
 * which writers that count characters do not heed.
 */
final class Folded {
  private static final int MOST = 75;

  private Folded() {}

  static String of(String lines) {
    StringBuilder folded = new StringBuilder();
    for (String line : lines.split("\r\n", -1)) {
      int octets = 0;
      for (int at = 0; at < line.length(); ) {
        int codePoint = line.codePointAt(at);
        String character = Character.toString(codePoint);
        int size = character.getBytes(StandardCharsets.UTF_8).length;
        if (octets + size > MOST) {
          folded.append("\r\n ");
          octets = 1;
        }
        folded.append(character);
        octets += size;
        at += Character.charCount(codePoint);
      }
      folded.append("\r\n");
    }
    folded.setLength(folded.length() - 2);
    return folded.toString();
  }
}
