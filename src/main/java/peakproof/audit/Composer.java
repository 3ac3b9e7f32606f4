package peakproof.audit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import peakproof.document.Dossier;
import peakproof.fact.Fact;
import peakproof.fact.Grouped;
import peakproof.fact.Settings;
import peakproof.fact.Where;
import peakproof.fact.Words;
import peakproof.rule.Card;
import peakproof.rule.Severity;

/** Makes findings of a rule's reports: one per rule, or per body part or illness. */
final class Composer {
  private static final int DAYS_NAMED = 4;

  private final Dossier dossier;
  private final List<Fact> single;
  private final Severities severities;

  Composer(Dossier dossier, List<Fact> single, Severities severities) {
    this.dossier = dossier;
    this.single = single;
    this.severities = severities;
  }

  List<Finding> compose(
      Card card, Settings settings, List<Reports.Report> reports, Judge.Open open) {
    Map<String, List<Reports.Report>> groups = new TreeMap<>();
    for (Reports.Report report : reports) {
      groups.computeIfAbsent(group(report), group -> new ArrayList<>()).add(report);
    }
    return groups.entrySet().stream()
        .map(entry -> finding(card, settings, entry.getKey(), entry.getValue(), open))
        .toList();
  }

  private static String group(Reports.Report report) {
    return Stream.of(report.fact(), report.because())
        .filter(fact -> fact instanceof Grouped)
        .map(fact -> ((Grouped) fact).group())
        .findFirst()
        .orElse("");
  }

  private Finding finding(
      Card card, Settings settings, String group, List<Reports.Report> reports, Judge.Open open) {
    List<Reports.Report> ordered = reports.stream().sorted(order(card)).toList();
    Reports.Report first = ordered.get(0);
    Severity severity = severities.of(card, first);
    Wording wording = new Wording(card, settings, first, single);
    String why = wording.fill(card.why()) + also(ordered) + notJudged(open);
    return new Finding(
        card.rule(),
        severity,
        severity == Severity.HOLD ? card.hold() : null,
        card.theme(),
        card.title(),
        why,
        wording.fill(card.remedy()),
        card.care() == null ? null : wording.fill(card.care()),
        card.grade().word(),
        card.sources(),
        wording.values(),
        locations(ordered),
        Fingerprint.of(
            card.rule(),
            dossier.plan().athlete().name(),
            dossier.plan().event().date(),
            group.isEmpty() ? null : group),
        bites(first));
  }

  private Comparator<Reports.Report> order(Card card) {
    return Comparator.comparing((Reports.Report report) -> severities.of(card, report))
        .thenComparing(this::bites)
        .thenComparing(report -> dossier.positions().of(report.fact().where().get(0).pointer()))
        .thenComparing(report -> String.valueOf(report.fact()));
  }

  /**
   * The day a report bites: the last day to put it right, its own day, its week's end, the race.
   */
  private LocalDate bites(Reports.Report report) {
    LocalDate race = dossier.plan().event().date();
    LocalDate last = report.fact().bites();
    if (last != null) {
      return last;
    }
    Where where = report.fact().where().get(0);
    if (where.date() != null) {
      return where.date();
    }
    LocalDate sunday = where.week() == null ? race : where.week().plusDays(6);
    return sunday.isBefore(race) ? sunday : race;
  }

  /** The other days or weeks of the same finding, in a few words. */
  private static String also(List<Reports.Report> ordered) {
    Set<String> others = new LinkedHashSet<>();
    for (Reports.Report report : ordered) {
      others.add(when(report.fact().where().get(0)));
    }
    others.remove(when(ordered.get(0).fact().where().get(0)));
    others.remove("");
    if (others.isEmpty()) {
      return "";
    }
    List<String> named = others.stream().limit(DAYS_NAMED).toList();
    String more =
        others.size() > DAYS_NAMED ? " and " + (others.size() - DAYS_NAMED) + " more" : "";
    return " The same: " + String.join(", ", named) + more + ".";
  }

  private static String when(Where where) {
    if (where.date() != null) {
      return Words.weekday(where.date());
    }
    return where.week() == null ? "" : "week of " + Words.day(where.week());
  }

  private static String notJudged(Judge.Open open) {
    return (open.weeks().isEmpty() ? "" : " Not judged yet: " + Words.missing(open.weeks()) + ".")
        + (open.entries().isEmpty()
            ? ""
            : " Elsewhere not judged without " + String.join(" and ", open.entries()) + ".");
  }

  private List<Finding.Location> locations(List<Reports.Report> ordered) {
    Set<Finding.Location> places = new LinkedHashSet<>();
    for (Reports.Report report : ordered) {
      report.fact().where().forEach(where -> places.add(location(where)));
    }
    ordered.stream()
        .map(Reports.Report::because)
        .filter(Objects::nonNull)
        .flatMap(fact -> fact.where().stream())
        .forEach(where -> places.add(location(where)));
    return List.copyOf(places);
  }

  private Finding.Location location(Where where) {
    return new Finding.Location(
        dossier.positions().of(where.pointer()), where.date(), where.week());
  }
}
