package peakproof.document;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What one value may be, as a schema says it: the words and units of the readers, and what an
 * editor tells where they are not met, which is what the reader itself would have expected.
 */
final class SchemaKinds {
  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
  private static final String N = Numbers.NUMBER;
  private static final String DECIMALS = "(?:\\.[0-9]{1,6})?";
  private static final String NO_DECIMALS = "(?:\\.0{1,6})?";
  private static final String BELOW_60 = "0{0,5}[0-5]?[0-9]" + DECIMALS;
  private static final String MORE_THAN_NOTHING = "(?=.*[1-9])";
  private static final String UP_TO_100 =
      "(?:0{0,4}100" + NO_DECIMALS + "|0{0,5}[0-9]{1,2}" + DECIMALS + ")";
  private static final String RATING =
      "(?:0{0,6}[0-9](?:\\.[05]0{0,5})?|0{0,5}10" + NO_DECIMALS + ")";
  private static final String CLOCK_TAIL = ":[0-5][0-9](?:\\.[0-9]{1,3})?";
  private static final String SPOKEN_RACES = "half-marathon|marathon";
  private static final String DATE =
      "(?:19|20|21)[0-9]{2}-(?:(?:0[13578]|1[02])-(?:0[1-9]|[12][0-9]|3[01])"
          + "|(?:0[469]|11)-(?:0[1-9]|[12][0-9]|30)|02-(?:0[1-9]|[12][0-9]))";
  private static final String TIME = "(?:[01][0-9]|2[0-3]):[0-5][0-9]";

  private static final String DURATION = duration(" ?");
  private static final String CLOCK = DURATION + "|[0-9]{1,3}" + CLOCK_TAIL;
  private static final String DISTANCE = N + " ?(?:km|mi|m|yd)|" + SPOKEN_RACES;

  private SchemaKinds() {}

  private static String duration(String gap) {
    return "[0-9]{1,4}h[0-5][0-9]|[0-9]{1,3}:(?:0?[0-5][0-9]|[0-9])"
        + CLOCK_TAIL
        + ("|N_h(?:_M_min)?(?:_" + (gap.isEmpty() ? "" : " ?") + "M_s)?|N_min(?:_M_s)?|N_s")
            .replace("N", N)
            .replace("M", BELOW_60)
            .replace("_", gap);
  }

  /** A text of a pattern; anything else tells what the reader would expect. */
  private static ObjectNode pattern(String pattern, String expected, List<String> examples) {
    ObjectNode kind = JSON.objectNode().put("type", "string");
    kind.put("pattern", "^(?:" + pattern + ")$");
    return told(kind, expected, examples);
  }

  private static ObjectNode told(ObjectNode kind, String expected, List<String> examples) {
    kind.put("patternErrorMessage", expected);
    ArrayNode shown = kind.putArray("examples");
    examples.forEach(shown::add);
    return kind;
  }

  /** What a reader expects where it is given what is surely wrong. */
  private static <T> String expected(Function<String, Quantity<T>> read) {
    return read.apply("?") instanceof Quantity.NotThat<T> not ? not.expected() : "";
  }

  private static <T> ObjectNode of(
      Function<String, Quantity<T>> read, String pattern, String... examples) {
    return pattern(pattern, expected(read), List.of(examples));
  }

  /** A text that may also be a bare number in the file. */
  private static ObjectNode orNumber(ObjectNode text, String type) {
    text.remove("type");
    text.putArray("type").add(type).add("string");
    return text;
  }

  /** Free text; what looks like a number or a flag is text too. */
  static ObjectNode text(String... examples) {
    ObjectNode kind = JSON.objectNode();
    kind.putArray("type").add("string").add("number").add("boolean");
    kind.put("pattern", "\\S");
    return examples.length == 0
        ? kind
        : told(kind, "expected something to read", List.of(examples));
  }

  static ObjectNode flag() {
    ObjectNode kind = JSON.objectNode();
    kind.putArray("enum").add("yes").add("no").add(true).add(false).add("true").add("false");
    return kind;
  }

  static ObjectNode words(Words words) {
    return words(words.all());
  }

  static ObjectNode words(Collection<String> words) {
    ObjectNode kind = JSON.objectNode();
    ArrayNode all = kind.putArray("enum");
    words.forEach(all::add);
    return kind;
  }

  /** Words to which a house may add: the known ones are offered, others are let through. */
  static ObjectNode openWords(Words words) {
    ObjectNode kind = JSON.objectNode();
    ArrayNode any = kind.putArray("anyOf");
    any.add(words(words));
    any.add(text());
    return kind;
  }

  static ObjectNode list(ObjectNode items) {
    ObjectNode kind = JSON.objectNode().put("type", "array");
    kind.set("items", items);
    return kind;
  }

  static ObjectNode format() {
    ObjectNode kind = JSON.objectNode();
    kind.putArray("enum").add(1).add("1");
    return kind;
  }

  static ObjectNode units(Units units) {
    String any =
        units.units().stream().map(Units.Unit::word).collect(Collectors.joining("|", "(?:", ")"));
    String sign =
        units.lowest() == Double.NEGATIVE_INFINITY
            ? "[-+]?"
            : "\\+?" + (units.lowest() > 0 ? MORE_THAN_NOTHING : "");
    List<String> examples = List.of(units.examples().split(", | or "));
    return pattern(sign + N + " *" + any, expected(units::read), examples);
  }

  static ObjectNode share() {
    return of(Quantity::share, "\\+?" + UP_TO_100 + " *%", "60%");
  }

  static ObjectNode duration() {
    return of(Quantity::duration, MORE_THAN_NOTHING + "(?:" + DURATION + ")", "45min", "1h30");
  }

  /** A duration that may be none. */
  static ObjectNode span() {
    return of(
        Quantity::span, MORE_THAN_NOTHING + "(?:" + DURATION + ")|0 ?(?:h|min|s)", "2h10", "0min");
  }

  static ObjectNode clock() {
    return of(Quantity::clock, MORE_THAN_NOTHING + "(?:" + CLOCK + ")", "6:28", "1:41:30");
  }

  static ObjectNode distance() {
    return of(Quantity::distance, someDistance(), "400m", "3.8km");
  }

  private static String someDistance() {
    return "(?=.*[1-9]|[hm])(?:" + DISTANCE + ")";
  }

  /** A test's distance or duration. */
  static ObjectNode amount(Sport sport) {
    String either = MORE_THAN_NOTHING + "(?:" + DURATION + ")|" + someDistance();
    Function<String, Quantity<SetLine.Work>> read = text -> Quantity.amount(text, sport, false);
    if (sport != Sport.SWIM) {
      return of(read, either, "5km", "20min");
    }
    ObjectNode swum =
        orNumber(of(read, either + "|" + MORE_THAN_NOTHING + N, "400m", "12min"), "number");
    return swum.put("exclusiveMinimum", 0);
  }

  /** The pattern of texts that are durations. */
  static ObjectNode isDuration() {
    return JSON.objectNode().put("type", "string").put("pattern", "^(?:" + DURATION + ")$");
  }

  static ObjectNode pace() {
    return of(
        Quantity::pace,
        "(?!0{1,2}:00(?:\\.0{1,2})?/)[0-9]{1,2}:[0-5][0-9](?:\\.[0-9]{1,2})?/(?:100m|100yd|km|mi)",
        "1:50/100m",
        "4:55/km");
  }

  /** A target that is no pace. */
  static ObjectNode effort() {
    return pattern(
        MORE_THAN_NOTHING
            + "(?:"
            + UP_TO_100
            + " ?% ?(?:maxhr|hrr)|"
            + N
            + " ?% ?cp|"
            + N
            + " *(?:bpm|W))|rpe"
            + RATING,
        "expected a heart rate, power or rating",
        List.of("70%maxhr", "205W", "rpe5"));
  }

  static ObjectNode rating() {
    ObjectNode kind = orNumber(of(Quantity::rating, RATING, "6", "6.5"), "number");
    return kind.put("minimum", 0).put("maximum", 10).put("multipleOf", 0.5);
  }

  static ObjectNode count() {
    ObjectNode kind = orNumber(of(Quantity::count, "[0-9]{1,7}", "3"), "integer");
    return kind.put("minimum", 0).put("maximum", 9_999_999);
  }

  static ObjectNode signed() {
    ObjectNode kind = orNumber(of(Quantity::signed, "[+-]?[0-9]{1,7}", "+6", "-6"), "integer");
    return kind.put("minimum", -9_999_999).put("maximum", 9_999_999);
  }

  static ObjectNode number() {
    ObjectNode kind = orNumber(of(Quantity::number, N, "8", "2.5"), "number");
    return kind.put("minimum", 0).put("exclusiveMaximum", 10_000_000);
  }

  /** The pattern of a day as it is written, for keys. */
  static String datePattern() {
    return "^" + DATE + "$";
  }

  static ObjectNode date() {
    return of(Quantity::date, DATE, "2027-06-12");
  }

  static ObjectNode time() {
    return of(Quantity::time, TIME, "06:30");
  }

  static ObjectNode timeOfDay() {
    return pattern(
        "am|noon|pm|" + TIME,
        "expected am, noon, pm or a time such as 06:30",
        List.of("am", "07:00"));
  }

  static ObjectNode dateTime() {
    return of(Quantity::dateTime, DATE + "T" + TIME, "2027-07-02T14:00");
  }

  static ObjectNode born() {
    ObjectNode kind =
        orNumber(
            pattern(
                "(?:19|20)[0-9]{2}|" + DATE,
                "expected a year such as 1988, or a date",
                List.of("1988", "1988-03-02")),
            "integer");
    return kind.put("minimum", 1900).put("maximum", 2099);
  }

  /** What strength work takes: how long. */
  static ObjectNode strength() {
    return duration();
  }

  /** What other work takes: how long, and free words. */
  static ObjectNode other() {
    return pattern(
        MORE_THAN_NOTHING
            + "(?:"
            + DURATION
            + ")|(?=[^\\s]*[1-9])(?:"
            + duration("")
            + ")\\s[\\s\\S]*",
        "expected a duration such as 15min",
        List.of("40min walk"));
  }

  /**
   * A set line as far as a pattern goes: of its words. In a swim a bare number is one.
   *
   * @param orName true where the name of a house's session may stand
   */
  static ObjectNode setLine(Sport sport, boolean orName) {
    String words =
        Stream.of(
                Stream.of(Effort.values()).map(effort -> effort.name().toLowerCase(Locale.ROOT)),
                SetLineWords.KIT.stream(),
                Stream.of("half-marathon", "marathon", "off", "on", "min", "km", "mi", "yd", "bpm"),
                Stream.of("maxhr", "hrr", "cp", "rpe", "[hmsrxW]"))
            .flatMap(Function.identity())
            .collect(Collectors.joining("|"));
    ObjectNode line =
        pattern(
            "\\s*(?=[0-9(hm])(?:[^A-Za-z]|(?:"
                + words
                + ")(?![A-Za-z-]))*"
                + (orName ? "|[a-z][a-z0-9-]*" : ""),
            "expected a part such as '400 easy' or '8x50 drill r15s'",
            List.of(
                sport == Sport.SWIM
                    ? "400 easy, 8x50 drill r15s, 200 easy"
                    : "20min easy, 3x(12min threshold r3min), 15min easy"));
    return sport == Sport.SWIM ? orNumber(line, "number").put("exclusiveMinimum", 0) : line;
  }
}
