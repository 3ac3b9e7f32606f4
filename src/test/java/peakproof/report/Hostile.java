package peakproof.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Random;
import peakproof.audit.Audit;
import peakproof.audit.Finding;
import peakproof.document.Place;
import peakproof.rule.Ruleset;
import peakproof.rule.Severity;

/** Audits full of names that try to break out of a format, the same for the same seed. */
final class Hostile {
  private static final List<String> PIECES =
      List.of(
          "<b>",
          "</details>",
          "<!--",
          "-->",
          "]]>",
          "&amp;",
          "\"",
          "'",
          "`",
          "```",
          "|",
          "\n",
          "\r\n",
          "# ",
          "- ",
          "1. ",
          "> ",
          "[x](http://evil.example)",
          "![](x)",
          "@everyone",
          "#12",
          "\\",
          "{0}",
          "{{",
          "}",
          "[a](0)",
          "\u0000",
          "\u0007",
          "\u001b[2J",
          "\ufffe",
          "\uffff",
          "\ud800",
          "\udc00",
          "🏊",
          "\u202e",
          "\u2028",
          "www.evil.example",
          "~~",
          "**",
          "__",
          "Ærø",
          "%2e",
          "$x$");

  private Hostile() {}

  static String name(Random random) {
    StringBuilder name = new StringBuilder();
    int pieces = random.nextInt(40) == 0 ? 1500 : 1 + random.nextInt(8);
    for (int i = 0; i < pieces; i++) {
      name.append(PIECES.get(random.nextInt(PIECES.size())));
    }
    return name.toString();
  }

  static Audit audit(Random random) {
    Severity severity = Severity.values()[random.nextInt(Severity.values().length)];
    String path = "plans/" + name(random).replace("\u0000", "") + ".yaml";
    Finding finding =
        new Finding(
            "rule-" + random.nextInt(5),
            severity,
            null,
            "load",
            name(random),
            name(random),
            name(random),
            random.nextBoolean() ? name(random) : null,
            "arithmetic",
            List.of(),
            Map.of(),
            List.of(
                new Finding.Location(new Place(path, 3, 1), null, null),
                new Finding.Location(new Place(path, 7, 9), LocalDate.of(2027, 6, 1), null)),
            "f" + random.nextInt(9),
            LocalDate.of(2027, 7, 4));
    return Sample.audit(name(random), null, List.of(finding));
  }

  /** A layout as for a pipeline, without any card. */
  static Layout layout(boolean withHealth) {
    Ruleset none = Sample.noRules();
    return new Layout(
        new Choice(false, 3),
        100,
        Ink.PLAIN,
        Severity.HOLD,
        withHealth,
        "peakproof 0.1.0",
        () -> none);
  }
}
