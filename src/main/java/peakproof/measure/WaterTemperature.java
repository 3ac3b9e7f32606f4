package peakproof.measure;

import java.util.Comparator;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import peakproof.document.WaterTable;

/**
 * What a rule book's water-temperature table says of a swim. Organisers and national bodies differ
 * and measure on the day: the event's own sheet decides, and this only tells what to prepare for.
 */
public sealed interface WaterTemperature {

  /** Whether the wetsuit may, must or must not be worn. */
  enum Wetsuit {
    FORBIDDEN,
    OPTIONAL,
    MANDATORY
  }

  /** Whether the swim is swum. */
  enum Swim {
    AS_PLANNED,
    SHORTENED,
    NONE
  }

  /**
   * A swim the table knows.
   *
   * @param longest metres that may be swum; null when nothing shortens it, and where the table
   *     leaves the length to the event
   * @param limitSeconds longest time in the water; null where the table has none
   */
  record Ruled(Wetsuit wetsuit, Swim swim, @Nullable Double longest, @Nullable Double limitSeconds)
      implements WaterTemperature {

    /** True when a wetsuit may be worn. */
    public boolean allowed() {
      return wetsuit != Wetsuit.FORBIDDEN;
    }
  }

  /** No row of the table fits. */
  record Unknown(String because) implements WaterTemperature {}

  /**
   * Looks a swim up.
   *
   * @param edition as the event names it
   * @param category age-group, elite or para
   * @param metres of the swim, above zero
   * @param celsius of the water, or as {@link #adjusted} for cold air
   */
  static WaterTemperature of(
      WaterTable table, @Nullable String edition, String category, double metres, double celsius) {
    Optional<WaterTable.Edition> known =
        table.editions().stream().filter(each -> each.name().equals(edition)).findFirst();
    if (known.isEmpty()) {
      return new Unknown("the edition of the rule book, from the event's own sheet");
    }
    if (!Limit.positive(metres) || !Double.isFinite(celsius)) {
      return new Unknown("the length of the swim and the water's temperature");
    }
    return known.get().rows().stream()
        .filter(row -> row.category().equals(category) && !Limit.above(metres, row.upTo()))
        .min(Comparator.comparingDouble(WaterTable.Row::upTo))
        .<WaterTemperature>map(row -> ruled(row, known.get(), metres, celsius))
        .orElse(new Unknown("a row of the table for this category and length"));
  }

  /**
   * The temperature that counts when the air is colder than the water and at most 15 °C: the mean
   * of both (from memory).
   *
   * @param water °C
   * @param air °C; null when unknown, which leaves the water's
   */
  static Amount adjusted(double water, @Nullable Double air, Constants constants) {
    if (!Double.isFinite(water)) {
      return Amount.unknown("the water's temperature");
    }
    return air == null || !(air < water) || Limit.above(air, constants.of(Constant.WATER_AIR_TO))
        ? Amount.of(water)
        : Amount.of((water + air) / 2);
  }

  private static Ruled ruled(
      WaterTable.Row row, WaterTable.Edition edition, double metres, double celsius) {
    Wetsuit wetsuit = wetsuit(row, celsius);
    Double limit = row.limitSeconds() == null ? null : Amount.finite(row.limitSeconds());
    for (WaterTable.Shortened each : edition.shortened()) {
      Double longest = each.longest();
      boolean applies = !Limit.below(celsius, each.from()) && Limit.below(celsius, each.below());
      if (applies && (longest == null || Limit.above(metres, longest))) {
        Swim swim = longest != null && longest <= 0 ? Swim.NONE : Swim.SHORTENED;
        return new Ruled(wetsuit, swim, longest, limit);
      }
    }
    return new Ruled(wetsuit, Swim.AS_PLANNED, null, limit);
  }

  private static Wetsuit wetsuit(WaterTable.Row row, double celsius) {
    if (Limit.above(celsius, row.forbiddenAbove())) {
      return Wetsuit.FORBIDDEN;
    }
    return Limit.below(celsius, row.mandatoryBelow()) ? Wetsuit.MANDATORY : Wetsuit.OPTIONAL;
  }
}
