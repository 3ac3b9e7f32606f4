package peakproof.intake;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;
import peakproof.document.Fault;
import peakproof.document.Place;

/**
 * A file's text.
 *
 * @param text without a byte-order mark; up to the fault when there is one
 * @param fault null for text that is UTF-8 to its end
 */
record PlainText(String text, @Nullable Fault fault) {
  static PlainText of(String file, byte[] bytes) {
    CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    CoderResult result = decoder.decode(ByteBuffer.wrap(bytes), out, true);
    String text = out.flip().toString();
    return new PlainText(
        text.startsWith("\uFEFF") ? text.substring(1) : text,
        result.isError() ? fault(file, text) : null);
  }

  private static Fault fault(String file, String before) {
    int line = 1 + (int) before.chars().filter(c -> c == '\n').count();
    String last = before.substring(before.lastIndexOf('\n') + 1);
    return new Fault(
        new Place(file, line, last.codePointCount(0, last.length()) + 1),
        "this is not UTF-8 text",
        "expected a text file in UTF-8",
        "choose UTF-8 where the file is saved or exported");
  }
}
