package peakproof.report;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import peakproof.audit.Finding.Location;
import peakproof.fact.Sheet;
import peakproof.report.Report.Ranked;
import peakproof.rule.Severity;

/**
 * Which finding is pinned where on the block sheet: to its days, to the heads of its weeks, or, of
 * neither, beside the sheet.
 */
final class Pins {
  static final String NOWHERE = "no-day";

  private final Set<String> places = new LinkedHashSet<>();
  private final Map<String, List<Pin>> pins = new LinkedHashMap<>();

  /** A finding where it is pinned. */
  record Pin(int order, Severity severity, String title, String theme) {}

  Pins(Report report, Sheet sheet) {
    LocalDate race = report.audit().raceDate();
    for (Sheet.Column week : sheet.weeks()) {
      places.add(week(week.starts()));
      week.days().forEach(day -> places.add(day(day.date())));
    }
    if (places.contains(week(race.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY))))) {
      places.add(day(race));
    }
    report.ranked().forEach(this::pin);
  }

  private void pin(Ranked ranked) {
    Set<String> its = new LinkedHashSet<>();
    ranked.finding().where().stream().map(this::place).forEach(its::add);
    if (its.size() > 1) {
      its.remove(NOWHERE);
    }
    if (its.isEmpty()) {
      its.add(NOWHERE);
    }
    Pin pin =
        new Pin(
            ranked.order(),
            ranked.finding().severity(),
            ranked.finding().title(),
            ranked.finding().theme());
    its.forEach(place -> pins.computeIfAbsent(place, none -> new ArrayList<>()).add(pin));
  }

  /** The name of the place on the page that a location belongs to. */
  String place(Location location) {
    LocalDate date = location.date();
    LocalDate week = location.week();
    String named = date != null ? day(date) : week != null ? week(week) : NOWHERE;
    return places.contains(named) ? named : NOWHERE;
  }

  /** What is pinned to a place, in order. */
  List<Pin> at(String place) {
    return pins.getOrDefault(place, List.of());
  }

  static String day(LocalDate date) {
    return "d-" + date;
  }

  static String week(LocalDate monday) {
    return "w-" + monday;
  }
}
