package peakproof.browser;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import peakproof.browser.Browser.View;

/**
 * Makes the pictures of the docs: a page in HTML and the picture to make of it, pair after pair.
 * {@code docs/pictures/make} says how it is called.
 */
final class Pictures {
  private static final View WINDOW = new View(1280, 1180, 1, false, "screen");

  private Pictures() {}

  public static void main(String[] files) throws IOException {
    try (Browser browser = Browser.start()) {
      for (int i = 0; i + 1 < files.length; i += 2) {
        browser.open(Path.of(files[i]).toAbsolutePath(), WINDOW);
        Files.write(Path.of(files[i + 1]), browser.picture());
      }
    }
  }
}
