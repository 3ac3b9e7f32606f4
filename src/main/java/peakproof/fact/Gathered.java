package peakproof.fact;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Facts as they come together; what is not known is no fact. */
final class Gathered {
  private final List<Fact> facts = new ArrayList<>();

  void add(@Nullable Fact fact) {
    if (fact != null) {
      facts.add(fact);
    }
  }

  void addAll(Collection<? extends Fact> more) {
    facts.addAll(more);
  }

  List<Fact> all() {
    return facts;
  }
}
