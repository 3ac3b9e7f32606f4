package peakproof.fact;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import peakproof.document.Dossier;
import peakproof.document.Texts;
import peakproof.document.WaterTable;
import peakproof.measure.Calibration;
import peakproof.measure.Constants;
import peakproof.measure.ShippedConstants;

/** Timelines and facts of plans and logs that a test writes out. */
final class Timelines {
  private static final String HALF =
      "{name: Weiherburg Half, date: 2027-07-11, legs: {swim: 1.9km, bike: 90km, run: 21.1km}}";

  private Timelines() {}

  /** A plan for a half on Sunday, 11 July 2027, with these lines below its event. */
  static String plan(String lines) {
    return plan("{name: Lena Brandl}", HALF, lines);
  }

  static String plan(String athlete, String lines) {
    return plan(athlete, HALF, lines);
  }

  static String plan(String athlete, String event, String lines) {
    return "plan:\n  format: 1\n  athlete: "
        + athlete
        + "\n  event: "
        + event
        + "\n"
        + lines.indent(2);
  }

  /** A log of these days, complete since the day given. */
  static String log(String completeSince, String days) {
    return "log:\n  format: 1\n  complete-since: " + completeSince + "\n  days:\n" + days.indent(4);
  }

  /** A log of these days and no others. */
  static String log(String days) {
    return "log:\n  format: 1\n  days:\n" + days.indent(4);
  }

  static Timeline of(String plan, @Nullable String log, String asOf) {
    return of(plan, log, asOf, ShippedConstants.constants());
  }

  static Timeline of(String plan, @Nullable String log, String asOf, Constants constants) {
    Dossier dossier = Texts.dossier(plan, null, log, null);
    LocalDate date = LocalDate.parse(asOf);
    Calibration calibration = Calibration.of(dossier.plan(), dossier.log(), date, constants);
    return new Timeline(dossier, date, calibration, constants);
  }

  static Facts facts(String plan, @Nullable String log, String asOf) {
    return Facts.of(
        Texts.dossier(plan, null, log, null),
        LocalDate.parse(asOf),
        ShippedConstants.constants(),
        new WaterTable(List.of()));
  }

  static Span span(Timeline timeline, String first, String last) {
    return new Span(timeline, LocalDate.parse(first), LocalDate.parse(last));
  }

  /** The session of a day that is written as the first, second, … of that kind, from 0. */
  static <S extends Session> S session(Timeline timeline, Class<S> kind, String date, int index) {
    Day day = Objects.requireNonNull(timeline.at(LocalDate.parse(date)));
    return day.sessions().stream()
        .filter(kind::isInstance)
        .map(kind::cast)
        .skip(index)
        .findFirst()
        .orElseThrow();
  }

  static Ride ride(Timeline timeline, String date) {
    return session(timeline, Ride.class, date, 0);
  }

  static Run run(Timeline timeline, String date) {
    return session(timeline, Run.class, date, 0);
  }
}
