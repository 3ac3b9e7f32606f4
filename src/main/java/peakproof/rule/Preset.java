package peakproof.rule;

import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import peakproof.fact.Standing;
import peakproof.measure.DistanceClass;

/** For whom rules ask for something else; of those that fit an athlete the first counts. */
public enum Preset {
  SHORT_COURSE("a standard or sprint race"),
  FIRST_TIMER("the first race of this distance"),
  MASTERS("masters on race day"),
  EXPERIENCED("several finished races of this distance"),
  DEFAULT("nothing else fits");

  private final String because;

  Preset(String because) {
    this.because = because;
  }

  /**
   * The one of a word, or the first that fits when there is none or it is {@code by-athlete}.
   *
   * @param word as plan or house has it, one of the format's words
   */
  static Preset of(@Nullable String word, Standing who) {
    Preset named = named(word);
    return named == null
        ? Stream.of(values()).filter(preset -> preset.fits(who)).findFirst().orElse(DEFAULT)
        : named;
  }

  /** The one of a word; null for {@code by-athlete} and without a word. */
  public static @Nullable Preset named(@Nullable String word) {
    return Stream.of(values())
        .filter(preset -> preset.word().equals(word))
        .findFirst()
        .orElse(null);
  }

  private boolean fits(Standing who) {
    return switch (this) {
      case SHORT_COURSE ->
          who.distance() == DistanceClass.STANDARD || who.distance() == DistanceClass.SPRINT;
      case FIRST_TIMER -> Boolean.TRUE.equals(who.firstTimer());
      case MASTERS -> who.masters();
      case EXPERIENCED -> who.experienced();
      case DEFAULT -> true;
    };
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
