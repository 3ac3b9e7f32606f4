package peakproof.document;

import java.time.LocalDate;
import java.time.Year;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Who the plan is for; null where the plan does not say. */
public record Athlete(
    String at,
    String name,
    @Nullable Year bornYear,
    @Nullable LocalDate bornDate,
    @Nullable String sex,
    @Nullable String category,
    @Nullable Double massKg,
    @Nullable Experience experience,
    @Nullable Double maximumHeartRate,
    @Nullable Double restingHeartRate,
    @Nullable String breathes,
    @Nullable Double criticalPower,
    @Nullable String position,
    List<Test> tests,
    @Nullable Available available,
    @Nullable Lately lately,
    Health health,
    List<SweatRate> sweatRates,
    @Nullable Para para) {

  /** Years of the sport and finished races by distance class. */
  public record Experience(
      @Nullable Double years,
      @Nullable Integer full,
      @Nullable Integer half,
      @Nullable Integer standard,
      @Nullable Integer sprint) {}

  /**
   * A test or recent race: a distance with its time, or a duration with power or heart rate.
   *
   * @param metres distance, when it was by distance
   * @param workSeconds duration, when it was by time
   * @param seconds the time a distance took
   */
  public record Test(
      String at,
      LocalDate date,
      Sport sport,
      @Nullable Double metres,
      @Nullable Double workSeconds,
      @Nullable Double seconds,
      @Nullable Double power,
      @Nullable Double heartRate) {}

  /** Time to train: seconds a week, days off, longest weekday slot in seconds. */
  public record Available(
      @Nullable Double weekSeconds,
      Set<java.time.DayOfWeek> daysOff,
      @Nullable Double weekdaySeconds) {}

  /** What the coach states of the last weeks in place of a log; seconds and metres. */
  public record Lately(
      String at,
      @Nullable Double weekSeconds,
      @Nullable Double longestRideSeconds,
      @Nullable Double longestRunSeconds,
      @Nullable Double longestSwimMetres,
      @Nullable LocalDate openWater) {}

  /** Health entries; they stay with the coach. */
  public record Health(
      @Nullable LocalDate checked,
      @Nullable String contact,
      List<Injury> injuries,
      Set<String> conditions,
      @Nullable LocalDate cleared) {}

  /** A declared injury; open while {@code to} is null. */
  public record Injury(String at, String site, @Nullable LocalDate from, @Nullable LocalDate to) {}

  /** A weighed session: kilograms, litres, seconds. */
  public record SweatRate(
      String at,
      @Nullable LocalDate date,
      @Nullable Sport sport,
      double beforeKg,
      double afterKg,
      double drunkLitres,
      @Nullable Double urineLitres,
      double seconds) {}

  /** A para-athlete's class, device and guide. */
  public record Para(
      @Nullable String classification, @Nullable String device, @Nullable Boolean guide) {}
}
