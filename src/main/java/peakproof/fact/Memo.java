package peakproof.fact;

import java.util.IdentityHashMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * What is worked out once for each thing, because many rules ask for it; null is an answer too. For
 * the facts of one plan, which one thread works out.
 */
final class Memo<K, V> {
  private final IdentityHashMap<K, @Nullable V> known = new IdentityHashMap<>();
  private final Function<K, @Nullable V> working;

  Memo(Function<K, @Nullable V> working) {
    this.working = working;
  }

  @Nullable V of(K thing) {
    V answer = known.get(thing);
    if (answer == null && !known.containsKey(thing)) {
      answer = working.apply(thing);
      known.put(thing, answer);
    }
    return answer;
  }
}
