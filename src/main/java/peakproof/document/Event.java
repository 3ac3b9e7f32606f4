package peakproof.document;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The race: everything its document says; null where it does not. */
public record Event(
    String at,
    String name,
    LocalDate date,
    @Nullable LocalTime start,
    Legs legs,
    @Nullable String distance,
    @Nullable Integer minimumAge,
    Swim swim,
    Bike bike,
    Run run,
    Weather weather,
    CutOffs cutOffs,
    @Nullable RuleBook ruleBook) {

  /** Leg lengths in metres. */
  public record Legs(@Nullable Double swim, @Nullable Double bike, @Nullable Double run) {}

  /**
   * The swim course.
   *
   * @param water lake, sea, river or pool
   * @param temperature °C
   * @param direction clockwise, anticlockwise, straight or both
   * @param wetsuit allowed, forbidden, required or by-temperature
   * @param start mass, wave or rolling
   * @param conditions chop, low-sun, current
   */
  public record Swim(
      @Nullable String water,
      @Nullable Double temperature,
      @Nullable String direction,
      @Nullable String wetsuit,
      @Nullable String start,
      @Nullable Integer starters,
      Set<String> conditions) {}

  /** The bike course; lengths in metres. */
  public record Bike(
      @Nullable Double climb,
      @Nullable Boolean drafting,
      @Nullable Double draftZone,
      @Nullable Double aidEvery,
      @Nullable String course) {}

  /** The run course; lengths in metres. */
  public record Run(
      @Nullable Double climb,
      @Nullable Double descent,
      @Nullable String surface,
      @Nullable Double aidEvery) {}

  /** The weather: °C, share of saturation 0–1, metres a second. */
  public record Weather(
      @Nullable Double air,
      @Nullable Double humidity,
      @Nullable Double wind,
      @Nullable Double wbgt) {}

  /** Limits in seconds from the start. */
  public record CutOffs(@Nullable Double swim, @Nullable Double bike, @Nullable Double finish) {}

  /** Which water-temperature table counts; thresholds in °C for an own one. */
  public record RuleBook(
      String name,
      @Nullable String edition,
      @Nullable Double forbiddenAbove,
      @Nullable Double requiredBelow) {}
}
