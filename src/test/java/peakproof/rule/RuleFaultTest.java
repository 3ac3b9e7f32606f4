package peakproof.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Every mistake a rule or its card can hold, and what its author is told. */
class RuleFaultTest {
  @TempDir private Path folder;

  @Test
  void findsNothingInTheSoundRule() {
    RuleFiles files = RuleFiles.in(folder).with(RuleFiles.sound());
    assertThat(files.faults()).isEmpty();
    assertThat(files.load().cards()).containsOnlyKeys(RuleFiles.SOUND);
  }

  @TestFactory
  Stream<DynamicTest> saysWhatIsWrongInACard() {
    return FaultTable.tests("card-faults.txt", this::tells);
  }

  @TestFactory
  Stream<DynamicTest> saysWhatIsWrongInALogic() {
    return FaultTable.tests("rule-faults.txt", this::tells);
  }

  @TestFactory
  Stream<DynamicTest> saysWhatIsWrongInCases() {
    return FaultTable.tests("case-faults.txt", this::tells);
  }

  /** Whatever is wrong with its cases, a sound rule judges; with a fault of its own it does not. */
  private void tells(FaultTable.Row row) {
    RuleFiles files = RuleFiles.in(folder.resolve(row.name().replaceAll("\\W+", "-")));
    files.with(row.texts());
    Ruleset loaded = files.load();
    assertThat(files.faults(loaded)).containsExactlyInAnyOrderElementsOf(row.faults());
    boolean sound = row.faults().stream().allMatch(fault -> fault.contains(".cases.yaml"));
    assertThat(loaded.cards().containsKey(RuleFiles.SOUND)).isEqualTo(sound);
  }
}
