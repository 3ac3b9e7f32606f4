package peakproof.rule;

import java.util.Locale;
import java.util.Objects;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import peakproof.fact.Standing;
import peakproof.measure.DistanceClass;

/** For whom rules ask for something else; of those that fit an athlete the first counts. */
public enum Preset {
  SHORT_COURSE(
      "a standard or sprint race",
      who -> who.distance() == DistanceClass.STANDARD || who.distance() == DistanceClass.SPRINT),
  FIRST_TIMER("the first race of this distance", who -> Boolean.TRUE.equals(who.firstTimer())),
  MASTERS("masters on race day", Standing::masters),
  EXPERIENCED("several finished races of this distance", Standing::experienced),
  DEFAULT("nothing else fits", who -> true);

  private final String because;
  private final Predicate<Standing> fits;

  Preset(String because, Predicate<Standing> fits) {
    this.because = because;
    this.fits = fits;
  }

  /**
   * The one of a word, or the first that fits when there is none or it is {@code by-athlete}.
   *
   * @param word as plan or house has it, one of the format's words
   */
  static Preset of(@Nullable String word, Standing who) {
    return Stream.of(values())
        .filter(preset -> word == null || word.equals("by-athlete") || word.equals(preset.word()))
        .filter(preset -> Objects.equals(word, preset.word()) || preset.fits.test(who))
        .findFirst()
        .orElse(DEFAULT);
  }

  /** The word of the documents: {@code short-course}, … */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** When it fits, in words. */
  public String because() {
    return because;
  }
}
