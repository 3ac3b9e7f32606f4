package peakproof.document;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Reads a whole day of a log on one line: {@code run 1h31 15.9km rpe4; sleep 7h15; fatigue 4}. */
final class DayLine {
  private static final Pattern PIECE = Pattern.compile("[^;]+");
  private static final Pattern WORD = Pattern.compile("\\S+");
  private static final List<String> MORNING =
      List.of("sleep", "fatigue", "soreness", "mood", "stress", "resting-heart-rate");
  private static final List<String> FIRST_WORDS =
      Stream.of(
              Stream.of(Sport.values()).map(Sport::word).toList(),
              List.of("rest", "missed"),
              MORNING)
          .flatMap(List::stream)
          .toList();

  private final Desk desk;
  private final Node node;
  private final Tree.Scalar line;
  private final List<Session> sessions = new ArrayList<>();
  private final Map<String, Double> morning = new HashMap<>();
  private boolean rest;
  private Log.@Nullable Missed missed;

  DayLine(Desk desk, Node node, Tree.Scalar line) {
    this.desk = desk;
    this.node = node;
    this.line = line;
  }

  /** A word of the line and where it begins. */
  record Word(String text, int offset) {}

  Log.Day read() {
    Matcher pieces = PIECE.matcher(line.text());
    while (pieces.find()) {
      List<Word> words = words(pieces.group(), pieces.start());
      if (!words.isEmpty()) {
        piece(words);
      }
    }
    if (rest && !sessions.isEmpty()) {
      desk.fault(
          line.place(),
          "this day is a rest day and has sessions",
          "expected one of the two",
          "leave 'rest' or the sessions out");
    }
    return new Log.Day(
        node.pointer(), List.copyOf(sessions), rest, missed, morning(), List.of(), null, Set.of());
  }

  private static List<Word> words(String text, int offset) {
    return WORD.matcher(text)
        .results()
        .map(word -> new Word(word.group(), offset + word.start()))
        .toList();
  }

  private void piece(List<Word> words) {
    String first = words.get(0).text();
    if (first.equals("rest") && words.size() == 1) {
      rest = true;
    } else if (first.equals("missed")) {
      missed = missed(words.subList(1, words.size()));
    } else if (MORNING.contains(first)) {
      morning(words);
    } else if (FIRST_WORDS.contains(first) && !first.equals("rest")) {
      String pointer = node.pointer() + "/sessions/" + sessions.size();
      Session session = new DayLineSession(desk, line).read(words, pointer);
      if (session != null) {
        sessions.add(session);
      }
    } else {
      Word at = first.equals("rest") ? words.get(1) : words.get(0);
      desk.fault(
          line.at(at.offset()),
          "'"
              + at.text()
              + "' "
              + (first.equals("rest") ? "follows rest" : "begins no part of a day"),
          "expected " + (first.equals("rest") ? "';' after it" : Words.listed(FIRST_WORDS)),
          Nearest.advice(
              at.text(),
              FIRST_WORDS,
              "write the day with keys of its own: 'sessions:', 'morning:' …"));
    }
  }

  private Log.@Nullable Missed missed(List<Word> words) {
    Integer count = null;
    String because = null;
    for (Word word : words) {
      if (count == null && because == null && Character.isDigit(word.text().charAt(0))) {
        count = value(word, Quantity.count(word.text()));
      } else if (because == null) {
        because = value(word, Vocabulary.MISSED.read(word.text()));
      } else {
        tooMuch(word, "missed work");
      }
    }
    return new Log.Missed(count, because);
  }

  private void morning(List<Word> words) {
    String key = words.get(0).text();
    if (words.size() == 1) {
      desk.fault(
          line.at(words.get(0).offset()),
          "'" + key + "' needs a value",
          "expected it after a space",
          "write it such as '"
              + key
              + (key.equals("sleep") ? " 7h15'" : key.startsWith("rest") ? " 47bpm'" : " 4'"));
      return;
    }
    Word word = words.get(1);
    Double value =
        value(
            word,
            switch (key) {
              case "sleep" -> Quantity.span(word.text());
              case "resting-heart-rate" -> Quantity.heartRate(word.text());
              default -> Quantity.rating(word.text());
            });
    if (words.size() > 2) {
      tooMuch(words.get(2), key + " " + word.text());
    } else if (value != null && morning.put(key, value) != null) {
      desk.fault(
          line.at(words.get(0).offset()),
          "'" + key + "' is written twice",
          "expected it once",
          "leave one of the two out");
    }
  }

  private Log.@Nullable Morning morning() {
    return morning.isEmpty()
        ? null
        : new Log.Morning(
            morning.get("sleep"),
            morning.get("fatigue"),
            morning.get("soreness"),
            morning.get("mood"),
            morning.get("stress"),
            morning.get("resting-heart-rate"));
  }

  private void tooMuch(Word word, String after) {
    desk.fault(
        line.at(word.offset()),
        "'" + word.text() + "' is one word too many",
        "expected ';' or the end of the day after '" + after + "'",
        "write ';' before it, or leave it out");
  }

  private <T> @Nullable T value(Word word, Quantity<T> quantity) {
    if (quantity instanceof Quantity.NotThat<T> not) {
      desk.faults().add(not.at(line.at(word.offset())));
    }
    return quantity.orNull();
  }
}
