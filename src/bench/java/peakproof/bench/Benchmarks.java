package peakproof.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.openjdk.jmh.runner.RunnerException;

/**
 * Measures everything and writes what came of it into {@code docs/performance.md}, and into {@code
 * target} when it was only to see that it works. Maven's profile {@code bench} starts it.
 */
public final class Benchmarks {
  private static final Path PAGE = Path.of("docs/performance.md");
  private static final Path QUICK = Path.of("target/performance.md");

  private final Size size;
  private final List<String> lines = new ArrayList<>();

  private Benchmarks(Size size) {
    this.size = size;
  }

  /**
   * Takes {@code full} or {@code quick}, and the homes of other Javas whose cold start is measured
   * too, separated by commas.
   */
  public static void main(String[] arguments) throws IOException, RunnerException {
    Size size = Size.of(arguments[0]);
    List<Java> javas = new ArrayList<>(List.of(Java.running()));
    Stream.of(arguments)
        .skip(1)
        .flatMap(homes -> Arrays.stream(homes.split(",")))
        .filter(home -> !home.isBlank())
        .forEach(home -> javas.add(Java.at(home)));
    Benchmarks benchmarks = new Benchmarks(size);
    benchmarks.measure(javas);
    if (size != Size.FULL) {
      Files.copy(PAGE, QUICK, StandardCopyOption.REPLACE_EXISTING);
    }
    Page.put(size == Size.FULL ? PAGE : QUICK, benchmarks.lines);
  }

  private void measure(List<Java> javas) throws IOException, RunnerException {
    say("Measured on " + LocalDate.now() + " on " + Machine.inWords(javas) + "; medians.");
    say("", "One plan from cold, " + size.starts() + " starts of each kind:", "");
    say(ColdStart.measure(javas, size));
    BenchmarkRuns warm = new BenchmarkRuns(size);
    String form = "A warm Java, %d spans of %.1f s in each of %d processes:";
    double seconds = size.milliseconds() / 1e3;
    say("", String.format(Locale.ROOT, form, size.spans(), seconds, size.forks()), "");
    say(warm.plan());
    say("");
    say(warm.judging());
    say("", "Folders, times of " + size.rounds() + " runs in turn:", "");
    say(Folders.measure(size));
  }

  /** What is measured shows at once, since the next takes minutes. */
  private void say(List<String> more) {
    lines.addAll(more);
    more.forEach(System.out::println);
  }

  private void say(String... more) {
    say(List.of(more));
  }
}
