package peakproof.begin;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import peakproof.audit.Audit;
import peakproof.audit.Auditor;
import peakproof.rule.ShippedRules;

/** Skeletons of plans, judged by the shipped rules. */
class NewPlanTest {
  private static final Auditor AUDITOR =
      Auditor.load(List.of(Path.of("rules")), ShippedRules::ofThisProgram);

  @TempDir private Path folder;

  @ParameterizedTest(name = "{0} {1}")
  @CsvSource({
    "full, first-timer, 8h30, 3h30, 1h30, 1:25:00/6:50:00/4:50:00, 1978",
    "full, experienced, 11h, 4h, 1h40, 1:10:00/6:00:00/3:50:00, 1990",
    "full, masters, 9h30, 4h, 1h35, 1:18:00/6:20:00/4:20:00, 1972",
    "half, first-timer, 6h30, 2h15, 1h10, 0:45:00/3:20:00/2:20:00, 1995",
    "half, experienced, 9h, 2h45, 1h25, 0:32:00/2:40:00/1:42:00, 1988",
    "half, masters, 8h, 2h30, 1h20, 0:38:00/2:58:00/2:00:00, 1970",
    "standard, first-timer, 4h30, 1h30, 45min, 0:35:00/1:25:00/1:02:00, 2001",
    "standard, experienced, 7h, 2h, 1h, 0:25:00/1:07:00/0:43:00, 1992",
    "standard, masters, 6h, 1h45, 55min, 0:29:00/1:14:00/0:51:00, 1968",
  })
  void passesItsOwnAudit(
      String distance,
      String profile,
      String hours,
      String ride,
      String run,
      String goal,
      String born)
      throws IOException {
    Audit audit =
        begun(
            event(distance),
            Map.of(
                "profile", profile,
                "weekly-hours", hours,
                "longest-ride", ride,
                "longest-run", run,
                "goal", goal,
                "born", born));
    assertThat(audit.findings())
        .extracting(one -> one.severity() + " " + one.rule() + ": " + one.why())
        .filteredOn(one -> !one.startsWith("NOTE"))
        .isEmpty();
    assertThat(audit.clear()).hasSizeGreaterThan(60);
  }

  private Path event(String distance) throws IOException {
    Answers answers =
        new Answers(Map.of("name", "Saltmarsh", "date", "2027-07-04", "distance", distance));
    NewEvent event = new NewEvent();
    Path file = folder.resolve("event.yaml");
    Files.writeString(file, text(event.draft(answers.completed(event.items()))));
    return file;
  }

  private static String text(Beginning.Draft draft) {
    assertThat(draft).isInstanceOf(Beginning.Draft.Written.class);
    return ((Beginning.Draft.Written) draft).text();
  }

  private Audit begun(Path event, Map<String, String> given) throws IOException {
    Map<String, String> all = new LinkedHashMap<>(given);
    all.put("name", "Tove Lindqvist");
    all.put("event", event.toString());
    Path plan = folder.resolve("plan.yaml");
    NewPlan begun = new NewPlan(plan, null, () -> AUDITOR);
    String text = text(begun.draft(new Answers(all).completed(begun.items())));
    Files.writeString(plan, text, StandardCharsets.UTF_8);
    Auditor.Outcome outcome = AUDITOR.audit(plan, new Auditor.Options(null, null));
    return ((Auditor.Outcome.Judged) outcome).audit();
  }
}
