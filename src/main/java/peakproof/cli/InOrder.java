package peakproof.cli;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.FutureTask;
import java.util.concurrent.Semaphore;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Does the same task with many things on several threads and hands over what comes of each, one by
 * one and in the order of the things. Only a few are under way at a time, so that memory does not
 * grow with their number.
 */
final class InOrder<A, B> implements AutoCloseable {
  /** Enough for the threads to go on while the others wait for a slow one. */
  private static final int UNDER_WAY_PER_THREAD = 4;

  /** As deep as the program's own thread. */
  private static final long STACK = 8L * 1024 * 1024;

  private final Function<A, B> task;
  private final ExecutorService workers;
  private final Semaphore room;
  private final Object gate = new Object();
  private final Deque<Job<A, B>> underWay = new ArrayDeque<>();
  private final Semaphore news = new Semaphore(0);
  private @Nullable Thread feeder;
  private volatile boolean over;
  private volatile @Nullable Throwable broken;

  InOrder(int threads, Function<A, B> task) {
    this.task = task;
    this.workers = Executors.newFixedThreadPool(threads, work -> thread(work, "audit"));
    this.room = new Semaphore(UNDER_WAY_PER_THREAD * threads);
  }

  private static final class Job<A, B> extends FutureTask<B> {
    private final A thing;

    Job(A thing, Callable<B> work) {
      super(work);
      this.thing = thing;
    }
  }

  /** Takes what came of each thing; false to go no further. */
  @FunctionalInterface
  interface Taking<A, B> {
    boolean take(A thing, Result<B> result) throws IOException;
  }

  /** What came of the task, or what it failed with. */
  record Result<B>(@Nullable B value, @Nullable Throwable failure) {}

  /** Does the task with each thing; to be called once. */
  void each(Iterator<? extends A> things, Taking<A, B> taking) throws IOException {
    feeder = thread(() -> feed(things), "feeder");
    feeder.start();
    while (true) {
      news.acquireUninterruptibly();
      Job<A, B> job;
      synchronized (gate) {
        job = underWay.peek();
      }
      if (job == null) {
        if (broken != null) {
          throw new IllegalStateException("what is to be audited cannot be read", broken);
        }
        return;
      }
      Result<B> result = resultOf(job);
      if (!taking.take(job.thing, result)) {
        return;
      }
      synchronized (gate) {
        underWay.remove();
      }
      room.release();
    }
  }

  /** A thread of its own reads the things: a slow source must not keep back what is done. */
  private void feed(Iterator<? extends A> things) {
    try {
      while (things.hasNext()) {
        A thing = things.next();
        room.acquire();
        synchronized (gate) {
          if (over) {
            return;
          }
          Job<A, B> job = new Job<>(thing, () -> task.apply(thing));
          underWay.add(job);
          workers.execute(job);
        }
        news.release();
      }
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    } catch (Throwable failure) {
      broken = failure;
    } finally {
      news.release();
    }
  }

  /** Does something while nothing else is under way, given what came of all that was. */
  <T> T alone(Function<List<Result<B>>, T> work) {
    synchronized (gate) {
      return work.apply(underWay.stream().map(InOrder::resultOf).toList());
    }
  }

  private static <A, B> Result<B> resultOf(Job<A, B> job) {
    try {
      return new Result<>(job.get(), null);
    } catch (ExecutionException failed) {
      return new Result<>(null, failed.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  private static Thread thread(Runnable work, String name) {
    Thread thread = new Thread(null, work, name, STACK);
    thread.setDaemon(true);
    return thread;
  }

  @Override
  public void close() {
    synchronized (gate) {
      over = true;
    }
    workers.shutdownNow();
    if (feeder != null) {
      feeder.interrupt();
    }
  }
}
