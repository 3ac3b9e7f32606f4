package peakproof.rule;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Something dear that is made when it is first asked for, and once. */
final class Once<T> implements Supplier<T> {
  private final Supplier<T> making;
  private @Nullable T made;

  private Once(Supplier<T> making) {
    this.making = making;
  }

  static <T> Supplier<T> of(Supplier<T> making) {
    return new Once<>(making);
  }

  @Override
  public synchronized T get() {
    T ready = made;
    if (ready == null) {
      ready = making.get();
      made = ready;
    }
    return ready;
  }
}
