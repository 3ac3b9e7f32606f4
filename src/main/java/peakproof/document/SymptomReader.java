package peakproof.document;

import org.jspecify.annotations.Nullable;

/** Reads how an athlete was: mornings, pain, illness. */
final class SymptomReader {
  private final Desk desk;

  SymptomReader(Desk desk) {
    this.desk = desk;
  }

  /** The entries under {@code morning}; null when it is not written. */
  Log.@Nullable Morning morning(Fields owner) {
    Fields fields = owner.mapping("morning", "'morning'");
    if (fields == null) {
      return null;
    }
    Log.Morning morning =
        new Log.Morning(
            fields.read("sleep", Quantity::span),
            fields.read("fatigue", Quantity::rating),
            fields.read("soreness", Quantity::rating),
            fields.read("mood", Quantity::rating),
            fields.read("stress", Quantity::rating),
            fields.read("resting-heart-rate", Quantity::heartRate));
    fields.finish();
    return morning;
  }

  Log.@Nullable Pain pain(Node node) {
    Fields fields = desk.fields(node, "a pain entry");
    if (fields == null) {
      return null;
    }
    var site = fields.require("site", "left achilles", Quantity.Of::new);
    var level = fields.read("level", Quantity::rating);
    var when = fields.read("when", Vocabulary.PAIN_WHEN::read);
    var next = fields.read("next-morning", Vocabulary.NEXT_MORNING::read);
    var signs = fields.words("signs", Vocabulary.PAIN_SIGNS);
    fields.finish();
    return site == null ? null : new Log.Pain(fields.pointer(), site, level, when, next, signs);
  }

  /** The entry under {@code ill}; null when it is not written. */
  Log.@Nullable Ill ill(Fields owner) {
    Fields fields = owner.mapping("ill", "'ill'");
    if (fields == null) {
      return null;
    }
    Log.Ill ill =
        new Log.Ill(
            fields.pointer(),
            fields.words("signs", Vocabulary.ILL_SIGNS),
            fields.read("fever", Quantity::flag),
            fields.read("kind", Vocabulary.ILLNESS::read),
            fields.read("over", Quantity::date));
    fields.finish();
    return ill;
  }
}
