package peakproof.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever a document says, a page has the same tags as one that says nothing of the kind. */
class HostilePageTest {
  private static final long SEED = 20270704;
  private static final int ROUNDS = 25;
  private static final List<String> PIECES =
      List.of(
          "<script>alert(1)</script>",
          "</style><zzz>",
          "</title><zzz>",
          "\" onmouseover=\"alert(1)",
          "' onload='alert(1)",
          "<img src=x onerror=alert(1)>",
          "--><zzz>",
          "]]>",
          "&lt;zzz&gt;",
          "&#60;zzz&#62;",
          "javascript:alert(1)",
          "${7*7}",
          "@template.layout()",
          "`",
          "\\",
          "\u202e",
          "\u0007",
          "\ud83c\udfca\u200d\u2640\ufe0f",
          "\u0645\u0631\u062d\u0628\u0627",
          "z\u0351\u036b\u0343",
          "/*",
          "//",
          "<!--",
          "<svg/onload=alert(1)>");

  @Test
  void namesAndReasonsCannotBreakOut(@TempDir Path folder) throws IOException {
    List<String> plain = tags(page(folder.resolve("plain"), "Plain"));
    Random random = new Random(SEED);
    for (int round = 0; round < ROUNDS; round++) {
      String payload = payload(random, round == 0 ? 5_000 : 1 + random.nextInt(200));
      String page = page(folder.resolve("round" + round), payload);
      assertThat(tags(page)).as("round %d: %s", round, payload).isEqualTo(plain);
      assertThat(page)
          .as("round %d: %s", round, payload)
          .doesNotContain("<zzz", "<img", "<script>alert", "<svg/onload", "\u202e", "\u0007");
    }
  }

  private static String payload(Random random, int length) {
    StringBuilder payload = new StringBuilder("n");
    while (payload.length() < length) {
      payload.append(PIECES.get(random.nextInt(PIECES.size()))).append(random.nextInt(10));
    }
    return payload.toString();
  }

  /** The same plan with a text wherever its documents may hold one of their own. */
  static String page(Path folder, String text) throws IOException {
    Path plan = folder.resolve("plan.yaml");
    Files.createDirectories(folder);
    String quoted = quoted(text);
    Files.writeString(
        folder.resolve("house.yaml"),
        Files.readString(Path.of("plans/house.yaml"))
            .replaceFirst("name: .*", "name: " + Matcher.quoteReplacement(quoted))
            .replaceFirst("because: .*", "because: " + Matcher.quoteReplacement(quoted)));
    Files.writeString(
        folder.resolve("event.yaml"),
        Files.readString(Path.of("plans/events/merrow.yaml"))
            .replaceFirst("name: .*", "name: " + Matcher.quoteReplacement(quoted)));
    Files.writeString(
        plan,
        Files.readString(Path.of("plans/mateus/plan.yaml"))
                .replaceFirst("name: .*", "name: " + Matcher.quoteReplacement(quoted))
                .replaceFirst("event: .*", "event: event.yaml")
                .replaceFirst(
                    "focus: peak",
                    Matcher.quoteReplacement(
                        "focus: peak\n      without: {strength: " + quoted + "}"))
            + "  accepted: [{rule: run-pain-rule, by: "
            + quoted
            + ", until: 2027-06-20, because: "
            + quoted
            + "}]\n");
    Files.writeString(
        folder.resolve("log.yaml"),
        Files.readString(Path.of("plans/mateus/log.yaml"))
            .replaceAll("site: [^,}]*", Matcher.quoteReplacement("site: " + quoted)));
    return Pages.of(plan);
  }

  private static String quoted(String text) {
    StringBuilder quoted = new StringBuilder("\"");
    for (char c : text.toCharArray()) {
      quoted.append(
          c == '"' || c == '\\' ? "\\" + c : c < ' ' ? String.format("\\u%04x", (int) c) : "" + c);
    }
    return quoted.append('"').toString();
  }

  /** Tags with the names of their attributes, read as a browser would. */
  private static List<String> tags(String page) {
    List<String> tags = new ArrayList<>();
    int at = 0;
    while ((at = page.indexOf('<', at)) >= 0) {
      StringBuilder tag = new StringBuilder();
      char quote = 0;
      for (at++; at < page.length() && (quote != 0 || page.charAt(at) != '>'); at++) {
        char c = page.charAt(at);
        if (quote == 0) {
          tag.append(c);
          quote = c == '"' || c == '\'' ? c : 0;
        } else if (c == quote) {
          quote = 0;
        }
      }
      tags.add(tag.toString());
    }
    return tags;
  }
}
