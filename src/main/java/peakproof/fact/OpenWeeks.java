package peakproof.fact;

import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The weeks of which something can still be changed or is still to be written, by phase. */
public final class OpenWeeks {
  private final boolean phasesKnown;
  private final boolean openWithoutPhase;
  private final Set<Phase> open = EnumSet.noneOf(Phase.class);
  private final List<Week> unwritten;

  OpenWeeks(List<Week> weeks) {
    phasesKnown = weeks.stream().anyMatch(week -> week.phase() != null);
    openWithoutPhase = weeks.stream().anyMatch(week -> week.phase() == null && week.open());
    weeks.stream().filter(Week::open).map(Week::phase).forEach(this::add);
    unwritten = weeks.stream().filter(Week::partlyUnwritten).toList();
  }

  private void add(@Nullable Phase phase) {
    if (phase != null) {
      open.add(phase);
    }
  }

  /** True when it is known that all weeks of these phases are over. */
  public boolean over(Set<Phase> phases) {
    return phasesKnown && !openWithoutPhase && phases.stream().noneMatch(open::contains);
  }

  /** The weeks that are not written yet, in words, of these phases; of all when there is none. */
  public Set<String> notWritten(Set<Phase> phases) {
    Set<String> missing = new LinkedHashSet<>();
    for (Week week : unwritten) {
      Phase phase = week.phase();
      if (phases.isEmpty() || phase != null && phases.contains(phase)) {
        missing.add(Timeline.notWritten(week.starts()));
      }
    }
    return missing;
  }
}
