package peakproof.fact;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One illness: its entries on days at most a week apart.
 *
 * @param from the first entry
 * @param last the day it was over by the log, else the newest entry
 * @param daysToRace days from its last day to race day
 * @param fever true when an entry says so
 * @param systemic true with fever, chest signs, a tight chest, aches, vomiting or palpitations
 * @param viral true with fever, and for a virus that touches the whole body
 * @param breathing true with froth, a tight chest or breathlessness in the water, or a cough on a
 *     day with a swim that nothing says is a cold's
 * @param over true when the log says it is over
 * @param cleared true when a licensed practitioner cleared the athlete since
 * @param kind cold, virus, stomach or other, as logged
 * @param entries where the entries stand, newest first
 */
@OfHealth
public record Illness(
    LocalDate from,
    LocalDate last,
    double daysToRace,
    boolean fever,
    boolean systemic,
    boolean viral,
    boolean breathing,
    boolean over,
    boolean cleared,
    @Nullable String kind,
    List<Where> entries)
    implements Fact, Grouped {

  @Override
  public String group() {
    return kind == null ? "illness" : kind;
  }

  @Override
  public List<Where> where() {
    return entries;
  }
}
