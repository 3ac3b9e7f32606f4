package peakproof.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Auditor;
import peakproof.audit.Workup;

/** Briefs of plans that lie in files, whatever is found in those. */
final class Briefs {
  /** A plan in which whatever is the coach's alone holds the word QUIET. */
  static final String CANARY = "src/test/resources/brief/canary/plan.yaml";

  private static final Auditor AUDITOR = Auditor.load(List.of(Path.of("rules")));

  private Briefs() {}

  static Stream<String> demos() {
    return Stream.of("tove", "gwen", "haruki", "ines", "mateus", "meera", "noor", "radek")
        .map(name -> "plans/" + name + "/plan.yaml");
  }

  static Workup workup(String plan) {
    return workup(plan, null);
  }

  static Workup workup(String plan, @Nullable LocalDate asOf) {
    Workup.Outcome outcome = AUDITOR.workUp(Path.of(plan), new Auditor.Options(asOf, null));
    assertThat(outcome).isInstanceOf(Workup.Outcome.Done.class);
    return ((Workup.Outcome.Done) outcome).workup();
  }

  static Brief of(String plan) {
    return Briefing.of(workup(plan), null);
  }

  /** The brief in all it can be written in. */
  static Stream<String> texts(Brief brief) {
    return Stream.of(
        BriefPage.of(brief, BriefPage.Paper.A4),
        BriefMarkdown.of(brief),
        BriefCalendar.of(brief).replace("\r\n ", ""));
  }
}
