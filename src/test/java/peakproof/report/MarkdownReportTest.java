package peakproof.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringWriter;
import java.util.Random;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import peakproof.Golden;
import peakproof.audit.Audit;

class MarkdownReportTest {
  private static final Pattern CODE = Pattern.compile("(?<!`)(`+)(?!`).*?(?<!`)\\1(?!`)");
  private static final Pattern OURS =
      Pattern.compile("^(## |- (where|why|do|care): |\\*\\*[A-Z]+\\*\\* )");

  @Test
  void readsWell() {
    Golden.assertMatches("report/runa.md", markdown(false, Sample.runa()));
  }

  @Test
  void tellsWhatAHealthEntrySaysOnlyWhenAsked() {
    assertThat(markdown(false, Sample.runa())).doesNotContain("achilles", "run-pain-rule");
    assertThat(markdown(true, Sample.runa())).contains("left achilles", "run-pain-rule");
  }

  @Test
  void hasAsManyLinesAndMarksWhateverADocumentSays() {
    Random random = new Random(11);
    for (int i = 0; i < 500; i++) {
      Audit audit = Hostile.audit(random);
      for (String line : markdown(false, audit).split("\n", -1)) {
        String rest = OURS.matcher(line).replaceFirst("");
        boolean places = line.startsWith("- where: ");
        String plain = places ? rest : rest.replaceAll("\\\\[^A-Za-z0-9 ]", "");
        String words = CODE.matcher(plain).replaceAll("");
        if (line.startsWith("<details>")
            || line.startsWith("</details>")
            || line.contains(" to go · ")) {
          continue;
        }
        assertThat(words)
            .as(line)
            .doesNotContainPattern("[<>`|*_\\[\\]&~]|@[a-z]|#\\d|://[^\u2060]|www\\.");
      }
    }
  }

  @Test
  void cutsANameThatNobodyReadsToItsEnd() {
    assertThat(Markdown.name("x".repeat(5000))).hasSize(121);
    assertThat(Markdown.code("a``b")).isEqualTo("```a``b```");
    assertThat(Markdown.code("`")).isEqualTo("`` ` ``");
  }

  private static String markdown(boolean withHealth, Audit audit) {
    StringWriter out = new StringWriter();
    Written.by(new MarkdownReport(out, Hostile.layout(withHealth)), 1, new Judged(audit, true));
    return out.toString();
  }
}
