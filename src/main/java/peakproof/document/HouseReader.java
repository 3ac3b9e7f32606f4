package peakproof.document;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads a club's house file. */
final class HouseReader {
  private static final List<String> WORDS = List.of("title", "why", "do", "care", "not-for");

  static final Pattern SESSION_NAME = Pattern.compile("[a-z][a-z0-9-]{0,39}");

  private final Desk desk;
  private final Path file;
  private List<String> kit = List.of();
  private List<String> practise = List.of();
  private Map<String, Tree.Scalar> sessions = Map.of();

  /** Reads with the faults and marks of a desk; folders are named from the file's own. */
  HouseReader(Desk desk, Path file) {
    this.desk = desk;
    this.file = file;
  }

  /** The club's own kit words, once the file is read. */
  List<String> kit() {
    return kit;
  }

  /** The club's own skills, once the file is read. */
  List<String> practise() {
    return practise;
  }

  /** The club's named sessions, once the file is read. */
  Map<String, Tree.Scalar> sessions() {
    return sessions;
  }

  /** The house file; null when it holds no keys. */
  @Nullable House read(Node node) {
    Fields fields = desk.fields(node, "the house");
    if (fields == null) {
      return null;
    }
    Format.check(fields);
    var name = fields.text("name");
    var preset = fields.read("preset", Vocabulary.PRESET::read);
    List<Path> ownRules = desk.each(fields.list("own-rules"), this::ownRules);
    var settings = SettingsReader.read(fields, desk);
    var severity = severities(fields, "severity");
    var atMost = severities(fields, "at-most");
    var words = words(fields);
    List<Plan.SettingText> use = desk.each(fields.list("use"), this::used);
    List<House.Silenced> silenced = desk.each(fields.list("silenced"), this::silenced);
    lists(fields);
    sessions(fields);
    fields.finish();
    return new House(
        fields.pointer(), name, preset, settings, severity, atMost, words, use, silenced, ownRules);
  }

  private @Nullable Path ownRules(Node node) {
    Tree.Scalar name = desk.scalar(node);
    if (name == null) {
      return null;
    }
    Quantity<Path> folder = FolderBelow.of(file, name.text().strip());
    if (folder instanceof Quantity.NotThat<Path> not) {
      desk.faults().add(not.at(name.place()));
    }
    return folder.orNull();
  }

  private Plan.@Nullable SettingText used(Node node) {
    String rule = desk.value(node, Quantity.Of::new);
    return rule == null ? null : new Plan.SettingText(node.pointer(), rule);
  }

  private Map<String, Plan.SettingText> severities(Fields owner, String key) {
    Fields fields = owner.mapping(key, "'" + key + "'");
    if (fields == null) {
      return Map.of();
    }
    Map<String, Plan.SettingText> severities = new LinkedHashMap<>();
    fields
        .all()
        .forEach(
            (rule, node) -> {
              String word = desk.value(node, Vocabulary.SEVERITY::read);
              if (word != null) {
                severities.put(rule, new Plan.SettingText(node.pointer(), word));
              }
            });
    return Collections.unmodifiableMap(severities);
  }

  private Map<String, Map<String, Plan.SettingText>> words(Fields owner) {
    Fields rules = owner.mapping("words", "'words'");
    if (rules == null) {
      return Map.of();
    }
    Map<String, Map<String, Plan.SettingText>> words = new LinkedHashMap<>();
    rules
        .all()
        .forEach(
            (rule, node) -> {
              Fields fields = desk.fields(node, "'words' for '" + rule + "'");
              if (fields != null) {
                Map<String, Plan.SettingText> its = new LinkedHashMap<>();
                for (String key : WORDS) {
                  String text = fields.text(key);
                  if (text != null) {
                    its.put(key, new Plan.SettingText(node.pointer() + "/" + key, text));
                  }
                }
                fields.finish();
                words.put(rule, Collections.unmodifiableMap(its));
              }
            });
    return Collections.unmodifiableMap(words);
  }

  /** Sessions with a name, each a set line of at least one sport. */
  private void sessions(Fields owner) {
    Fields fields = owner.mapping("sessions", "'sessions' of the house");
    if (fields == null) {
      return;
    }
    Map<String, Tree.Scalar> named = new LinkedHashMap<>();
    fields
        .all()
        .forEach(
            (name, node) -> {
              Tree.Scalar line = desk.scalar(node);
              if (!SESSION_NAME.matcher(name).matches()) {
                desk.fault(
                    fields.keyPlace(name),
                    "'" + name + "' is no name for a session",
                    "expected small letters, digits and '-', a letter first",
                    "for example tuesday-fives");
              } else if (line != null && readable(line)) {
                named.put(name, line);
              }
            });
    sessions = Collections.unmodifiableMap(named);
  }

  private boolean readable(Tree.Scalar line) {
    SetLines.Outcome ridden = SetLines.parse(line.text(), Sport.BIKE);
    boolean readable =
        ridden.line() != null
            || SetLines.parse(line.text(), Sport.RUN).line() != null
            || SetLines.parse(line.text(), Sport.SWIM).line() != null;
    if (!readable) {
      ridden
          .problems()
          .forEach(problem -> desk.faults().add(problem.why().at(line.at(problem.offset()))));
    }
    return readable;
  }

  private House.@Nullable Silenced silenced(Node node) {
    Fields fields = desk.fields(node, "a silenced rule");
    if (fields == null) {
      return null;
    }
    var rule = fields.require("rule", "swim-bilateral", Quantity.Of::new);
    var because = fields.require("because", "we teach it in winter", Quantity.Of::new);
    fields.finish();
    return rule == null || because == null
        ? null
        : new House.Silenced(fields.pointer(), rule, because);
  }

  private void lists(Fields owner) {
    Fields fields = owner.mapping("lists", "'lists'");
    if (fields != null) {
      kit = new ArrayList<>(desk.words(fields.list("kit"), Quantity.Of::new));
      practise = new ArrayList<>(desk.words(fields.list("practise"), Quantity.Of::new));
      fields.finish();
    }
  }
}
