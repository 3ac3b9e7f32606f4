package peakproof.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import peakproof.Golden;

class AskPageTest {
  @Test
  void readsLikeAMessage() {
    Golden.assertMatches(
        "report/ask-runa.txt", AskPage.text(Sample.runa(), Sample.noRules(), 5, 80));
  }

  @Test
  void readsLikeAMessageInMarkdown() {
    Golden.assertMatches(
        "report/ask-runa.md", AskPage.markdown(Sample.runa(), Sample.noRules(), 5));
  }

  @Test
  void asksForAsManyAsWantedAndSaysHowManyAreLeft() {
    String few = AskPage.text(Sample.runa(), Sample.noRules(), 1, 80);
    assertThat(few).contains("with one\nquestion").doesNotContain("\n2. ");
  }

  @Test
  void writesNoMessageWhenNothingIsMissing() {
    String text = AskPage.text(Sample.audit("Bo", null, List.of()), Sample.noRules(), 5, 80);
    assertThat(text).doesNotContain("Hello").contains("Nothing to ask the athlete.");
  }
}
