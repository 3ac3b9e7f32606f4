package peakproof.report;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import peakproof.audit.Comparison.Since;
import peakproof.document.DocumentSchemas;
import peakproof.rule.Grade;
import peakproof.rule.Hold;
import peakproof.rule.Severity;

/** The schema of what {@code audit --format json} prints, as {@link JsonAudit} writes it. */
final class AuditSchema {
  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

  private AuditSchema() {}

  static ObjectNode schema() {
    ObjectNode schema = DocumentSchemas.begun("What audit --format json prints");
    schema.put(
        "description", "Later versions of format 1 only add keys; readers pass over others.");
    ObjectNode definitions = JSON.objectNode();
    definitions.set("audit", audit());
    definitions.set("finding", finding(true));
    definitions.set("accepted", finding(false));
    definitions.set("gone", gone());
    ObjectNode format = JSON.objectNode().put("const", 1);
    schema.setAll(
        object(
            "format", format,
            "program", text("its name and version"),
            "audits", list(reference("audit"), "in the order of the plans")));
    offer(schema, "against", against());
    schema.set("definitions", definitions);
    return schema;
  }

  private static ObjectNode audit() {
    ObjectNode canHold = flag("true when the rule could hold the plan back");
    ObjectNode audit =
        object(
            "plan", text("the file"),
            "log", orNull(text("the file; null when there is none")),
            "asOf", date("the day that splits what was done from what is planned"),
            "athlete", text("the name"),
            "event", text("the name"),
            "raceDate", date("the day of the race"),
            "daysToGo", whole("from asOf to the race"),
            "logEnds", orNull(date("the newest entry of the log")),
            "complete", flag("false when a rule for this plan is broken and judged nobody"),
            "findings", list(reference("finding"), "ranked, the most urgent first"),
            "notJudged",
                list(
                    object(
                        "rule", text("its name"),
                        "missing", list(text("an entry"), "entries that would let it judge"),
                        "canHold", canHold),
                    "rules that could not judge"),
            "accepted", list(reference("accepted"), "findings the coach has seen and lives with"),
            "silenced",
                list(
                    object(
                        "rule", text("its name"),
                        "because", text("the house's reason"),
                        "canHold", canHold),
                    "rules the house has turned off"),
            "notForThisPlan",
                list(
                    object("rule", text("its name"), "because", text("what it is for")),
                    "rules for other races or athletes"),
            "clear", list(text("a rule"), "rules that found nothing"),
            "preset", text("whose numbers count where house and plan have none"),
            "settings", list(text("who: which rule, what"), "what house and plan change"),
            "notDeclared", list(text("an entry"), "not written, so read as none"),
            "remarks", list(text("a sentence"), "what else to know of this audit"),
            "summary", summary());
    offer(audit, "gone", list(reference("gone"), "found earlier and no more; with --against"));
    return audit;
  }

  private static ObjectNode gone() {
    return object(
        "rule", text("its name"),
        "severity", words(Stream.of(Severity.values()).map(Enum::name)),
        "title", text("the problem"),
        "now", text("what became of the rule: clear, or why that is no good news"),
        "where", list(object("file", text("as it was then"), "line", whole("from 1")), "then"),
        "fingerprint", text("of the finding"));
  }

  private static ObjectNode against() {
    ObjectNode left =
        object(
            "plan", text("the file as it was then"),
            "athlete", text("the name"),
            "raceDate", date("the day of the race"),
            "gone", list(reference("gone"), "what was found in it"));
    return object(
        "what", text("the revision or file"),
        "new", whole("how many"),
        "known", whole("how many"),
        "gone", whole("how many"),
        "plansGone", list(left, "plans that are no more"));
  }

  private static ObjectNode summary() {
    List<Object> counts =
        Stream.of(
                Stream.of("rules"),
                Stream.of(Severity.values()).map(s -> s.name().toLowerCase(Locale.ROOT)),
                Stream.of("clear", "notJudged", "notForThisPlan", "silenced", "accepted"))
            .flatMap(names -> names)
            .flatMap(name -> Stream.<Object>of(name, whole("how many")))
            .toList();
    ObjectNode summary = object(counts.toArray());
    Stream.of("new", "known", "gone")
        .forEach(name -> offer(summary, name, whole("with --against")));
    return summary;
  }

  /**
   * One finding.
   *
   * @param ranked true when it has an order; an accepted one has who accepted it instead
   */
  private static ObjectNode finding(boolean ranked) {
    ObjectNode value =
        object("value", JSON.objectNode(), "unit", orNull(text("its unit; null for a word")));
    value.withObject("/properties/value").putArray("type").add("number").add("string").add("null");
    ObjectNode values = JSON.objectNode().put("type", "object");
    values.set("additionalProperties", value);
    ObjectNode finding =
        object(
            "rule", text("its name"),
            "severity", words(Stream.of(Severity.values()).map(Enum::name)),
            "hold", orNull(words(Stream.of(Hold.values()).map(Hold::word))),
            "theme", text("what it is about"),
            "title", text("the problem"),
            "why", text("the numbers"),
            "do", text("what the coach could do"),
            "care", orNull(text("the caution")),
            "evidence",
                object(
                    "grade", words(Stream.of(Grade.values()).map(Grade::word)),
                    "source", orNull(text("author, year, journal"))),
            "values", values,
            "where",
                list(
                    object(
                        "file", text("as the user named it"),
                        "line", whole("from 1"),
                        "column", whole("from 1, in characters"),
                        "date", orNull(date("the day it is about")),
                        "week", orNull(date("the Monday of the week it is about"))),
                    "the place first that is to be changed"),
            "fingerprint", text("the same for the same finding, whatever moves in the file"));
    if (ranked) {
      add(finding, "order", whole("from 1"));
      offer(finding, "since", words(Stream.of(Since.values()).map(Since::word)));
    } else {
      add(finding, "because", text("the coach's reason"));
      add(finding, "by", orNull(text("who decided")));
      add(finding, "until", orNull(date("the last day it counts")));
    }
    return finding;
  }

  /** An object of names and what each holds, all of them always there. */
  private static ObjectNode object(Object... namesAndValues) {
    ObjectNode object = JSON.objectNode().put("type", "object");
    List<Object> all = Arrays.asList(namesAndValues);
    for (int i = 0; i < all.size(); i += 2) {
      add(object, (String) all.get(i), (ObjectNode) all.get(i + 1));
    }
    return object;
  }

  /** A key that is not always there. */
  private static void offer(ObjectNode object, String name, ObjectNode value) {
    object.withObject("/properties").set(name, value);
  }

  private static void add(ObjectNode object, String name, ObjectNode value) {
    object.withArray("required").add(name);
    object.withObject("/properties").set(name, value);
  }

  private static ObjectNode list(ObjectNode items, String of) {
    ObjectNode list = JSON.objectNode().put("description", of).put("type", "array");
    list.set("items", items);
    return list;
  }

  private static ObjectNode reference(String definition) {
    return JSON.objectNode().put("$ref", "#/definitions/" + definition);
  }

  private static ObjectNode words(Stream<String> words) {
    ObjectNode kind = JSON.objectNode();
    words.forEach(kind.putArray("enum")::add);
    return kind;
  }

  private static ObjectNode orNull(ObjectNode kind) {
    if (kind.has("enum")) {
      kind.withArray("enum").addNull();
    } else {
      kind.putArray("type").add("string").add("null");
    }
    return kind;
  }

  private static ObjectNode text(String of) {
    return JSON.objectNode().put("description", of).put("type", "string");
  }

  private static ObjectNode date(String of) {
    return text(of).put("pattern", "^[0-9]{4}-[0-9]{2}-[0-9]{2}$");
  }

  private static ObjectNode whole(String of) {
    return JSON.objectNode().put("description", of).put("type", "integer");
  }

  private static ObjectNode flag(String of) {
    return JSON.objectNode().put("description", of).put("type", "boolean");
  }
}
