package peakproof.rule;

import java.util.ArrayList;
import java.util.List;
import peakproof.document.Fault;

/** Collects what is wrong with one rule file. */
final class RuleFaults {
  private final RuleText text;
  private final List<Fault> faults = new ArrayList<>();

  RuleFaults(RuleText text) {
    this.text = text;
  }

  void add(int offset, String what, String expected, String instead) {
    faults.add(text.fault(offset, what, expected, instead));
  }

  List<Fault> all() {
    return List.copyOf(faults);
  }
}
