package peakproof.document;

import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Where a schema and the reader part: what the reader refuses and a schema lets through, kind by
 * kind. A test holds that there are no others, and that each of these occurs.
 */
enum SchemaDifference {
  CALENDAR(
      "29 February in a year that has none",
      "a pattern does not know leap years",
      "'[0-9]{4}-02-29' is no date"),
  MONDAY(
      "a week that does not start on a Monday",
      "a pattern does not know weekdays",
      "is a (Tues|Wednes|Thurs|Fri|Satur|Sun)day"),
  ORDER(
      "two values in the wrong order: an injury that ends before it begins, a resting heart rate that"
          + " is not below the highest",
      "a schema does not compare one value with another",
      "this injury ends on|the resting heart rate is not below"),
  WEEKS(
      "weeks that do not fit together: two for one Monday, `like` a week that is not there, `like` in"
          + " a circle",
      "a schema does not look from one entry into another",
      "a second week starts on|there is no week that starts on|'like' leads back"),
  SET_LINE(
      "a set line whose words are known and whose parts do not fit: brackets, order, repetitions,"
          + " amounts, targets",
      "brackets within brackets are beyond a pattern; it holds the words only",
      ".*/(days|but)/.*/(swim|bike|run)|house/sessions/[^/]*",
      "a part is missing|stands where the part should end|closes no bracket|is not closed"
          + "|is no part|is no number of repetitions|are nested more|makes more than|second target"
          + "|second effort|after a duration can be|is a target|is no target|decimal comma"
          + "|is no duration|is neither distance nor duration|no word of a set line"
          + "|has no unit|is no distance|is no pace|is no rating|is not a (heart rate|power)"),
  NAMED_SESSION(
      "a session's name that the house does not have",
      "it stands in another file",
      "the house has no session"),
  SHORT_LEG(
      "a ride or run of less than 100 m, in a line, a leg or a test",
      "a pattern does not compare sizes across units",
      "is very short for a (ride|run)"),
  SAID_TWICE(
      "a logged session whose line already says its `time` or `distance`",
      "whether it does depends on what the line means",
      "the session says its (duration|distance) twice"),
  DAY_LINE(
      "a day of a log on one line, past its first word",
      "its pieces have a grammar of their own; the pattern holds how it begins",
      "log/days/[^/]*",
      "begins no part of a day|needs a (duration|value)|is a rest day and has|follows rest"
          + "|cannot follow straight after|nothing follows|is a second|is neither distance nor"
          + "|is no rating|one word too many|is written twice|is not a reason|is no duration"
          + "|is not a heart rate|very short|has no unit|is not a power|no part"),
  OWN_WORDS(
      "a kit word or skill on no list",
      "a house may add words, and a schema that called them wrong would be wrong itself: it offers"
          + " the known ones and lets others pass",
      ".*/(kit|practise)(/[0-9]+)?",
      "is not (a kit word|a skill)"),
  FOLDERS(
      "a folder of rules that is not there, or that no way down leads to",
      "a schema does not look at the disk",
      "there is no folder|is no way down to a folder|leads through a link"),
  FILES(
      "an event or log that is not there",
      "a schema does not look at the disk",
      "there is no (such )?file|is not given"),
  SPELLING(
      "numbers and flags as only programs write them: `0x10`, `1e1`, `+3`, `3.0`, `True`",
      "the editor's YAML turns them into numbers and flags before the schema sees them",
      "'(0x[0-9a-f]+|[0-9.+-]+e[0-9+-]+|[+-]?[0-9]*\\.[0-9]*|\\+[0-9]+|True|TRUE|False|FALSE)' is"),
  YAML(
      "what YAML has and these files do not: anchors, aliases, merge keys, tags, a second document,"
          + " files of more than 2 MiB",
      "the editor's YAML takes them out before the schema sees them",
      "is an (anchor|alias)|merge|is a tag|a second document|anchor|tag|alias|larger than");

  private final String what;
  private final String reason;
  private final @Nullable Pattern way;
  private final Pattern fault;

  SchemaDifference(String what, String reason, String fault) {
    this(what, reason, null, fault);
  }

  /**
   * @param way where it can stand; null for anywhere
   */
  SchemaDifference(String what, String reason, @Nullable String way, String fault) {
    this.what = what;
    this.reason = reason;
    this.way = way == null ? null : Pattern.compile(way);
    this.fault = Pattern.compile(fault);
  }

  /**
   * The kind of a fault that no schema tells; null when it is of none.
   *
   * @param at the way to the value that was changed; null when any may be to blame
   */
  static @Nullable SchemaDifference of(Fault refused, @Nullable String at) {
    return List.of(values()).stream()
        .filter(kind -> kind.fault.matcher(refused.what()).find())
        .filter(kind -> at == null || kind.way == null || kind.way.matcher(at).matches())
        .findFirst()
        .orElse(null);
  }

  /** The line of the page. */
  String row() {
    return "| " + what + " | " + reason + " |\n";
  }
}
