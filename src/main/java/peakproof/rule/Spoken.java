package peakproof.rule;

import org.jspecify.annotations.Nullable;
import peakproof.fact.Settings;

/** How values are written in a sentence. */
public interface Spoken {
  /** A field's value, in the unit its name tells. */
  String field(String name, @Nullable Object value);

  /** The same with more digits, for two values that would look alike. */
  String exact(String name, double value);

  /** A setting's value, a bare number without its unit. */
  String setting(Settings.Value value);
}
