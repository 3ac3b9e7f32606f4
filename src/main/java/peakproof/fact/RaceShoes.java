package peakproof.fact;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import peakproof.document.Plan;

/**
 * The shoes of the race. A log that never lists kit on runs does not tell which shoes were worn; a
 * plan is taken at its word.
 */
public final class RaceShoes implements Fact {
  private static final String WORD = "race-shoes";
  private static final String ENTRY = "kit of the runs in the log";

  private final String pointer;
  private final boolean named;
  private final @Nullable LocalDate since;
  private final boolean logged;

  private RaceShoes(String pointer, boolean named, @Nullable LocalDate since, boolean logged) {
    this.pointer = pointer;
    this.named = named;
    this.since = since;
    this.logged = logged;
  }

  static RaceShoes of(Plan plan, List<Session> sessions) {
    LocalDate since =
        plan.changes().stream()
            .filter(change -> change.what().equals("shoes"))
            .map(Plan.Change::date)
            .max(LocalDate::compareTo)
            .orElse(null);
    Set<String> firstUse = plan.raceDay() == null ? Set.of() : plan.raceDay().firstUse();
    boolean named =
        since != null
            || firstUse.contains(WORD)
            || sessions.stream().anyMatch(session -> session.kit().contains(WORD));
    boolean logged =
        sessions.stream()
            .anyMatch(s -> s instanceof Run && !s.planned() && s.written.wear().kit() != null);
    return new RaceShoes(plan.at(), named, since, logged);
  }

  /** True when plan or log speak of race shoes, or of a change of shoes. */
  public boolean named() {
    return named;
  }

  /** Runs in them, since the newest change of shoes. */
  Tally runs(List<Run> runs) {
    return Tally.count(runs, this::worn, ENTRY);
  }

  /** Kilometres in them, since the newest change of shoes. */
  Tally km(List<Run> runs) {
    double km = 0;
    boolean doubt = false;
    for (Run run : runs) {
      Boolean worn = worn(run);
      Double its = run.km();
      km += Boolean.TRUE.equals(worn) && its != null ? its : 0;
      doubt |= worn == null || worn && its == null;
    }
    return new Tally(Exact.of(km), doubt ? ENTRY + ", and their distance" : null);
  }

  private @Nullable Boolean worn(Run run) {
    if (since != null && run.date().isBefore(since)) {
      return false;
    }
    boolean listed = run.written.wear().kit() != null;
    return run.planned() || listed || logged ? (Boolean) run.kit().contains(WORD) : null;
  }

  @Override
  public List<Where> where() {
    return List.of(new Where(pointer, null, null));
  }
}
