package peakproof.audit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Predicate;
import java.util.stream.Stream;
import peakproof.audit.Pliable.Spot;
import peakproof.document.Documents;
import peakproof.document.Dossier;
import peakproof.document.Reading;
import peakproof.rule.Case;
import peakproof.rule.Resolution;

/** Plan, event and log that can be changed at will, and judged. */
final class PliableDossier {
  private final Map<String, Object> plan;
  private final Map<String, Object> event;
  private final Map<String, Object> log;
  private LocalDate asOf;

  private PliableDossier(Object plan, Object event, Object log, LocalDate asOf) {
    this.plan = Pliable.map(plan);
    this.event = Pliable.map(event);
    this.log = Pliable.map(log);
    this.asOf = asOf;
  }

  static PliableDossier of(Case sound) {
    return new PliableDossier(
        Pliable.of(sound.plan()),
        Pliable.of(sound.event()),
        Pliable.of(Objects.requireNonNull(sound.log())),
        sound.asOf());
  }

  PliableDossier copy() {
    return new PliableDossier(Pliable.copy(plan), Pliable.copy(event), Pliable.copy(log), asOf);
  }

  void move(int days) {
    asOf = asOf.plusDays(days);
  }

  Map<String, Object> plan() {
    return Pliable.map(plan.get("plan"));
  }

  Map<String, Object> event() {
    return Pliable.map(event.get("event"));
  }

  Map<String, Object> logDays() {
    return Pliable.map(Pliable.map(log.get("log")).get("days"));
  }

  List<Object> weeks() {
    return Pliable.list(plan().get("weeks"));
  }

  /** The sessions of each day: those of the log, then those planned. */
  List<List<Object>> days() {
    List<List<Object>> days = new ArrayList<>();
    logDays().values().forEach(day -> add(Pliable.map(day).get("sessions"), days));
    for (Object week : weeks()) {
      Object written = Pliable.map(week).get("days");
      if (written instanceof Map<?, ?> map) {
        map.values().forEach(day -> add(day, days));
      }
    }
    return days;
  }

  private static void add(Object sessions, List<List<Object>> days) {
    if (sessions instanceof List<?>) {
      days.add(Pliable.list(sessions));
    }
  }

  /** Every entry of a kind, in all three documents. */
  List<Spot> spots(Predicate<Spot> kind) {
    return Stream.of(plan, event, log)
        .flatMap(document -> Pliable.spots(document).stream())
        .filter(kind)
        .toList();
  }

  /** Written to files in another way and judged. */
  Auditor.Outcome judgedRewritten() {
    return new PliableDossier(reread(plan), reread(event), reread(log), asOf).judged();
  }

  private static Object reread(Map<String, Object> document) {
    return Pliable.read(Pliable.rewritten(document));
  }

  /** Judged as it stands. */
  Auditor.Outcome judged() {
    Reading reading =
        Documents.read(
            "plan.yaml",
            Pliable.tree(plan, "plan.yaml"),
            Pliable.tree(event, "event.yaml"),
            Pliable.tree(log, "log.yaml"),
            null);
    Dossier dossier = reading.dossier();
    return dossier == null
        ? new Auditor.Outcome.Wrong(reading.faults())
        : Shipped.auditor().audit(dossier, Resolution.of(Shipped.auditor().rules(), dossier), asOf);
  }
}
