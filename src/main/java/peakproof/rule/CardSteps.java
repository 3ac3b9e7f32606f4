package peakproof.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import peakproof.document.Tree;
import peakproof.fact.Settings;

/** Reads how a card's severity rises. */
final class CardSteps {
  private CardSteps() {}

  static List<Card.Step> read(CardEntries entries) {
    List<Card.Step> steps = new ArrayList<>();
    for (Tree item : entries.items(entries.tree("steps"))) {
      CardEntries step = entries.below(item);
      if (step == null) {
        continue;
      }
      step.keys(Set.of("from", "when", "severity"), Set.of("severity"));
      String from = step.text("from");
      String when = step.text("when");
      Settings.Value value = from == null ? null : CardSettings.value(step, "from", from);
      if (value != null) {
        rises(steps, value, step);
      }
      if ((from == null) == (when == null)) {
        step.fault(
            item.place(), "a step has one of from and when", "a value or a field", "from: 30%");
      }
      steps.add(
          new Card.Step(
              value,
              when,
              CardReader.or(step.word("severity", CardReader.SEVERITIES), Severity.NOTE)));
    }
    return steps;
  }

  /** The last step that applies wins, so a smaller value after a larger one would undo it. */
  private static void rises(List<Card.Step> before, Settings.Value value, CardEntries step) {
    for (Card.Step earlier : before) {
      Settings.Value least = earlier.from();
      if (least != null && least.kind() != value.kind()) {
        step.fault(
            step.place("from"),
            "'" + step.text("from") + "' is of another kind than the step before",
            SettingReader.words(least.kind()),
            "write all steps in one unit");
        return;
      }
      if (least != null && least.number() >= value.number()) {
        step.fault(
            step.place("from"),
            "'" + step.text("from") + "' is not past the step before",
            "steps from the smallest value to the largest",
            "put the steps in order");
        return;
      }
    }
  }
}
