package peakproof.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A text with placeholders: {@code {setting}}, {@code {fact.field}}, {@code {value}}. */
public record Template(String text) {
  private static final Pattern PLACEHOLDER = Pattern.compile("\\{([^{}]*)\\}");

  /** The placeholders without their braces, in order. */
  public List<String> placeholders() {
    List<String> names = new ArrayList<>();
    Matcher matcher = PLACEHOLDER.matcher(text);
    while (matcher.find()) {
      names.add(matcher.group(1));
    }
    return names;
  }

  /** The text with each placeholder replaced. */
  public String fill(Function<String, String> values) {
    return PLACEHOLDER
        .matcher(text)
        .replaceAll(match -> Matcher.quoteReplacement(values.apply(match.group(1))));
  }
}
