package peakproof.report;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import peakproof.fact.Rehearsed;
import peakproof.fact.Words;

/** What was rehearsed, how often and when, and when it will be. */
record LedgerPart(List<Line> lines) {
  private static final int NAMED = 3;

  /** A thing of the race; {@code done} and {@code planned} are how often. */
  record Line(String what, String done, String last, int planned, String next) {}

  static LedgerPart of(List<Rehearsed> rehearsed) {
    return new LedgerPart(rehearsed.stream().map(LedgerPart::line).toList());
  }

  private static Line line(Rehearsed thing) {
    List<LocalDate> done = thing.done();
    List<LocalDate> planned = thing.planned();
    String count = String.valueOf(done.size());
    return new Line(
        thing.what(),
        thing.unsaid() ? (done.isEmpty() ? "?" : count + " or more") : count,
        done.isEmpty() && thing.unsaid()
            ? "the log does not tell"
            : days(done.subList(Math.max(0, done.size() - NAMED), done.size())),
        planned.size(),
        days(planned.subList(0, Math.min(NAMED, planned.size())))
            + (planned.size() > NAMED ? ", …" : ""));
  }

  private static String days(List<LocalDate> dates) {
    return dates.stream().map(Words::day).collect(Collectors.joining(", "));
  }
}
