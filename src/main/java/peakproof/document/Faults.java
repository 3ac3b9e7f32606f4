package peakproof.document;

import java.util.ArrayList;
import java.util.List;

/** The faults found so far while a file is read. */
final class Faults {
  private final List<Fault> found = new ArrayList<>();

  void add(Place place, String what, String expected, String instead) {
    found.add(new Fault(place, what, expected, instead));
  }

  void add(Fault fault) {
    found.add(fault);
  }

  /** Adds a fault unless something at the same place was reported already. */
  void addOnce(Fault added) {
    if (found.stream().noneMatch(fault -> fault.place().equals(added.place()))) {
      found.add(added);
    }
  }

  void addAll(List<Fault> faults) {
    found.addAll(faults);
  }

  boolean none() {
    return found.isEmpty();
  }

  /** In the order of the files. */
  List<Fault> sorted() {
    return found.stream().sorted().toList();
  }
}
