package peakproof.fact;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The newest pain entries of one body part.
 *
 * @param site the body part as logged
 * @param date the newest entry
 * @param daysToRace days from the newest entry to race day
 * @param level the highest level of the entries still standing, 0 to 10
 * @param worse true when an entry says it was worse next morning
 * @param limp true when a limp was seen
 * @param pointToBone true for bone pain, one-point tenderness, swelling or pain at night
 * @param swimmingOnly true when it is felt only in the water
 * @param entries where the entries stand, newest first
 */
@OfHealth
public record Pain(
    String site,
    LocalDate date,
    double daysToRace,
    @Nullable Double level,
    boolean worse,
    boolean limp,
    boolean pointToBone,
    boolean swimmingOnly,
    List<Where> entries)
    implements Fact, Grouped {

  /** What stands against it beside its level, in words: {@code worse next morning, a limp}. */
  public String signs() {
    List<String> signs = new ArrayList<>();
    if (worse) {
      signs.add("worse next morning");
    }
    if (limp) {
      signs.add("a limp");
    }
    if (pointToBone) {
      signs.add("in a bone, swollen, at one point or at night");
    }
    return signs.isEmpty() ? "no other sign" : String.join(", ", signs);
  }

  @Override
  public String group() {
    return site;
  }

  @Override
  public List<Where> where() {
    return entries;
  }
}
