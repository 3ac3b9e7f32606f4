package peakproof.document;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The club's philosophy as written in {@code house.yaml}; names and ranges are checked where the
 * rules are known.
 *
 * @param settings by rule (or {@code measures}) and setting
 * @param severity by rule
 * @param atMost by rule, the heaviest severity it may come to
 * @param words by rule, what is said in place of the card's {@code title}, {@code why}, {@code do},
 *     {@code care} or {@code not-for}
 * @param use rules turned on that are off by default
 * @param silenced rules turned off, with the reason
 * @param notApplied keys present that this version checks but does not apply yet
 */
public record House(
    String at,
    @Nullable String name,
    Map<String, Map<String, Plan.SettingText>> settings,
    Map<String, Plan.SettingText> severity,
    Map<String, Plan.SettingText> atMost,
    Map<String, Map<String, Plan.SettingText>> words,
    List<Plan.SettingText> use,
    List<Silenced> silenced,
    Set<String> notApplied) {

  /** A rule turned off. */
  public record Silenced(String at, String rule, String because) {}
}
