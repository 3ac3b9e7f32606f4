package peakproof.rule;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import peakproof.document.DocumentSchemas;
import peakproof.document.Sport;
import peakproof.fact.Need;
import peakproof.fact.Phase;
import peakproof.measure.DistanceClass;

/** The schema of a card, made of what {@link CardReader} knows. */
final class CardSchema {
  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

  private CardSchema() {}

  static ObjectNode schema() {
    ObjectNode schema = DocumentSchemas.begun("The card of a rule");
    ObjectNode flag = JSON.objectNode();
    flag.putArray("enum").add("yes").add("no").add(true).add(false).add("true").add("false");
    ObjectNode setting = JSON.objectNode();
    for (String key : List.of("value", "unit", "from", "to", "meaning", "source")) {
      setting.set(key, text("of a number a club may change"));
    }
    ObjectNode settings = JSON.objectNode().put("type", "object");
    settings.putObject("propertyNames").put("pattern", whole(CardSettings.NAME.pattern()));
    settings.set(
        "additionalProperties", object(setting, List.of("value", "unit", "from", "to", "meaning")));
    ObjectNode keys = JSON.objectNode();
    keys.set(
        "rule", text("the name of its file").put("pattern", whole(CardSettings.NAME.pattern())));
    keys.set("title", text("the problem, in at most 60 characters").put("maxLength", 60));
    keys.set("severity", words(Stream.of(Severity.values()).map(Enum::name)));
    keys.set("steps", list(step()));
    keys.set("hold", words(none(Stream.of(Hold.values()).map(Hold::word))));
    keys.set("grade", words(Stream.of(Grade.values()).map(Grade::word)));
    keys.set("sources", oneOrMore(text("author, year, journal, DOI")));
    keys.set("applies", applies(flag));
    keys.set("needs", needs());
    keys.set("judges-absence", flag);
    keys.set("from-day", text("days before the race").put("pattern", "^\\s*D-[0-9]{1,3}\\s*$"));
    keys.set("default", words(Stream.of("on", "off")));
    keys.set("settings", settings);
    keys.set("why", text("the reason, with placeholders such as {week.label}"));
    keys.set("do", text("what the coach could do"));
    keys.set("care", text("the caution, or none"));
    keys.set("not-for", text("what it does not judge, or none"));
    keys.set("was", oneOrMore(name("a former name, which goes on working")));
    TreeSet<String> required = new TreeSet<>(CardReader.REQUIRED);
    schema.setAll(object(keys, required));
    return schema;
  }

  private static ObjectNode step() {
    ObjectNode keys = JSON.objectNode();
    keys.set("from", text("the value from which it counts"));
    keys.set("when", text("the field of the fact that must hold"));
    keys.set("severity", words(Stream.of(Severity.values()).map(Enum::name)));
    ObjectNode step = object(keys, List.of("severity"));
    step.withArray("oneOf").addObject().withArray("required").add("from");
    step.withArray("oneOf").addObject().withArray("required").add("when");
    return step;
  }

  private static ObjectNode applies(ObjectNode flag) {
    ObjectNode keys = JSON.objectNode();
    keys.set("race-water", words(Stream.of("open", "pool")));
    keys.set(
        "distance", oneOrMore(words(Stream.of(DistanceClass.values()).map(DistanceClass::word))));
    keys.set("drafting", flag);
    keys.set("phase", oneOrMore(words(Stream.of(Phase.values()).map(Phase::word))));
    keys.set("sports", oneOrMore(words(Stream.of(Sport.values()).map(Sport::word))));
    keys.set("para", flag);
    keys.set("category", oneOrMore(words(Stream.of("age-group", "elite", "para"))));
    return object(keys, List.of());
  }

  private static ObjectNode needs() {
    ObjectNode need = words(new TreeSet<>(Need.keysWithWindows()).stream());
    return list(oneOrMore(need));
  }

  private static ObjectNode oneOrMore(ObjectNode one) {
    ObjectNode either = JSON.objectNode();
    either.putObject("if").put("type", "array");
    either.set("then", list(one));
    either.set("else", one);
    return either;
  }

  private static ObjectNode object(ObjectNode keys, Collection<String> required) {
    ObjectNode object = JSON.objectNode().put("type", "object").put("additionalProperties", false);
    object.set("properties", keys);
    required.forEach(object.putArray("required")::add);
    return object;
  }

  private static ObjectNode list(ObjectNode items) {
    ObjectNode list = JSON.objectNode().put("type", "array");
    list.set("items", items);
    return list;
  }

  private static ObjectNode words(Stream<String> all) {
    ObjectNode kind = JSON.objectNode();
    all.distinct().forEach(kind.putArray("enum")::add);
    return kind;
  }

  private static Stream<String> none(Stream<String> words) {
    return Stream.concat(words, Stream.of("none"));
  }

  private static ObjectNode text(String of) {
    ObjectNode text = JSON.objectNode().put("description", of);
    text.putArray("type").add("string").add("number").add("boolean");
    return text.put("pattern", "\\S");
  }

  private static ObjectNode name(String of) {
    ObjectNode name = JSON.objectNode().put("description", of).put("type", "string");
    return name.put("pattern", whole(CardSettings.NAME.pattern()));
  }

  private static String whole(String pattern) {
    return "^(?:" + pattern + ")$";
  }
}
