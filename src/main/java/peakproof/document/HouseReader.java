package peakproof.document;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Reads a club's house file. */
final class HouseReader {
  private static final List<String> WORDS = List.of("title", "why", "do", "care", "not-for");

  private final Desk desk;
  private final Set<String> notApplied = new LinkedHashSet<>();
  private List<String> kit = List.of();
  private List<String> practise = List.of();

  HouseReader(Desk desk) {
    this.desk = desk;
  }

  /** The club's own kit words, once the file is read. */
  List<String> kit() {
    return kit;
  }

  /** The club's own skills, once the file is read. */
  List<String> practise() {
    return practise;
  }

  /** The house file; null when it holds no keys. */
  @Nullable House read(Node node) {
    Fields fields = desk.fields(node, "the house");
    if (fields == null) {
      return null;
    }
    Format.check(fields);
    var name = fields.text("name");
    if (fields.read("preset", Vocabulary.PRESET::read) != null) {
      notApplied.add("preset");
    }
    if (!desk.words(fields.list("own-rules"), Quantity.Of::new).isEmpty()) {
      notApplied.add("own-rules");
    }
    var settings = SettingsReader.read(fields, desk);
    var severity = severities(fields, "severity");
    if (!severities(fields, "at-most").isEmpty()) {
      notApplied.add("at-most");
    }
    words(fields);
    List<Plan.SettingText> use = desk.each(fields.list("use"), this::used);
    List<House.Silenced> silenced = desk.each(fields.list("silenced"), this::silenced);
    lists(fields);
    if (!SettingsReader.texts(fields.mapping("sessions", "'sessions' of the house"), desk)
        .isEmpty()) {
      notApplied.add("sessions");
    }
    fields.finish();
    return new House(
        fields.pointer(),
        name,
        settings,
        severity,
        use,
        silenced,
        Collections.unmodifiableSet(notApplied));
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

  private void words(Fields owner) {
    Fields rules = owner.mapping("words", "'words'");
    if (rules == null) {
      return;
    }
    rules
        .all()
        .forEach(
            (rule, node) -> {
              Fields fields = desk.fields(node, "'words' for '" + rule + "'");
              if (fields != null) {
                WORDS.forEach(fields::text);
                fields.finish();
                notApplied.add("words");
              }
            });
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
