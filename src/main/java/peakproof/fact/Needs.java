package peakproof.fact;

import java.util.EnumMap;
import java.util.Map;

/**
 * The needs of the cards beside one plan. Each is found out once, since many rules have the same;
 * for the facts of one plan, which one thread works out.
 */
public final class Needs {
  private final Facts facts;
  private final Map<Need, Boolean> met = new EnumMap<>(Need.class);
  private final Map<Need, Boolean> everywhere = new EnumMap<>(Need.class);

  Needs(Facts facts) {
    this.facts = facts;
  }

  /** True when it is known for this plan, or for a week or session of it. */
  public boolean met(Need need) {
    return met.computeIfAbsent(need, each -> each.met(facts));
  }

  /** True when, being met, it is known for all weeks or sessions that are to be judged. */
  public boolean metEverywhere(Need need) {
    return everywhere.computeIfAbsent(need, each -> each.metEverywhere(facts));
  }
}
