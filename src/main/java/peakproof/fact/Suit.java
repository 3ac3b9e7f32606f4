package peakproof.fact;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import peakproof.document.Event;
import peakproof.document.Plan;
import peakproof.document.WaterTable;
import peakproof.measure.Constants;
import peakproof.measure.WaterTemperature;
import peakproof.measure.WaterTemperature.Wetsuit;

/**
 * The wetsuit of race day against what the event says of wetsuits: that it forbids or requires
 * them, else its own thresholds, else the edition of the rule book it names, else that it allows
 * them.
 *
 * @param worn whether the athlete means to wear one; unknown when not said
 * @param thickness millimetres; unknown when not said
 * @param ruling forbidden, optional or mandatory; unknown when nothing the event gives decides
 * @param because what that ruling rests on, in words; empty when it is unknown
 */
public record Suit(
    String pointer,
    @Nullable Boolean worn,
    @Nullable Double thickness,
    @Nullable String ruling,
    String because)
    implements Fact {
  private static final String FORBIDDEN = "forbidden";
  private static final String MANDATORY = "mandatory";

  /** True when it is to be worn where it may not, or left off where it must be worn. */
  public boolean againstRules() {
    return FORBIDDEN.equals(ruling) && Boolean.TRUE.equals(worn)
        || MANDATORY.equals(ruling) && Boolean.FALSE.equals(worn);
  }

  /** {@code with a wetsuit of 4 mm}. */
  public String planned() {
    if (!Boolean.TRUE.equals(worn)) {
      return "without a wetsuit";
    }
    return "with a wetsuit" + (thickness == null ? "" : " of " + Words.number(thickness) + " mm");
  }

  /** The ruling with what it rests on, in words. */
  public String rules() {
    return ruling == null
        ? "what the event gives leaves open whether one may be worn"
        : "it is " + ruling + " by " + because;
  }

  private record Ruled(Wetsuit wetsuit, String because) {}

  static Suit of(Plan plan, WaterTable table, Constants constants) {
    Plan.RaceDay day = plan.raceDay();
    Ruled ruled = ruled(plan, table, constants);
    return new Suit(
        day == null ? plan.at() : day.at(),
        day == null ? null : day.wetsuitWorn(),
        day == null ? null : day.wetsuitMillimetres(),
        ruled == null ? null : ruled.wetsuit.name().toLowerCase(Locale.ROOT),
        ruled == null ? "" : ruled.because);
  }

  private static @Nullable Ruled ruled(Plan plan, WaterTable table, Constants constants) {
    String said = plan.event().swim().wetsuit();
    if ("forbidden".equals(said)) {
      return new Ruled(Wetsuit.FORBIDDEN, "the event");
    }
    if ("required".equals(said)) {
      return new Ruled(Wetsuit.MANDATORY, "the event");
    }
    Ruled byBook = byBook(plan, table, constants);
    return byBook == null && "allowed".equals(said)
        ? new Ruled(Wetsuit.OPTIONAL, "the event")
        : byBook;
  }

  private static @Nullable Ruled byBook(Plan plan, WaterTable table, Constants constants) {
    Event event = plan.event();
    Event.RuleBook book = event.ruleBook();
    Double water = event.swim().temperature();
    Double celsius =
        water == null
            ? null
            : WaterTemperature.adjusted(water, event.weather().air(), constants).value();
    if (book == null || celsius == null) {
      return null;
    }
    String at = ", with the water at " + Words.number(celsius) + " °C";
    Wetsuit own = own(book, celsius);
    if (own != null) {
      return new Ruled(own, "the event's own thresholds" + at);
    }
    String category = plan.athlete().category();
    Double metres = event.legs().swim();
    return category != null
            && metres != null
            && WaterTemperature.of(table, book.edition(), category, metres, celsius)
                instanceof WaterTemperature.Ruled ruled
        ? new Ruled(ruled.wetsuit(), "the rule book's " + book.edition() + " edition" + at)
        : null;
  }

  private static @Nullable Wetsuit own(Event.RuleBook book, double celsius) {
    Double above = book.forbiddenAbove();
    Double below = book.requiredBelow();
    if (above != null && celsius > above + 1e-9) {
      return Wetsuit.FORBIDDEN;
    }
    if (below != null && celsius < below - 1e-9) {
      return Wetsuit.MANDATORY;
    }
    return above == null && below == null ? null : Wetsuit.OPTIONAL;
  }

  @Override
  public List<Where> where() {
    return List.of(new Where(pointer, null, null));
  }
}
