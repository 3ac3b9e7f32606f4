package peakproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import peakproof.rule.Severity;

/** The columns of a roster in text; what does not fit into one goes on below it. */
final class RosterTable {
  private static final int NAME = 18;
  private static final int DAYS = 4;
  private static final int LOG = 6;
  private static final int NEXT = 20;
  private static final int COUNT = 3;
  private static final int BESIDE_TITLE =
      4 + 1 + NAME + DAYS + 2 + COUNT * Severity.values().length + 2 + LOG + 2 + NEXT;

  private final int title;

  /** For lines of a width, the severity's word in front. */
  RosterTable(int width) {
    this.title = width - BESIDE_TITLE;
  }

  /** The line above them. */
  List<String> head() {
    List<String> counts = new ArrayList<>();
    for (Severity severity : Severity.values()) {
      counts.add(severity.name().substring(0, 1));
    }
    return row("    ", "athlete", "days", "first finding", counts, "log", "next key session");
  }

  /** A line's cells, without the word in front. */
  List<String> of(RosterLine line) {
    List<String> counts = new ArrayList<>();
    for (Severity severity : Severity.values()) {
      counts.add(line.found(severity) == 0 ? "·" : String.valueOf(line.found(severity)));
    }
    return row(
        "",
        line.athlete(),
        line.daysToGo() < 0 ? "over" : String.valueOf(line.daysToGo()),
        RosterWords.first(line),
        counts,
        RosterWords.logEnds(line),
        RosterWords.next(line));
  }

  private List<String> row(
      String before,
      String athlete,
      String days,
      String first,
      List<String> counts,
      String log,
      String next) {
    List<String> names = cut(athlete, NAME);
    List<String> titles = cut(first, title);
    List<String> ends = cut(log, LOG);
    List<String> sessions = cut(next, NEXT);
    int height =
        IntStream.of(names.size(), titles.size(), ends.size(), sessions.size()).max().orElse(1);
    List<String> rows = new ArrayList<>();
    for (int i = 0; i < height; i++) {
      StringBuilder row = new StringBuilder(before).append(' ');
      row.append(padded(names, i, NAME));
      row.append(i > 0 ? " ".repeat(DAYS) : right(days, DAYS)).append("  ");
      row.append(padded(titles, i, title));
      for (String count : counts) {
        row.append(i > 0 ? " ".repeat(COUNT) : right(count, COUNT));
      }
      row.append("  ").append(padded(ends, i, LOG));
      row.append("  ").append(padded(sessions, i, NEXT));
      rows.add(row.toString().stripTrailing());
    }
    return rows;
  }

  /** The words in lines of a column; here, unlike elsewhere, a long word is cut. */
  private static List<String> cut(String text, int width) {
    List<String> cut = new ArrayList<>();
    for (String line : Lines.wrapped("", 0, text, width)) {
      String rest = line;
      while (Lines.length(rest) > width) {
        int end = rest.offsetByCodePoints(0, width);
        cut.add(rest.substring(0, end));
        rest = rest.substring(end);
      }
      cut.add(rest);
    }
    return cut;
  }

  private static String padded(List<String> cells, int index, int width) {
    String cell = index < cells.size() ? cells.get(index) : "";
    return cell + " ".repeat(width - Lines.length(cell));
  }

  private static String right(String text, int width) {
    return String.format(Locale.ROOT, "%" + width + "s", text);
  }
}
