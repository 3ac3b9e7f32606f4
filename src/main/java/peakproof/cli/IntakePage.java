package peakproof.cli;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import peakproof.document.Place;
import peakproof.document.YamlValue;
import peakproof.intake.Decision;
import peakproof.intake.Incoming;
import peakproof.intake.Received;
import peakproof.report.Printable;

/** Tells line by line what was taken and what not, and why. */
final class IntakePage {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEE uuuu-MM-dd", Locale.ENGLISH);
  private static final int WIDEST_SESSION = 60;

  /** Entries that a line need not repeat. */
  private static final List<String> LONG = List.of("note", "at");

  private final List<Line> lines = new ArrayList<>();
  private int taken;
  private int skipped;

  private @Nullable LocalDate last;

  private record Line(Place place, String day, String session, String verdict) {
    String from() {
      return place.file() + ":" + place.line();
    }
  }

  /** Takes in what came of a file. */
  void add(Received received, List<Decision> decisions) {
    List<Line> its = new ArrayList<>();
    for (Decision decision : decisions) {
      Incoming session = decision.session();
      String left =
          decision.left().isEmpty()
              ? ""
              : ", without " + decision.left() + " (its day is on one line)";
      boolean later = decision.taken() && (last == null || session.date().isAfter(last));
      last = later ? session.date() : last;
      taken += decision.taken() ? 1 : 0;
      skipped += decision.taken() ? 0 : 1;
      its.add(
          new Line(
              session.from(),
              day(session.date()),
              words(session),
              decision.taken() ? "added" + left : "skipped: " + decision.why()));
    }
    for (Received.Passed passed : received.passed()) {
      skipped++;
      its.add(new Line(passed.from(), "", passed.what(), "skipped: " + passed.why()));
    }
    its.sort(Comparator.comparing(Line::place));
    lines.addAll(its);
  }

  int taken() {
    return taken;
  }

  /** The last day that anything was added to; null when nothing was. */
  @Nullable LocalDate last() {
    return last;
  }

  static String day(LocalDate date) {
    return DAY.format(date);
  }

  /** {@code run 49min 8.9km rpe5 142bpm}. */
  static String words(Incoming session) {
    StringBuilder words = new StringBuilder();
    for (Map.Entry<String, YamlValue> entry : session.keys().entries().entrySet()) {
      if (LONG.contains(entry.getKey()) || !(entry.getValue() instanceof YamlValue.Text text)) {
        continue;
      }
      String label =
          switch (entry.getKey()) {
            case "swim", "bike", "run", "strength", "other", "climb", "held" ->
                entry.getKey() + " ";
            case "rpe" -> "rpe";
            default -> "";
          };
      words.append(words.isEmpty() ? "" : " ").append(label).append(text.text());
    }
    String all = Printable.of(words.toString());
    return all.codePointCount(0, all.length()) <= WIDEST_SESSION
        ? all
        : all.substring(0, all.offsetByCodePoints(0, WIDEST_SESSION - 1)) + "…";
  }

  /**
   * The table with its sum below.
   *
   * @param done what was done with the file, in a sentence
   */
  String text(String done) {
    int session = lines.stream().mapToInt(line -> line.session().length()).max().orElse(0);
    int from = lines.stream().mapToInt(line -> line.from().length()).max().orElse(0);
    StringBuilder text = new StringBuilder();
    for (Line line : lines) {
      text.append(
          String.format(
              Locale.ROOT,
              "%-14s  %-" + Math.max(1, session) + "s  %-" + Math.max(1, from) + "s  %s\n",
              line.day(),
              line.session(),
              Printable.of(line.from()),
              Printable.of(line.verdict())));
    }
    return text.toString() + taken + " added, " + skipped + " skipped. " + done + "\n";
  }
}
