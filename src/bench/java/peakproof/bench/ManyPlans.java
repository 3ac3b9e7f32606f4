package peakproof.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Writes a federation's folder: as many plans as wanted, each with its log of ten weeks, all for
 * one race and under one house file. Every athlete is a chance variation of the base documents, so
 * some are sound and most are not. The same count and seed give the same files.
 *
 * <p>It needs nothing but Java: {@code java src/bench/java/peakproof/bench/ManyPlans.java 1000
 * /tmp/squad}, from the folder that holds {@code rules}.
 */
public final class ManyPlans {
  static final long SEED = 20270704;

  private static final String[] SYLLABLES = {
    "ar", "bel", "cor", "dun", "el", "far", "gil", "hol", "is", "jor", "kel", "lum", "mir", "nor",
    "ost", "pel", "quin", "ros", "sel", "tor", "ul", "ven", "wil", "yor", "zan"
  };

  private static final Pattern MINUTES = Pattern.compile("(?<=(swim|bike|run): )(\\d+)min\\b");
  private static final Pattern RATING = Pattern.compile("(?<=rpe: )\\d");
  private static final Pattern MORNING = Pattern.compile("(?<=(fatigue|soreness): )\\d");
  private static final Pattern HEART_RATE = Pattern.compile("(?<=heart-rate: )(\\d+)bpm");
  private static final Pattern FUEL = Pattern.compile("(?<=carbohydrate: )(\\d+)g/h");
  private static final Pattern ANSWERS =
      Pattern.compile("(?<!,)\n +(aero: \\d\\w+|(fuel|morning): \\{[^{}\n]*\\})(?=\n)");

  private final Random chance;
  private final String plan;
  private final String log;

  private ManyPlans(Path base, long seed) throws IOException {
    this.chance = new Random(seed);
    this.plan = Files.readString(base.resolve("plan.yaml"));
    this.log = Files.readString(base.resolve("log.yaml"));
  }

  /** Takes how many, and the folder to make. */
  public static void main(String[] arguments) throws IOException {
    write(Integer.parseInt(arguments[0]), Path.of(arguments[1]), Path.of("rules/base"), SEED);
  }

  /** Writes {@code count} plans as variations of those in {@code base}. */
  public static void write(int count, Path folder, Path base, long seed) throws IOException {
    ManyPlans many = new ManyPlans(base, seed);
    Files.createDirectories(folder.resolve("events"));
    Files.copy(base.resolve("event.yaml"), folder.resolve("events/saltmarsh.yaml"));
    Files.writeString(
        folder.resolve("house.yaml"),
        """
        house:
          format: 1
          name: Lake District Tri
          settings:
            swim-wetsuit-rehearsal: {swims: 3}
        """);
    for (int number = 1; number <= count; number++) {
      Path athlete = folder.resolve(String.format(Locale.ROOT, "athletes/%05d", number));
      Files.createDirectories(athlete);
      Files.writeString(athlete.resolve("plan.yaml"), many.plan());
      Files.writeString(athlete.resolve("log.yaml"), many.log());
    }
  }

  private String plan() {
    String own =
        plan.replaceFirst("name: .*", "name: " + name() + " " + name())
            .replaceFirst("born: .*", "born: " + (1962 + chance.nextInt(40)))
            .replaceFirst("event: .*", "event: ../../events/saltmarsh.yaml");
    return thinned(varied(varied(own, MINUTES, 2, 12), FUEL, 1, 15), 6);
  }

  private String log() {
    String own = varied(varied(log, MINUTES, 2, 15), HEART_RATE, 1, 6);
    return thinned(varied(varied(own, RATING, 0, 1), MORNING, 0, 1), 30);
  }

  private String name() {
    StringBuilder name = new StringBuilder();
    for (int syllables = 2 + chance.nextInt(2); syllables > 0; syllables--) {
      name.append(SYLLABLES[chance.nextInt(SYLLABLES.length)]);
    }
    return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
  }

  /** The text with each number of a kind moved by up to {@code most} either way, 1 at the least. */
  private String varied(String text, Pattern pattern, int group, int most) {
    Matcher numbers = pattern.matcher(text);
    return numbers.replaceAll(
        found -> {
          String digits = found.group(group);
          int moved = Integer.parseInt(digits) + chance.nextInt(2 * most + 1) - most;
          return found.group().replaceFirst(digits, String.valueOf(Math.max(1, moved)));
        });
  }

  /** The text with one in {@code many} of the answers left out that an athlete may well forget. */
  private String thinned(String text, int many) {
    return ANSWERS
        .matcher(text)
        .replaceAll(
            found -> chance.nextInt(many) == 0 ? "" : Matcher.quoteReplacement(found.group()));
  }
}
