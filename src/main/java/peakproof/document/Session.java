package peakproof.document;

import java.time.LocalTime;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One session of a plan or a log. What a document does not say is null, or empty for the sets.
 *
 * @param at JSON pointer of the session in its document, for {@link Positions}
 * @param sport what it is done in; null for a race entry
 * @param set the set line; null when a log gives only a duration or distance
 * @param recorded what a log says of the whole session
 * @param scene where and in what conditions
 * @param wear kit and skills practised
 * @param fuel what is eaten and drunk
 * @param strength what strength work is for; null for other sports
 * @param race the event's name when the session is a race
 * @param effort how hard a race is raced, in the word of the document
 * @param legs a race's leg lengths
 * @param time the time of day it starts
 * @param partOfDay am, noon or pm where the document says no more than that
 * @param test true for a test
 * @param optional true for a session the athlete may leave out
 * @param fresh true for a new strength programme ({@code new: yes})
 * @param purpose why it stands where it does, such as {@code back-to-back}
 * @param medicine a medicine planned with it
 * @param note free text, never judged
 * @param then what follows straight after
 */
public record Session(
    String at,
    @Nullable Sport sport,
    @Nullable SetLine set,
    Recorded recorded,
    Scene scene,
    Wear wear,
    @Nullable Fuel fuel,
    @Nullable Strength strength,
    @Nullable String race,
    @Nullable String effort,
    Event.@Nullable Legs legs,
    @Nullable LocalTime time,
    @Nullable String partOfDay,
    boolean test,
    boolean optional,
    boolean fresh,
    @Nullable String purpose,
    @Nullable String medicine,
    @Nullable String note,
    @Nullable Session then) {

  /**
   * What was measured of the whole session.
   *
   * @param seconds duration, from {@code time:} or a bare duration
   * @param metres distance
   * @param rpe rating 0 to 10
   * @param heartRate mean, beats per minute
   * @param power mean, watts
   * @param held what a set was held at, seconds per metre
   * @param lastQuarter what its last quarter was held at, seconds per metre
   */
  public record Recorded(
      @Nullable Double seconds,
      @Nullable Double metres,
      @Nullable Double rpe,
      @Nullable Double heartRate,
      @Nullable Double power,
      @Nullable Double held,
      @Nullable Double lastQuarter) {
    /** Nothing measured. */
    public static final Recorded NOTHING = new Recorded(null, null, null, null, null, null, null);
  }

  /**
   * Where a session takes place.
   *
   * @param where pool, open-water, road, trainer, track, trail, treadmill, gravel, gym or home
   * @param company alone, group or supervised
   * @param water temperature in °C
   * @param air temperature in °C
   * @param climb metres
   * @param descent metres
   * @param light day, dusk or dark
   * @param traffic quiet, busy or closed
   * @param surface dry or wet
   * @param heat true when done in heat on purpose
   */
  public record Scene(
      @Nullable String where,
      @Nullable String company,
      @Nullable Double water,
      @Nullable Double air,
      @Nullable Double climb,
      @Nullable Double descent,
      @Nullable String light,
      @Nullable String traffic,
      @Nullable String surface,
      boolean heat) {
    /** Nothing said. */
    public static final Scene UNSAID =
        new Scene(null, null, null, null, null, null, null, null, null, false);

    /** True for a swim outside the pool. */
    public boolean openWater() {
      return "open-water".equals(where);
    }
  }

  /**
   * What is worn and practised.
   *
   * @param kit null when the document does not list kit
   * @param practise null when the document lists no skills
   * @param aeroSeconds time in race position
   */
  public record Wear(
      @Nullable Set<String> kit, @Nullable Set<String> practise, @Nullable Double aeroSeconds) {
    /** Nothing said. */
    public static final Wear UNSAID = new Wear(null, null, null);

    /** True when the kit is listed and holds the word. */
    public boolean has(String word) {
      return kit != null && kit.contains(word);
    }

    /** True when the skills are listed and hold the word. */
    public boolean practises(String word) {
      return practise != null && practise.contains(word);
    }
  }

  /**
   * What is taken in, per hour.
   *
   * @param carbohydrate grams per hour
   * @param fluid litres per hour
   * @param products {@code race} for the products of race day
   * @param sources kinds of sugar
   * @param fasted true when done fasted
   */
  public record Fuel(
      @Nullable Double carbohydrate,
      @Nullable Double fluid,
      @Nullable String products,
      Set<String> sources,
      boolean fasted) {}

  /**
   * Strength work.
   *
   * @param purposes core, balance, light-weights, legs, upper-body
   * @param load light, moderate or heavy
   */
  public record Strength(Set<String> purposes, @Nullable String load) {}
}
