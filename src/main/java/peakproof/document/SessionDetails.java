package peakproof.document;

import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Reads what is said of a session beside its work: scene, wear, fuel, strength. */
final class SessionDetails {
  private final Desk desk;
  private final Fields fields;

  SessionDetails(Desk desk, Fields fields) {
    this.desk = desk;
    this.fields = fields;
  }

  Session.Scene scene() {
    return new Session.Scene(
        fields.read("where", Vocabulary.WHERE::read),
        fields.read("company", Vocabulary.COMPANY::read),
        fields.read("water", Quantity::temperature),
        fields.read("air", Quantity::temperature),
        fields.read("climb", Quantity::length),
        fields.read("descent", Quantity::length),
        fields.read("light", Vocabulary.LIGHT::read),
        fields.read("traffic", Vocabulary.TRAFFIC::read),
        fields.read("surface", Vocabulary.GROUND::read),
        fields.yes("heat"));
  }

  Session.Wear wear() {
    return new Session.Wear(
        fields.listedWords("kit", desk.kit()),
        fields.listedWords("practise", desk.practise()),
        fields.read("aero", Quantity::span));
  }

  /** Fuel and {@code fasted}; null when neither is said. */
  Session.@Nullable Fuel fuel() {
    boolean fasted = fields.yes("fasted");
    Session.Fuel fuel = fuel(fields, "fuel", fasted);
    return fuel == null && fasted ? new Session.Fuel(null, null, null, Set.of(), true) : fuel;
  }

  /** Fuel under a key; null when it is not written. */
  static Session.@Nullable Fuel fuel(Fields owner, String key, boolean fasted) {
    Fields fields = owner.mapping(key, key.equals("fuel") ? "'fuel'" : "'fuel' of the " + key);
    if (fields == null) {
      return null;
    }
    Session.Fuel fuel =
        new Session.Fuel(
            fields.read("carbohydrate", Quantity::carbohydrateRate),
            fields.read("fluid", Quantity::fluidRate),
            fields.read("products", Vocabulary.PRODUCTS::read),
            fields.words("sources", Vocabulary.SOURCES),
            fasted);
    fields.finish();
    return fuel;
  }

  Session.Strength strength() {
    return new Session.Strength(
        fields.words("for", Vocabulary.STRENGTH_FOR), fields.read("load", Vocabulary.LOAD::read));
  }
}
