package peakproof.report;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import peakproof.audit.Audit;
import peakproof.audit.Finding.Location;
import peakproof.document.Place;

/** Files and lines as a coach reads them: from the plan's own folder, under their day or week. */
final class Places {
  /** More than these tell a reader nothing new about where to start. */
  private static final int ENOUGH = 4;

  private final Path folder;
  private final LocalDate race;

  Places(Audit audit) {
    this(audit.plan(), audit.raceDate());
  }

  /** Of a plan's path and the date whose year needs no saying. */
  Places(String plan, LocalDate race) {
    Path parent = Path.of(plan).normalize().getParent();
    this.folder = parent == null ? Path.of("") : parent;
    this.race = race;
  }

  /** {@code Mon 31 May, plan.yaml:52}, each day or week once; beyond a few only their number. */
  List<String> of(List<Location> locations, boolean all) {
    Map<String, Set<String>> byTime = new LinkedHashMap<>();
    int told = 0;
    int left = 0;
    for (Location location : locations) {
      if (all || told < ENOUGH) {
        Set<String> lines = byTime.computeIfAbsent(time(location), time -> new LinkedHashSet<>());
        told += lines.add(line(location.place())) ? 1 : 0;
      } else {
        left++;
      }
    }
    List<String> items = new ArrayList<>();
    byTime.forEach((time, lines) -> items.add(Lines.bound(item(time, lines))));
    if (left > 0) {
      items.add(Lines.bound(left + (left == 1 ? " more place" : " more places")));
    }
    return items;
  }

  /** The file as seen from the plan's folder. */
  String file(String file) {
    Path path = Path.of(file).normalize();
    if (path.isAbsolute() != folder.isAbsolute() || folder.startsWith("..")) {
      return file;
    }
    return folder.relativize(path).toString().replace('\\', '/');
  }

  /** {@code plan.yaml:52}. */
  String line(Place place) {
    return file(place.file()) + ":" + place.line();
  }

  /** The day or week of a location; empty for neither. */
  String time(Location location) {
    LocalDate date = location.date();
    if (date != null) {
      return Dates.day(date, race);
    }
    LocalDate week = location.week();
    return week == null ? "" : Dates.week(week, race);
  }

  private static String item(String time, Set<String> lines) {
    String places = String.join(", ", lines);
    return time.isEmpty() ? places : time + ", " + places;
  }
}
