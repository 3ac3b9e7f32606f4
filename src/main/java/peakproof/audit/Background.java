package peakproof.audit;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import peakproof.document.Dossier;
import peakproof.document.Log;
import peakproof.fact.Facts;
import peakproof.fact.KeySession;
import peakproof.fact.Rehearsed;
import peakproof.fact.Settings;
import peakproof.fact.Sheet;
import peakproof.measure.Forecast;

/**
 * What lies behind the findings of one plan, for whoever draws it.
 *
 * @param sheet the block day by day
 * @param forecast of race day
 * @param rehearsed what of the race was and is to be rehearsed
 * @param log with its health entries, or null
 * @param taper what the house asks of the taper; null when no rule asks
 * @param next the next session to ask about; null when none is written
 */
public record Background(
    Sheet sheet,
    Forecast forecast,
    List<Rehearsed> rehearsed,
    @Nullable Log log,
    @Nullable TaperBand taper,
    @Nullable KeySession next) {
  /** Of an audit whose plan is not at hand. */
  public static final Background NONE =
      new Background(Sheet.EMPTY, new Forecast(List.of(), List.of()), List.of(), null, null, null);

  /**
   * The cut of daily training time before the race that the house asks for, and that of this plan.
   *
   * @param days days before the race over which it is taken, up to its eve
   * @param least share, the smallest cut
   * @param most share, the largest
   * @param cut share, this plan's; null when unknown
   */
  public record TaperBand(int days, double least, double most, @Nullable Double cut) {
    private static final String MISSING = "taper-missing";
    private static final String DEEP = "taper-too-deep";

    /** Null when a club has not both rules, or reads the two over different days. */
    private static @Nullable TaperBand of(Map<String, Settings> rules, Facts facts) {
      Settings.Value window = value(rules, MISSING, "window");
      Settings.Value least = value(rules, MISSING, "least");
      Settings.Value most = value(rules, DEEP, "most");
      if (window == null
          || least == null
          || most == null
          || !window.equals(value(rules, DEEP, "window"))) {
        return null;
      }
      Double cut = facts.window(MISSING, "window", window.number(), window.until()).reduction();
      return new TaperBand((int) window.number(), least.number(), most.number(), cut);
    }

    private static Settings.@Nullable Value value(
        Map<String, Settings> rules, String rule, String name) {
      Settings settings = rules.get(rule);
      return settings == null ? null : settings.values().get(name);
    }
  }

  static Background of(Dossier dossier, Facts facts, Map<String, Settings> rules) {
    return new Background(
        facts.sheet(),
        facts.forecast(),
        facts.rehearsed(),
        dossier.log(),
        TaperBand.of(rules, facts),
        facts.nextKeySession());
  }
}
