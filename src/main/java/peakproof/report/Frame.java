package peakproof.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What stands around a page in HTML: title, style, script and the small print. A page loads nothing
 * and runs nothing but this script, whatever the documents say, because its policy names the
 * script's hash.
 *
 * @param footer said above the words that stand under every page
 * @param script of this page, or null; nothing that needs it may hide without it
 */
record Frame(String title, List<String> footer, @Nullable String script) {
  private static final String STYLE = resource("page.css");

  /** A page without script. */
  static Frame of(String title, String... footer) {
    return new Frame(title, List.of(footer), null);
  }

  /** The same page with the script of that file beside this class. */
  Frame with(String file) {
    return new Frame(title, footer, resource(file));
  }

  /** The style all pages share. */
  String style() {
    return STYLE;
  }

  /** What a browser may load and run. */
  String policy() {
    return "default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none';"
        + " form-action 'none'"
        + (script == null ? "" : "; script-src 'sha256-" + hash("\n" + script) + "'");
  }

  private static String hash(String script) {
    try {
      byte[] bytes = script.getBytes(StandardCharsets.UTF_8);
      return Base64.getEncoder().encodeToString(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  private static String resource(String file) {
    try (InputStream in = Frame.class.getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalStateException("the program lacks its file " + file);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
