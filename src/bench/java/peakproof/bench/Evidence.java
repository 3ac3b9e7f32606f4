package peakproof.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import peakproof.document.Plan;
import peakproof.fact.Brick;
import peakproof.fact.Fact;
import peakproof.fact.Facts;
import peakproof.fact.Need;
import peakproof.fact.Phase;
import peakproof.fact.RideEffort;
import peakproof.fact.Run;
import peakproof.fact.Session;
import peakproof.fact.Settings;
import peakproof.fact.Strength;
import peakproof.fact.Stretch;
import peakproof.fact.SwimSet;
import peakproof.fact.Week;
import peakproof.fact.Window;
import peakproof.measure.DistanceClass;

/** The facts of one plan by kind, as checks written by hand look at them. */
final class Evidence {
  final Facts facts;
  final List<SwimSet> swimSets = new ArrayList<>();
  final List<RideEffort> rideEfforts = new ArrayList<>();
  final List<Brick> bricks = new ArrayList<>();
  final List<Run> runs = new ArrayList<>();
  final List<Strength> strength = new ArrayList<>();
  final List<Session> sessions = new ArrayList<>();
  final List<Stretch> stretches = new ArrayList<>();
  private final Plan plan;

  Evidence(Facts facts, Plan plan) {
    this.facts = facts;
    this.plan = plan;
    facts.all().forEach(this::sort);
  }

  private void sort(Fact fact) {
    if (fact instanceof Session session) {
      sessions.add(session);
      if (session instanceof Run run) {
        runs.add(run);
      } else if (session instanceof Strength work) {
        strength.add(work);
      }
    } else if (fact instanceof SwimSet set) {
      swimSets.add(set);
    } else if (fact instanceof RideEffort effort) {
      rideEfforts.add(effort);
    } else if (fact instanceof Brick brick) {
      bricks.add(brick);
    } else if (fact instanceof Stretch stretch) {
      stretches.add(stretch);
    }
  }

  /** True when all of these entries are known; what that means is a need's own affair. */
  boolean knows(String... needs) {
    for (String need : needs) {
      if (!facts.needs().met(Need.of(need))) {
        return false;
      }
    }
    return true;
  }

  boolean openWater() {
    return facts.race().water() != null && facts.race().openWater();
  }

  /** True when the race is known to be over one of these. */
  boolean over(DistanceClass... distances) {
    return facts.race().distance() != null && Set.of(distances).contains(facts.race().distance());
  }

  /** False for an athlete who covers the run leg on wheels. */
  boolean onFoot() {
    String device = plan.athlete().para() == null ? null : plan.athlete().para().device();
    return !"wheelchair".equals(device) && !"handcycle".equals(device);
  }

  /** True unless the athlete is known to race in another category. */
  boolean mayBeOf(String category) {
    return plan.athlete().category() == null || plan.athlete().category().equals(category);
  }

  /** Uninterrupted peak weeks that are known whole. */
  Stream<Week> wholePeakWeeks() {
    return facts.weeks().stream()
        .filter(week -> week.phase() == Phase.PEAK && week.known() && !week.interrupted());
  }

  /** The days a rule looks at; null once they are over. */
  @Nullable Window window(Settings settings) {
    Settings.Value days = Objects.requireNonNull(settings.values().get("window"));
    Window window = facts.window(settings.rule(), "window", days.number(), days.until());
    return window.changeable() ? window : null;
  }

  /** The window when what it lacks is surely lacking, judged by these fields; else nothing. */
  static Stream<Window> surely(Window window, String... fields) {
    return window.doubts(Set.of(fields)).isEmpty() ? Stream.of(window) : Stream.empty();
  }
}
