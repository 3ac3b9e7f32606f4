package peakproof.fact;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import peakproof.document.Plan;

/**
 * A change of the bike or of what is worn on it: one the plan declares, or race wheels or a race
 * helmet listed for the first time on a ride to come, where earlier rides list kit without them.
 *
 * @param what in words
 * @param daysToRace days before race day
 * @param done true once its day is over
 * @param fit true for saddle, cleats, crank, bars and position
 * @param equipment true for wheels, tyres and helmet
 */
public record EquipmentChange(
    Where entry,
    String what,
    LocalDate date,
    double daysToRace,
    boolean done,
    boolean fit,
    boolean equipment)
    implements Fact {
  private static final Set<String> FIT = Set.of("saddle", "cleats", "crank", "bars", "position");
  private static final Set<String> EQUIPMENT = Set.of("wheels", "tyres", "helmet");
  private static final String RACE = "race-";

  static List<EquipmentChange> all(Plan plan, Timeline timeline) {
    List<EquipmentChange> changes = new ArrayList<>();
    for (Plan.Change change : plan.changes()) {
      if (!change.date().isAfter(timeline.raceDate())) {
        Where entry = new Where(change.at(), change.date(), null);
        changes.add(of(entry, change.what(), change.date(), timeline));
      }
    }
    for (String what : List.of("wheels", "helmet")) {
      Session first = firstPlanned(RACE + what, timeline);
      if (first != null && plan.changes().stream().noneMatch(c -> c.what().equals(what))) {
        changes.add(of(first.where().get(0), "race " + what, first.date(), timeline));
      }
    }
    return changes;
  }

  private static EquipmentChange of(Where entry, String what, LocalDate date, Timeline timeline) {
    return new EquipmentChange(
        entry,
        what,
        date,
        ChronoUnit.DAYS.between(date, timeline.raceDate()),
        date.isBefore(timeline.firstChangeable()),
        FIT.contains(what),
        EQUIPMENT.contains(what.replaceFirst("race ", "")));
  }

  /** The first ride with it, when that is still to come and an earlier one lists other kit. */
  private static @Nullable Session firstPlanned(String kit, Timeline timeline) {
    List<Session> listing =
        timeline
            .sessions()
            .filter(session -> session instanceof Ride && !session.kit().isEmpty())
            .toList();
    Session first = listing.stream().filter(s -> s.kit().contains(kit)).findFirst().orElse(null);
    return first != null && first.planned() && listing.get(0).date().isBefore(first.date())
        ? first
        : null;
  }

  @Override
  public List<Where> where() {
    return List.of(entry);
  }
}
