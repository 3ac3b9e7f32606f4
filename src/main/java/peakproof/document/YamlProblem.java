package peakproof.document;

import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/** Says what the YAML parser choked on in words for the file's author. */
final class YamlProblem {
  private static final String PAIR = "expected 'key: value' lines, indented alike";

  /** A key whose value follows without a space, on a line that has no other key. */
  private static final Pattern TIGHT_COLON =
      Pattern.compile("^\\s*(?:- +)?(?:[A-Za-z][\\w-]*|[0-9]{4}-[0-9]{2}-[0-9]{2})(:)\\S(?!.*: )");

  private YamlProblem() {}

  /** The parser's complaint at an offset, about something that began at {@code from} (or -1). */
  static Fault of(Source source, MarkedYAMLException problem, int offset, int from) {
    String words = Objects.requireNonNullElse(problem.getProblem(), "");
    String about = Objects.requireNonNullElse(problem.getContext(), "");
    Place place = source.place(Math.max(0, offset));
    if (words.startsWith("found character")) {
      return source.at(offset) == '\t'
          ? new Fault(
              place,
              "a tab stands where a line is indented",
              "expected spaces",
              "write two spaces for each step")
          : new Fault(
              place,
              "a value cannot begin with '" + Character.toString(source.at(offset)) + "'",
              "expected text or a number",
              "put the value in quotes");
    }
    if (about.contains("quoted scalar")) {
      return quotes(source, words, place, from);
    }
    if (words.contains("expected ',' or")) {
      String bracket = Character.toString(Math.max(' ', source.at(from)));
      return new Fault(
          source.place(from),
          "the '" + bracket + "' here is not closed by " + place.line() + ":" + place.column(),
          "expected ',' or '" + (bracket.equals("[") ? "]" : "}") + "' there",
          "close the bracket, or put a value with ',' ':' or brackets in quotes");
    }
    return aboutColons(words)
        ? colons(source, words, Math.max(0, offset))
        : shape(words, about, place);
  }

  private static boolean aboutColons(String words) {
    return words.contains("mapping values are not allowed")
        || words.contains("could not find expected ':'");
  }

  private static Fault colons(Source source, String words, int offset) {
    int before = source.lineBefore(offset);
    Matcher tight = TIGHT_COLON.matcher(source.line(before));
    if (tight.find()) {
      return new Fault(
          source.place(before + tight.start(1)),
          "there is no space after this ':'",
          PAIR,
          "write ': '");
    }
    Place place = source.place(offset);
    if (words.contains("could not find")) {
      return new Fault(
          place,
          "the line before has no ': '",
          PAIR,
          "write 'key: value' there, or quote the text");
    }
    int start = source.lineStart(offset);
    return source.line(start).substring(0, offset - start).contains(": ")
        ? new Fault(
            place,
            "a second ':' on one line",
            "expected one 'key: value' a line",
            "put what belongs to the first key on the next line or in { }, or quote the text")
        : new Fault(
            place,
            "a ':' that belongs to no key",
            PAIR,
            "check the indentation and the line before, or put a value with ': ' in quotes");
  }

  private static Fault quotes(Source source, String words, Place place, int from) {
    return words.contains("escape")
        ? new Fault(
            place,
            "a backslash in double quotes begins an escape that does not exist",
            "expected text",
            "use single quotes")
        : new Fault(
            source.place(from),
            "the quote that opens here is not closed",
            "expected the same quote again at the end of the value",
            "close it, or leave the quotes out");
  }

  private static Fault shape(String words, String about, Place place) {
    if (words.contains("sequence entries are not allowed")) {
      return new Fault(
          place,
          "a list item '- ' on the line of its key",
          "expected list items on lines of their own",
          "move it to the next line");
    }
    if (about.contains("alias") || about.contains("anchor") || about.contains("tag")) {
      return new Fault(
          place,
          "a value cannot begin with '*', '&' or '!'",
          "expected text or a number",
          "put the value in quotes");
    }
    if (words.contains("<block end>") || words.contains("<document start>")) {
      return new Fault(
          place,
          "this line does not fit the ones above it",
          PAIR,
          "give it the indentation of its neighbours, and '- ' before each list item");
    }
    return new Fault(
        place,
        "this cannot be read" + (words.isEmpty() ? "" : " (" + words.replace('\n', ' ') + ")"),
        PAIR,
        "check quotes, brackets and indentation here");
  }

  /** A key that is a list, a mapping or an alias. */
  static Fault notAKey(Source source, int offset) {
    boolean alias = source.at(offset) == '*';
    return alias
        ? new Fault(
            source.place(offset),
            "'" + source.wordAt(offset) + "' is an alias",
            "expected every value written out",
            "write the value itself here")
        : new Fault(
            source.place(offset),
            "a key must be a word",
            PAIR,
            "write a plain word before the ':'");
  }

  /** Anything else the parser may throw. */
  static Fault unknown(Source source) {
    return new Fault(
        source.place(0),
        "this file cannot be read as YAML",
        PAIR,
        "check quotes, brackets and special characters");
  }
}
