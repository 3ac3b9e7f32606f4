package peakproof.rule;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The three files of a small rule that works, for a club to change into its own. */
public final class NewRule {
  /** Names that stand for something else in a folder of rules or in a house file. */
  private static final Set<String> TAKEN = Set.of("base", "measures");

  private static final String CAUTION =
      "A sign that worries the athlete or the coach comes first. Stop, and ask a doctor or"
          + " physiotherapist; they decide, not this report.";

  private NewRule() {}

  /** True for what can be the name of a rule or theme. */
  public static boolean isName(String name) {
    return CardSettings.NAME.matcher(name).matches() && !TAKEN.contains(name);
  }

  /**
   * The files with their texts, logic first.
   *
   * @param folder the club's folder of rules
   * @param slug the rule's name, which {@link #isName}
   * @param theme the same
   */
  public static Map<Path, String> files(Path folder, String slug, String theme) {
    String care = CardCheck.CARING.contains(theme) ? CAUTION : "none";
    Map<Path, String> files = new LinkedHashMap<>();
    Map<String, String> sources = new LinkedHashMap<>();
    sources.put(RuleListing.LOGIC, "logic.drl");
    sources.put(RuleListing.CARD, "card.yaml");
    sources.put(RuleListing.CASES, "cases.yaml");
    sources.forEach(
        (ending, source) ->
            files.put(
                folder.resolve(theme).resolve(slug + ending),
                text(source)
                    .replace("SLUG", slug)
                    .replace("PACKAGE", theme.replace('-', '_'))
                    .replace("CARE", care)));
    return files;
  }

  /** The files of a rule there is, with their texts as they are, below another folder. */
  public static Map<Path, String> copies(Path folder, Ruleset rules, String slug) {
    Path stem = Objects.requireNonNull(rules.origin().get(slug), slug);
    Path theme = folder.resolve(rules.card(slug).theme());
    Map<Path, String> files = new LinkedHashMap<>();
    for (String ending : new String[] {RuleListing.LOGIC, RuleListing.CARD, RuleListing.CASES}) {
      byte[] bytes = RuleListing.bytes(Path.of(stem + ending));
      files.put(theme.resolve(slug + ending), new String(bytes, StandardCharsets.UTF_8));
    }
    return files;
  }

  /** Who has the name already, in words; null when it is free. */
  public static @Nullable String taken(Ruleset rules, String slug) {
    Path stem = rules.origin().get(slug);
    if (stem != null) {
      return "there is a rule '" + slug + "' already, " + RuleListing.slashes(stem) + ".yaml";
    }
    String now = rules.formerNames().get(slug);
    return now == null ? null : "'" + slug + "' is a former name of '" + now + "'";
  }

  private static String text(String source) {
    try (InputStream in =
        Objects.requireNonNull(NewRule.class.getResourceAsStream("new/" + source), source)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
