package peakproof.report;

import static org.assertj.core.api.Assertions.assertThat;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.Map;
import org.junit.jupiter.api.Test;

class FrameTest {
  private static final Frame HOSTILE =
      Frame.of("</title><script>alert(1)</script>", "\"><img src=x onerror=alert(1)>");

  @Test
  void escapesWhatItIsGiven() {
    assertThat(framed(HOSTILE))
        .contains("<title>&lt;/title&gt;&lt;script&gt;")
        .contains("<p>\"&gt;&lt;img src=x onerror=alert(1)&gt;</p>")
        .doesNotContain("<script", "<img");
  }

  @Test
  void loadsNothingAndRunsNothing() {
    assertThat(HOSTILE.policy()).startsWith("default-src 'none'").doesNotContain("script");
    assertThat(HOSTILE.style()).doesNotContain("url(http", "url(//", "@import", "</style");
  }

  @Test
  void saysMedicalCautionUnderEveryPage() {
    assertThat(framed(HOSTILE)).contains("Not medical advice");
  }

  private static String framed(Frame frame) {
    StringOutput page = new StringOutput();
    TemplateEngine.createPrecompiled(null, ContentType.Html, null, "peakproof.report")
        .render("layout.jte", Map.of("frame", frame, "content", (gg.jte.Content) out -> {}), page);
    return page.toString();
  }
}
