package peakproof.document;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
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
 * @param preset the word for the preset of all its plans, or null
 * @param ownRules folders of the club's own rules, which exist, below the house file's folder
 */
public record House(
    String at,
    @Nullable String name,
    @Nullable String preset,
    Map<String, Map<String, Plan.SettingText>> settings,
    Map<String, Plan.SettingText> severity,
    Map<String, Plan.SettingText> atMost,
    Map<String, Map<String, Plan.SettingText>> words,
    List<Plan.SettingText> use,
    List<Silenced> silenced,
    List<Path> ownRules) {

  /** A rule turned off. */
  public record Silenced(String at, String rule, String because) {}
}
