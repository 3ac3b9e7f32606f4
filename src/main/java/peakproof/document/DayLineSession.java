package peakproof.document;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Reads the sessions of one part of a one-line day, joined by {@code +} when one follows another.
 */
final class DayLineSession {
  private final Desk desk;
  private final Tree.Scalar line;

  DayLineSession(Desk desk, Tree.Scalar line) {
    this.desk = desk;
    this.line = line;
  }

  /** The first session with what follows it; null when the sport of any is wrong. */
  @Nullable Session read(List<DayLine.Word> words, String pointer) {
    return read(words, pointer, null);
  }

  private @Nullable Session read(List<DayLine.Word> words, String pointer, @Nullable Sport before) {
    if (words.isEmpty()) {
      return null;
    }
    DayLine.Word first = words.get(0);
    desk.marks().put(pointer, line.at(first.offset()));
    Sport sport = sport(first, before);
    List<String> texts = words.stream().map(DayLine.Word::text).toList();
    int plus = texts.indexOf("+");
    List<DayLine.Word> own = words.subList(1, plus < 0 ? words.size() : plus);
    Session then = null;
    if (plus >= 0 && plus + 1 == words.size()) {
      tell(
          words.get(plus),
          "nothing follows '+'",
          "expected the session that followed straight after",
          "write it, or leave '+' out");
    } else if (plus >= 0) {
      then =
          read(
              words.subList(plus + 1, words.size()),
              pointer + "/then",
              sport == null ? Sport.SWIM : sport);
    }
    return sport == null ? null : session(pointer, sport, first, own, then);
  }

  private @Nullable Sport sport(DayLine.Word word, @Nullable Sport before) {
    List<String> fitting = new ArrayList<>();
    for (Sport sport : Sport.values()) {
      boolean fits = before == null || (sport.racing() && sport.compareTo(before) > 0);
      if (fits && sport.word().equals(word.text())) {
        return sport;
      }
      if (fits) {
        fitting.add(sport.word());
      }
    }
    tell(
        word,
        "'"
            + word.text()
            + "' "
            + (before == null ? "is no sport" : "cannot follow straight after"),
        fitting.isEmpty() ? "expected nothing after a run" : "expected " + Words.listed(fitting),
        Nearest.advice(
            word.text(), fitting, "write ';' instead of '+' when it is a session of its own"));
    return null;
  }

  private Session session(
      String pointer,
      Sport sport,
      DayLine.Word first,
      List<DayLine.Word> words,
      @Nullable Session then) {
    Map<String, Double> values = new HashMap<>();
    List<String> free = new ArrayList<>();
    boolean sound = true;
    for (DayLine.Word word : words) {
      boolean amounts = values.containsKey("duration") || values.containsKey("distance");
      if (sport == Sport.OTHER && amounts && Character.isLetter(word.text().codePointAt(0))) {
        free.add(word.text());
      } else if (sound) {
        sound = take(word, sport, values);
      }
    }
    if (sound && !values.containsKey("duration") && !values.containsKey("distance")) {
      tell(
          first,
          "'" + sport.word() + "' needs a duration or distance",
          "expected it after a space",
          "write it such as '" + sport.word() + " 45min'");
    }
    Session.Recorded recorded =
        new Session.Recorded(
            values.get("duration"),
            values.get("distance"),
            values.get("rating"),
            values.get("heart rate"),
            values.get("power"),
            null,
            null);
    return new Session(
        pointer,
        sport,
        null,
        recorded,
        Session.Scene.UNSAID,
        Session.Wear.UNSAID,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        false,
        false,
        false,
        null,
        null,
        free.isEmpty() ? null : String.join(" ", free),
        then);
  }

  /** Takes one value; false when a fault was told. */
  private boolean take(DayLine.Word word, Sport sport, Map<String, Double> values) {
    String text = word.text();
    String lower = text.toLowerCase(Locale.ROOT);
    String kind;
    Quantity<Double> read;
    if (lower.startsWith("rpe")) {
      kind = "rating";
      read = Numbers.rating(text.substring(3), text);
    } else if (lower.endsWith("bpm")) {
      kind = "heart rate";
      read = Quantity.heartRate(text);
    } else if (lower.endsWith("w")) {
      kind = "power";
      read = Quantity.power(text);
    } else {
      Quantity<SetLine.Work> work = Quantity.amount(text, sport, false);
      kind = work.orNull() instanceof SetLine.Distance ? "distance" : "duration";
      read = work.map(DayLineSession::number);
    }
    if (read instanceof Quantity.NotThat<Double> not) {
      tell(
          word,
          not.what(),
          "expected duration, distance, rpe4, 138bpm or 148W, with spaces between them",
          advice(text, sport, not.instead()));
      return false;
    }
    Double value = ((Quantity.Of<Double>) read).value();
    if (values.putIfAbsent(kind, value) != null) {
      tell(word, "'" + text + "' is a second " + kind, "expected one", "leave one of the two out");
      return false;
    }
    return true;
  }

  private static String advice(String text, Sport sport, String otherwise) {
    if (text.endsWith(",")) {
      return "write ';' instead of ',' before the next part, and nothing inside this one";
    }
    return text.matches("[0-9]+[x×].*")
        ? "write sets with keys of their own: 'sessions:' and '- " + sport.word() + ": …'"
        : otherwise;
  }

  private static double number(SetLine.Work work) {
    return work instanceof SetLine.Time time ? time.seconds() : ((SetLine.Distance) work).metres();
  }

  private void tell(DayLine.Word word, String what, String expected, String instead) {
    desk.fault(line.at(word.offset()), what, expected, instead);
  }
}
