package peakproof.document;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** One athlete's way to one race. */
public record Plan(
    String at,
    @Nullable String preset,
    Athlete athlete,
    Event event,
    @Nullable Goal goal,
    @Nullable Block block,
    List<PlanWeek> weeks,
    @Nullable RaceDay raceDay,
    @Nullable Travel travel,
    List<Change> changes,
    Set<String> aims,
    Map<String, Map<String, SettingText>> settings,
    List<Accepted> accepted) {

  /** How many weeks of peak and taper the final block has. */
  public record Block(String at, @Nullable Integer peakWeeks, @Nullable Integer taperWeeks) {}

  /** What is planned for the day itself; carries in litres, caffeine in milligrams. */
  public record RaceDay(
      String at,
      Session.@Nullable Fuel bikeFuel,
      Session.@Nullable Fuel runFuel,
      @Nullable Double caffeine,
      Set<String> medicines,
      @Nullable String warmUp,
      @Nullable Boolean wetsuitWorn,
      @Nullable Double wetsuitMillimetres,
      @Nullable Double carries,
      Set<String> firstUse) {}

  /** Arrival, and time zones crossed: east positive. */
  public record Travel(String at, @Nullable LocalDateTime arrive, @Nullable Integer zones) {}

  /** A change of equipment. */
  public record Change(String at, LocalDate date, String what) {}

  /** A setting as written in {@code settings}, for the rules to read. */
  public record SettingText(String at, String text) {}

  /** A finding the coach has seen and lives with. */
  public record Accepted(
      String at,
      String rule,
      @Nullable LocalDate week,
      @Nullable LocalDate day,
      String because,
      @Nullable String by,
      @Nullable LocalDate until) {}
}
