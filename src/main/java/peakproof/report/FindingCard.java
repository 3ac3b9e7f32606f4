package peakproof.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Finding;
import peakproof.audit.Finding.Location;
import peakproof.report.Report.Ranked;
import peakproof.rule.Hold;
import peakproof.rule.Severity;

/**
 * A finding as it stands on a page.
 *
 * @param hold what holding is about; null below HOLD
 * @param spots where it is on the sheet, and in which lines of which file
 * @param open true when a reader sees all of it at once
 */
record FindingCard(
    int order,
    Severity severity,
    String title,
    String rule,
    String theme,
    @Nullable String hold,
    String why,
    String remedy,
    @Nullable String care,
    String evidence,
    List<Spot> spots,
    boolean open) {

  /**
   * A day or week with its lines.
   *
   * @param time null for what belongs to none
   * @param place its name on the page
   */
  record Spot(@Nullable String time, String place, String lines) {}

  static List<FindingCard> all(Report report, Report usual, Pins pins) {
    Places places = new Places(report.audit());
    return report.ranked().stream()
        .map(ranked -> of(ranked, usual.shown().contains(ranked), pins, places))
        .toList();
  }

  private static FindingCard of(Ranked ranked, boolean open, Pins pins, Places places) {
    Finding finding = ranked.finding();
    Hold hold = finding.hold();
    return new FindingCard(
        ranked.order(),
        finding.severity(),
        finding.title(),
        finding.rule(),
        finding.theme(),
        hold == null ? null : TextPage.spoken(hold),
        finding.why(),
        finding.remedy(),
        finding.care(),
        Evidence.of(finding),
        spots(finding.where(), pins, places),
        open);
  }

  static List<Spot> spots(List<Location> where, Pins pins, Places places) {
    Map<List<String>, Set<String>> lines = new LinkedHashMap<>();
    for (Location location : where) {
      List<String> key = List.of(places.time(location), pins.place(location));
      lines.computeIfAbsent(key, none -> new LinkedHashSet<>()).add(places.line(location.place()));
    }
    List<Spot> spots = new ArrayList<>();
    lines.forEach(
        (key, its) ->
            spots.add(
                new Spot(
                    key.get(0).isEmpty() ? null : key.get(0), key.get(1), String.join(", ", its))));
    return spots;
  }
}
