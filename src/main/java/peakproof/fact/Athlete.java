package peakproof.fact;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The athlete on race day. What the plan does not say is unknown.
 *
 * @param age on race day, in years; by a bare year, the age on 31 December
 * @param masters true from the age the club counts as masters
 * @param firstTimer true without a finished race of this distance class
 * @param experienced true with several finished races of this class and some years of the sport
 * @param injured true while a declared injury is open
 * @param aeroBike true when the race position is on aero bars
 * @param breathesBothSides true when the athlete breathes to both sides as they swim
 * @param category age-group, elite or para
 * @param weekHours hours a week the athlete has
 */
public record Athlete(
    String pointer,
    @Nullable Double age,
    boolean masters,
    @Nullable Boolean firstTimer,
    boolean experienced,
    boolean injured,
    boolean aeroBike,
    boolean breathesBothSides,
    @Nullable String category,
    @Nullable Double weekHours)
    implements Fact {

  @Override
  public List<Where> where() {
    return List.of(new Where(pointer, null, null));
  }
}
