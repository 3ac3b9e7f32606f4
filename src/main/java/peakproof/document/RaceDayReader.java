package peakproof.document;

import org.jspecify.annotations.Nullable;

/** Reads what is planned for the day of the race. */
final class RaceDayReader {
  private final Desk desk;

  RaceDayReader(Desk desk) {
    this.desk = desk;
  }

  /** The entries under {@code race-day}; null when it is not written. */
  Plan.@Nullable RaceDay read(Fields owner) {
    Fields fields = owner.mapping("race-day", "'race-day'");
    if (fields == null) {
      return null;
    }
    Fields fuel = fields.mapping("fuel", "'fuel' of the race day");
    Session.Fuel bike = fuel == null ? null : SessionDetails.fuel(fuel, "bike", false);
    Session.Fuel run = fuel == null ? null : SessionDetails.fuel(fuel, "run", false);
    Fields wetsuit = fields.mapping("wetsuit", "'wetsuit' of the race day");
    Boolean worn = wetsuit == null ? null : wetsuit.read("worn", Quantity::flag);
    Double thickness = wetsuit == null ? null : wetsuit.read("thickness", Quantity::thickness);
    Plan.RaceDay day =
        new Plan.RaceDay(
            fields.pointer(),
            bike,
            run,
            fields.read("caffeine", Quantity::milligrams),
            fields.words("medicines", Vocabulary.MEDICINE),
            fields.text("warm-up"),
            worn,
            thickness,
            fields.read("carries", Quantity::volume),
            desk.words(fields.list("first-use"), Quantity.Of::new));
    if (fuel != null) {
      fuel.finish();
    }
    if (wetsuit != null) {
      wetsuit.finish();
    }
    fields.finish();
    return day;
  }
}
