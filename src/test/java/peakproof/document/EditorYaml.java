package peakproof.document;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.Tag;
import org.yaml.snakeyaml.representer.Representer;
import org.yaml.snakeyaml.resolver.Resolver;

/** A file as an editor's YAML hands it to a schema: by the core schema of YAML 1.2. */
final class EditorYaml {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private EditorYaml() {}

  /** Only what YAML 1.2 still turns into something else than text, and merge keys. */
  private static final class CoreSchema extends Resolver {
    @Override
    protected void addImplicitResolvers() {
      addImplicitResolver(Tag.BOOL, PlainJson.FLAG, "tTfF");
      addImplicitResolver(Tag.INT, PlainJson.WHOLE, "-+0123456789");
      addImplicitResolver(Tag.INT, PlainJson.HEXADECIMAL, "0");
      addImplicitResolver(Tag.FLOAT, PlainJson.FLOAT, "-+.0123456789");
      addImplicitResolver(Tag.MERGE, Pattern.compile("<<"), "<");
      addImplicitResolver(Tag.NULL, Pattern.compile("~|null|Null|NULL|"), "~nN\0");
      addImplicitResolver(Tag.NULL, Pattern.compile(""), null);
    }
  }

  /** The file as JSON; null when it is no YAML, which an editor tells by itself. */
  static @Nullable JsonNode json(String text) {
    LoaderOptions options = new LoaderOptions();
    options.setAllowDuplicateKeys(false);
    Yaml yaml =
        new Yaml(
            new SafeConstructor(options),
            new Representer(new DumperOptions()),
            new DumperOptions(),
            options,
            new CoreSchema());
    try {
      return MAPPER.valueToTree(yaml.load(text));
    } catch (YAMLException | IllegalArgumentException notYaml) {
      return null;
    }
  }
}
