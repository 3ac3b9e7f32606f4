package peakproof.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class WatchdogTest {
  private final CountDownLatch end = new CountDownLatch(1);

  @AfterEach
  void release() {
    end.countDown();
    System.clearProperty(Watchdog.PATIENCE);
  }

  @Test
  void givesWhatTheRulesGive() throws RunawayRule {
    Watchdog watchdog = new Watchdog();
    String found = watchdog.run(doing -> "found");
    assertThat(found).isEqualTo("found");
    assertThat(watchdog.bitten()).isNull();
  }

  @Test
  void passesOnAMistakeOfOurs() {
    IllegalStateException oops = new IllegalStateException("oops");
    Watchdog watchdog = new Watchdog();
    assertThatThrownBy(() -> watchdog.run(doing -> fail(oops))).isSameAs(oops);
    StackOverflowError deep = new StackOverflowError();
    assertThatThrownBy(() -> watchdog.run(doing -> fail(deep))).isSameAs(deep);
    assertThat(watchdog.bitten()).isNull();
  }

  @Test
  void saysWhichRuleFailed() {
    NullPointerException unknown = new NullPointerException();
    unknown.setStackTrace(
        new StackTraceElement[] {
          frame("java.lang.Double"),
          frame("peakproof.rules.rule_boat_swims.P12.LambdaPredicate34"),
          frame("peakproof.audit.Judge")
        });
    RuntimeException wrapped = new IllegalStateException(unknown);
    Watchdog watchdog = new Watchdog();
    assertThatThrownBy(() -> watchdog.run(doing -> fail(doing, wrapped)))
        .as("not the one whose turn it is")
        .isInstanceOf(RunawayRule.class)
        .hasMessage("boat-swims failed on this plan");
    assertThat(watchdog.bitten()).isNull();
  }

  @Test
  void givesUpWhenItsPatienceEnds() {
    System.setProperty(Watchdog.PATIENCE, "20");
    Watchdog watchdog = new Watchdog();
    assertThatThrownBy(() -> watchdog.run(doing -> untilTheEnd(doing)))
        .isInstanceOf(RunawayRule.class)
        .hasMessage("boat-swims ran for more than 20 ms");
    AtomicInteger runs = new AtomicInteger();
    assertThatThrownBy(() -> watchdog.run(doing -> runs.incrementAndGet()))
        .isSameAs(watchdog.bitten());
    assertThat(runs).hasValue(0);
  }

  @Test
  void givesUpWhenMemoryEnds() {
    Watchdog watchdog = new Watchdog();
    assertThatThrownBy(() -> watchdog.run(doing -> fail(new OutOfMemoryError())))
        .isInstanceOf(RunawayRule.class)
        .hasMessage("null takes more memory than there is");
    assertThat(watchdog.bitten()).isNotNull();
  }

  private static StackTraceElement frame(String className) {
    return new StackTraceElement(className, "test", null, -1);
  }

  private static String fail(Consumer<String> doing, RuntimeException failure) {
    doing.accept("lake-swims");
    throw failure;
  }

  private static String fail(RuntimeException failure) {
    throw failure;
  }

  private static String fail(Error failure) {
    throw failure;
  }

  private String untilTheEnd(Consumer<String> doing) {
    doing.accept("boat-rides");
    doing.accept("boat-swims");
    try {
      end.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    return "";
  }
}
