package peakproof.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import peakproof.audit.Finding;
import peakproof.rule.Severity;

class EvidenceTest {
  @Test
  void namesAuthorAndYearOfASource() {
    assertThat(evidence("cohort", "Frandsen JSB, 2025, Br J Sports Med, doi 10.1136/x"))
        .isEqualTo("cohort: Frandsen 2025");
    assertThat(evidence("trial", "Bosquet et al., 2007, Med Sci Sports Exerc 39:1358"))
        .isEqualTo("trial: Bosquet et al. 2007");
    assertThat(evidence("standard", "World Triathlon competition rules (2025)"))
        .isEqualTo("standard: World Triathlon competition rules 2025");
  }

  @Test
  void doesNotRepeatAYearThatStandsWithTheAuthor() {
    assertThat(evidence("cohort", "Nielsen 2014, J Orthop Sports Phys Ther"))
        .isEqualTo("cohort: Nielsen 2014");
  }

  @Test
  void namesTwoSourcesAndCountsTheRest() {
    assertThat(evidence("consensus", "Hew, 2015", "Costa, 2017", "Miall, 2018"))
        .isEqualTo("consensus: Hew 2015, Costa 2017 and 1 more");
  }

  @Test
  void callsUnmeasuredPracticeAConvention() {
    assertThat(evidence("expert-practice")).isEqualTo("coaching convention");
    assertThat(evidence("common-practice")).isEqualTo("coaching convention");
    assertThat(evidence("arithmetic")).isEqualTo("arithmetic");
  }

  private static String evidence(String grade, String... sources) {
    return Evidence.of(
        new Finding(
            "brick-none",
            Severity.FIX,
            null,
            "brick",
            "title",
            "why",
            "do",
            null,
            grade,
            List.of(sources),
            Map.of(),
            List.of(),
            "f",
            LocalDate.EPOCH));
  }
}
