package peakproof.rule;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The shipped rules as the build compiled them into the program. A shipped rule whose files have
 * been changed since is not among them.
 */
public final class ShippedRules implements KnownRules {
  /** Names the build, then each rule's key with its model; beside the rules' classes. */
  static final String INDEX = "/peakproof/rules/index.txt";

  private final @Nullable String build;
  private final Map<String, String> models = new HashMap<>();

  private ShippedRules(List<String> index) {
    build = index.isEmpty() ? null : index.get(0);
    for (String line : index.subList(Math.min(1, index.size()), index.size())) {
      int space = line.indexOf(' ');
      models.put(line.substring(0, space), line.substring(space + 1));
    }
  }

  /** Those of this program; none when it runs from classes that no build has finished. */
  public static ShippedRules ofThisProgram() {
    try (InputStream in = ShippedRules.class.getResourceAsStream(INDEX)) {
      return new ShippedRules(
          in == null
              ? List.of()
              : new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What tells this build from every other; null when no build has finished it. */
  @Nullable String build() {
    return build;
  }

  @Override
  public @Nullable CompiledRule find(RuleKey key) {
    String model = models.get(key.hash());
    return model == null ? null : new CompiledRule(Map.of(), List.of(model));
  }

  @Override
  public void keep(RuleKey key, CompiledRule rule) {}
}
