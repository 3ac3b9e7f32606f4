package peakproof.document;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** A value read from text, or why the text is none. Values are in SI units unless said. */
public sealed interface Quantity<T> {
  /** The value. */
  record Of<T>(T value) implements Quantity<T> {}

  /** What is wrong with the text, naming it; what was expected; what to write instead. */
  record NotThat<T>(String what, String expected, String instead) implements Quantity<T> {
    /** As a fault at a place. */
    public Fault at(Place place) {
      return new Fault(place, what, expected, instead);
    }

    <U> NotThat<U> as() {
      return new NotThat<>(what, expected, instead);
    }
  }

  /** The value made into another. */
  default <U> Quantity<U> map(Function<T, U> change) {
    if (this instanceof Of<T> of) {
      return new Of<>(change.apply(of.value()));
    }
    return ((NotThat<T>) this).as();
  }

  /** The value; null when the text is none. */
  default @Nullable T orNull() {
    return this instanceof Of<T> of ? of.value() : null;
  }

  /** Seconds of a whole session or span: {@code 1h30}, {@code 45min}, {@code 1:10:00}; above 0. */
  static Quantity<Double> duration(String text) {
    return Durations.read(text, false);
  }

  /** As {@link #duration}, but {@code 0min} is a value. */
  static Quantity<Double> span(String text) {
    return Durations.span(text);
  }

  /** Seconds of a repetition, rest, interval or test: a duration, or {@code m:ss}. */
  static Quantity<Double> clock(String text) {
    return Durations.read(text, true);
  }

  /** Metres: {@code 3.8km}, {@code 1500yd}, {@code half-marathon}; above 0. */
  static Quantity<Double> distance(String text) {
    return Distances.read(text);
  }

  /**
   * A distance or duration of a sport: in a swim a bare number is metres, in a ride or run less
   * than 100 m is refused.
   *
   * @param repeated true where {@code m:ss} is a duration
   */
  static Quantity<SetLine.Work> amount(String text, Sport sport, boolean repeated) {
    return Distances.amount(text, sport, repeated);
  }

  /** Seconds per metre: {@code 1:50/100m}, {@code 4:55/km}, {@code 8:00/mi}. */
  static Quantity<Double> pace(String text) {
    return Targets.pace(text);
  }

  /** A pace, heart rate, power or rating to hold: {@code 70%maxhr}, {@code rpe6}. */
  static Quantity<Target> target(String text) {
    return Targets.read(text);
  }

  /** Beats a minute: {@code 131bpm}. */
  static Quantity<Double> heartRate(String text) {
    return Units.HEART_RATE.read(text);
  }

  /** Watts: {@code 205W}. */
  static Quantity<Double> power(String text) {
    return Units.POWER.read(text);
  }

  /** A rating from 0 to 10 in halves: {@code 6}, {@code 6.5}. */
  static Quantity<Double> rating(String text) {
    return Numbers.rating(text);
  }

  /** Kilograms: {@code 71kg}, {@code 137lb}. */
  static Quantity<Double> mass(String text) {
    return Units.MASS.read(text);
  }

  /** Litres: {@code 1.1l}, {@code 750ml}, {@code 24floz} (US); 0 is a value. */
  static Quantity<Double> volume(String text) {
    return Units.VOLUME.read(text);
  }

  /** Litres an hour: {@code 650ml/h}, {@code 20floz/h} (US); 0 is a value. */
  static Quantity<Double> fluidRate(String text) {
    return Units.FLUID_RATE.read(text);
  }

  /** Grams of carbohydrate an hour: {@code 75g/h}; 0 is a value. */
  static Quantity<Double> carbohydrateRate(String text) {
    return Units.CARBOHYDRATE_RATE.read(text);
  }

  /** Milligrams: {@code 180mg}; 0 is a value. */
  static Quantity<Double> milligrams(String text) {
    return Units.MILLIGRAMS.read(text);
  }

  /** Degrees Celsius: {@code 17.5C}, {@code 64F}; may be below zero. */
  static Quantity<Double> temperature(String text) {
    return Units.TEMPERATURE.read(text);
  }

  /** Metres a second: {@code 4m/s}, {@code 14km/h}, {@code 10mph}; 0 is a value. */
  static Quantity<Double> speed(String text) {
    return Units.SPEED.read(text);
  }

  /** A share from 0 to 1: {@code 60%}. */
  static Quantity<Double> share(String text) {
    return Units.share(text);
  }

  /** Metres of climb, descent or gap: {@code 1250m}, {@code 4100ft}; 0 is a value. */
  static Quantity<Double> length(String text) {
    return Units.LENGTH.read(text);
  }

  /** Millimetres: {@code 5mm}. */
  static Quantity<Double> thickness(String text) {
    return Units.THICKNESS.read(text);
  }

  /** A whole number from 0. */
  static Quantity<Integer> count(String text) {
    return Numbers.count(text);
  }

  /** A whole number that may be below zero: {@code +6}, {@code -6}. */
  static Quantity<Integer> signed(String text) {
    return Numbers.signed(text);
  }

  /** A number from 0: {@code 8}, {@code 2.5}. */
  static Quantity<Double> number(String text) {
    return Numbers.number(text);
  }

  /** {@code yes}, {@code no}, {@code true} or {@code false}. */
  static Quantity<Boolean> flag(String text) {
    return Numbers.flag(text);
  }

  /** A day: {@code 2027-06-12}. */
  static Quantity<LocalDate> date(String text) {
    return Dates.date(text);
  }

  /** A time of day: {@code 06:30}. */
  static Quantity<LocalTime> time(String text) {
    return Dates.time(text);
  }

  /** A day and time: {@code 2027-07-02T14:00}. */
  static Quantity<LocalDateTime> dateTime(String text) {
    return Dates.dateTime(text);
  }

  /** A place to train: {@code pool}, {@code open-water}, {@code road} … */
  static Quantity<String> whereabouts(String text) {
    return Vocabulary.WHERE.read(text);
  }

  /** A time zone by the name of a place in it: {@code Europe/Oslo}; or {@code UTC}. */
  static Quantity<ZoneId> zone(String text) {
    return ColumnMappingReader.zone(text);
  }

  /** A weekday: {@code mon} to {@code sun}. */
  static Quantity<DayOfWeek> weekday(String text) {
    return Dates.weekday(text);
  }
}
