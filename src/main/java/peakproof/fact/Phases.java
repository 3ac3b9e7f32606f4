package peakproof.fact;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import peakproof.document.Plan;
import peakproof.document.PlanWeek;

/** What each week is for: its focus, else the block counted back from race week. */
final class Phases {
  private final Plan.@Nullable Block block;
  private final LocalDate raceWeek;
  private final LocalDate raceDate;
  private final Map<LocalDate, String> focus = new HashMap<>();

  Phases(Plan plan, Map<LocalDate, String> logged) {
    this.block = plan.block();
    this.raceDate = plan.event().date();
    this.raceWeek = Week.monday(raceDate);
    focus.putAll(logged);
    for (PlanWeek week : plan.weeks()) {
      if (week.focus() != null) {
        focus.put(week.starts(), week.focus());
      }
    }
  }

  @Nullable Phase of(LocalDate monday) {
    String said = focus.get(monday);
    if (said != null) {
      return Phase.valueOf(said.toUpperCase(Locale.ROOT));
    }
    Integer taper = block == null ? null : block.taperWeeks();
    Integer peak = block == null ? null : block.peakWeeks();
    long weeksToRace = ChronoUnit.WEEKS.between(monday, raceWeek);
    if (monday.isAfter(raceDate)) {
      return null;
    }
    if (weeksToRace == 0 || taper != null && weeksToRace < taper) {
      return Phase.TAPER;
    }
    if (taper == null || peak == null) {
      return null;
    }
    return weeksToRace < taper + peak ? Phase.PEAK : Phase.BUILD;
  }
}
