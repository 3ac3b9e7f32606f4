package peakproof.rule;

import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Supplier;

/** Something that a thread of its own makes, while others go on until they need it. */
public final class Later<T> implements Supplier<T> {
  private final FutureTask<T> task;

  private Later(Supplier<T> making) {
    task = new FutureTask<>(making::get);
  }

  /** Begins to make it. */
  public static <T> Later<T> of(String what, Supplier<T> making) {
    Later<T> later = new Later<>(making);
    Thread maker = new Thread(later.task, what);
    maker.setDaemon(true);
    maker.start();
    return later;
  }

  /** It, once it is made. */
  @Override
  public T get() {
    try {
      return task.get();
    } catch (ExecutionException mistake) {
      throw new IllegalStateException("it could not be made", mistake.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }
}
