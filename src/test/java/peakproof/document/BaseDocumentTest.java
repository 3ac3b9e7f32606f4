package peakproof.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** The sound plan that all rule cases are small changes of. */
class BaseDocumentTest {
  @Test
  void readsWithoutFault() {
    Reading reading = Documents.read(Path.of("rules/base/plan.yaml"), null);
    assertThat(reading.faults()).isEmpty();
    Dossier dossier = Objects.requireNonNull(reading.dossier());
    assertThat(dossier.planFile()).isEqualTo(Path.of("rules/base/plan.yaml"));
    assertThat(dossier.logFile()).isEqualTo(Path.of("rules/base/log.yaml"));
    assertThat(dossier.plan().event().name()).isEqualTo("Saltmarsh Long Course");
    assertThat(dossier.plan().weeks()).hasSizeGreaterThan(3);
    assertThat(Objects.requireNonNull(dossier.log()).days()).hasSizeGreaterThan(50);
  }
}
