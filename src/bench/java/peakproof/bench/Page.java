package peakproof.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Puts what was measured into a page, between two marks; the words around stay as they are. */
final class Page {
  private static final String BEGIN =
      "<!-- measured: what stands here is written by a full run -->";
  private static final String END = "<!-- measured: end -->";

  private Page() {}

  static void put(Path page, List<String> lines) throws IOException {
    Files.writeString(page, with(Files.readString(page), lines));
  }

  static String with(String page, List<String> lines) {
    int begin = page.indexOf(BEGIN + "\n");
    int end = page.indexOf("\n" + END);
    if (begin < 0 || end < begin) {
      throw new IllegalStateException("the page lacks the lines '" + BEGIN + "' and '" + END + "'");
    }
    return page.substring(0, begin + BEGIN.length())
        + "\n\n"
        + String.join("\n", lines)
        + "\n"
        + page.substring(end);
  }
}
