package peakproof.report;

import java.nio.charset.StandardCharsets;
import java.util.Locale;

/**
 * File names as RFC 3986 has them: UTF-8, every byte that is not unreserved written {@code %XX}.
 */
final class FileUri {
  private static final String UNRESERVED = "-._~/";

  private FileUri() {}

  /** True for a file that is named from the root of its disk. */
  static boolean isAbsolute(String file) {
    return file.startsWith("/") || file.matches("[A-Za-z]:/.*");
  }

  /** A relative reference for a relative file, a {@code file:} URI for an absolute one. */
  static String of(String file) {
    StringBuilder uri = new StringBuilder();
    if (isAbsolute(file)) {
      uri.append(file.startsWith("/") ? "file://" : "file:///");
    }
    for (byte each : file.getBytes(StandardCharsets.UTF_8)) {
      int code = each & 0xff;
      if (code < 0x80 && (Character.isLetterOrDigit(code) || UNRESERVED.indexOf(code) >= 0)) {
        uri.append((char) code);
      } else {
        uri.append(String.format(Locale.ROOT, "%%%02X", code));
      }
    }
    return uri.toString();
  }
}
