package peakproof.document;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Reads what follows a part's work: effort, target, kit and rest. */
final class SetLineWords {
  private static final Pattern REST = Pattern.compile("r\\s*(?=[0-9])");
  private static final Pattern SEND_OFF = Pattern.compile("(?:off|on)(?![a-zA-Z-])\\s*");
  private static final Pattern WORD = Pattern.compile("[a-zA-Z-]+");
  private static final Pattern TARGET = Pattern.compile("[^\\s,;()]+");
  private static final Pattern DURATION =
      Pattern.compile("[0-9.:]+ +(?:min|h|s)(?![a-zA-Z0-9])|[^\\s,;()]+");

  private static final List<String> EFFORTS =
      Stream.of(Effort.values()).map(effort -> effort.name().toLowerCase(Locale.ROOT)).toList();
  static final List<String> KIT = List.of("paddles", "fins", "pull-buoy");
  private static final List<String> KNOWN =
      Stream.of(EFFORTS, KIT, List.of("off", "on")).flatMap(List::stream).toList();

  /** Words of the trade that mean one of ours. */
  private static final Map<String, String> MEANT =
      Map.ofEntries(
          Map.entry("rest", "write rest as r30s"),
          Map.entry("recovery", "write rest as r3min"),
          Map.entry("jog", "write rest as r90s"),
          Map.entry("tempo", "write threshold or steady"),
          Map.entry("moderate", "write steady"),
          Map.entry("fast", "write hard or max"),
          Map.entry("warm", "write easy"),
          Map.entry("warm-up", "write easy"),
          Map.entry("cool", "write easy"),
          Map.entry("cool-down", "write easy"),
          Map.entry("with", "write kit and rest without it"),
          Map.entry("+", "write ','"),
          Map.entry("buoy", "write pull-buoy"),
          Map.entry("pull", "write pull-buoy"));

  /** Takes a problem at an offset. */
  @FunctionalInterface
  interface Problems {
    void add(int offset, String what, String expected, String instead);
  }

  private final SetLineCursor cursor;
  private final Problems problems;
  private @Nullable Effort effort;
  private @Nullable Target target;
  private final Set<String> kit = new LinkedHashSet<>();
  private SetLine.@Nullable Rest rest;

  SetLineWords(SetLineCursor cursor, Problems problems) {
    this.cursor = cursor;
    this.problems = problems;
  }

  SetLine.Part part(int count, SetLine.Work work) {
    return new SetLine.Part(count, work, effort, target, Collections.unmodifiableSet(kit), rest);
  }

  /**
   * Reads up to the end of the part.
   *
   * @param afterTime true right after a duration, where a second one could be meant as its minutes
   * @return false when a problem was told
   */
  boolean read(boolean afterTime) {
    boolean bare = afterTime;
    while (rest == null) {
      cursor.skipSpaces();
      if (cursor.atPartEnd()) {
        return true;
      }
      if (!readOne(bare)) {
        return false;
      }
      bare = false;
    }
    return true;
  }

  private boolean readOne(boolean afterTime) {
    int start = cursor.offset();
    char c = cursor.peek();
    if (c == '@') {
      cursor.take();
      return readTarget(start);
    }
    if (cursor.match(REST) != null) {
      return readRest(start, false);
    }
    if (cursor.match(SEND_OFF) != null) {
      return readRest(start, true);
    }
    if (c >= '0' && c <= '9') {
      return readBareRest(start, afterTime);
    }
    Matcher word = cursor.match(WORD);
    return word == null ? unknown(start, cursor.word()) : readWord(start, word.group());
  }

  private boolean readTarget(int start) {
    cursor.skipSpaces();
    Matcher written = cursor.match(TARGET);
    String text = written == null ? "" : written.group();
    if (EFFORTS.contains(text)) {
      return not(
          start,
          "'@" + text + "' is no target",
          "expected '@' before numbers only",
          "write " + text);
    }
    Quantity<Target> read = Quantity.target(text);
    if (read instanceof Quantity.NotThat<Target> not) {
      return not(start, not.what(), not.expected(), not.instead());
    }
    if (target != null) {
      return not(
          start, "a second target '@" + text + "'", "expected one target a part", "leave one out");
    }
    target = read.orNull();
    return true;
  }

  private boolean readWord(int start, String word) {
    if (KIT.contains(word)) {
      kit.add(word);
      return true;
    }
    if (!EFFORTS.contains(word)) {
      return unknown(start, word);
    }
    if (effort != null) {
      return not(
          start,
          "a second effort '" + word + "'",
          "expected one effort a part",
          "leave one out, or write two parts");
    }
    effort = Effort.valueOf(word.toUpperCase(Locale.ROOT));
    return true;
  }

  private boolean readRest(int start, boolean sendOff) {
    Matcher written = cursor.match(DURATION);
    String text = written == null ? "" : written.group();
    boolean seconds = !sendOff && text.matches("[0-9]{1,4}");
    Quantity<Double> duration = Quantity.clock(seconds ? text + "s" : text);
    if (duration instanceof Quantity.NotThat<Double> not) {
      return not(
          start,
          not.what(),
          sendOff
              ? "expected an interval such as off 2:00"
              : "expected a rest such as r20s, r1min or r1:30",
          Quantity.distance(text) instanceof Quantity.Of<Double>
              ? "write the time it takes, such as r1min"
              : not.instead());
    }
    Double value = duration.orNull();
    rest = value == null ? null : sendOff ? new SetLine.SendOff(value) : new SetLine.After(value);
    return true;
  }

  private boolean readBareRest(int start, boolean afterTime) {
    String word = cursor.word();
    if (word.matches("[0-9]+[x×].*")) {
      return not(
          start,
          "'" + word + "' stands where the part should end",
          "expected ',' or the end of the line",
          "write ',' before it");
    }
    if (Quantity.target(word) instanceof Quantity.Of<Target>) {
      return not(start, "'" + word + "' is a target", "expected '@' before it", "write @" + word);
    }
    if (afterTime) {
      return not(
          start,
          "'" + word + "' after a duration can be its minutes or seconds, or a rest",
          "expected one of the two",
          "write them together (1h30), or the rest with 'r' (r" + word + ")");
    }
    return readRest(start, false);
  }

  private boolean unknown(int start, String word) {
    String meant = MEANT.get(word);
    return not(
        start,
        "'" + word + "' is no word of a set line",
        "expected an effort ("
            + Words.listed(EFFORTS)
            + "), '@' and a target, kit ("
            + Words.listed(KIT)
            + ") or a rest",
        meant != null
            ? meant
            : Nearest.advice(word, KNOWN, "write one of these, or ',' and the next part"));
  }

  private boolean not(int offset, String what, String expected, String instead) {
    problems.add(offset, what, expected, instead);
    return false;
  }
}
