package peakproof.document;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** Finds where bytes stop being UTF-8. */
final class Utf8 {
  private Utf8() {}

  /** The place of the first byte that does not belong. */
  static Place firstWrong(String file, byte[] bytes) {
    CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    decoder.decode(in, out, true);
    Source sound = Source.decode(file, Arrays.copyOf(bytes, in.position()));
    return sound == null ? new Place(file, 1, 1) : sound.place(sound.length());
  }
}
