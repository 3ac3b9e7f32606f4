package peakproof.fact;

import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Dossier;
import peakproof.document.Log;
import peakproof.document.Plan;

/** Where someone may come to harm: signs of health, and what is done in spite of them. */
final class HealthFacts {
  private final Plan plan;
  private final @Nullable Log log;
  private final Timeline timeline;
  private final Race race;
  private final List<Illness> illnesses;
  private final List<Comeback> comebacks;
  private final List<WarnedSession> warned;
  private final List<ColdSwim> coldSwims;
  private final @Nullable Sleep sleep;
  private final @Nullable TaperStart taperStart;
  private final HealthFile file;

  HealthFacts(Dossier dossier, Timeline timeline, Race race) {
    this.plan = dossier.plan();
    this.log = dossier.log();
    this.timeline = timeline;
    this.race = race;
    this.illnesses = Symptoms.illnesses(log, plan.athlete().health(), timeline.asOf(), race.date());
    this.comebacks = Comeback.all(timeline, illnesses);
    this.warned = WarnedSession.all(timeline);
    this.coldSwims = ColdSwim.all(timeline);
    this.sleep = Sleep.of(log, timeline);
    this.taperStart = TaperStart.of(plan, log, timeline);
    this.file = HealthFile.of(plan.athlete());
  }

  /** How ready the athlete is by the last mornings. */
  Readiness readiness() {
    return Readiness.of(
        log, timeline.asOf(), race.date(), timeline.calibration().heartRateUsable());
  }

  void addTo(Gathered facts) {
    facts.addAll(Missed.in(log, timeline.asOf()));
    List<Pain> pains = Symptoms.pains(log, timeline.asOf(), race.date());
    facts.addAll(pains);
    facts.addAll(illnesses);
    facts.addAll(comebacks);
    facts.addAll(PlannedMedicine.all(plan, timeline));
    facts.addAll(warned);
    facts.addAll(coldSwims);
    facts.addAll(EnergyCut.all(plan, timeline, race));
    facts.addAll(HealthSign.all(illnesses, pains, timeline.asOf()));
    facts.add(file);
    facts.add(sleep);
    facts.add(taperStart);
    facts.add(ParaFile.of(plan.athlete()));
  }

  /** Sessions on days with an official warning. */
  List<WarnedSession> warned() {
    return warned;
  }

  /** Swims to come in cold water. */
  List<ColdSwim> coldSwims() {
    return coldSwims;
  }

  /** True when every swim to come in open water says how warm its water is. */
  boolean saysWater() {
    return timeline
        .sessions()
        .noneMatch(
            session ->
                session instanceof Swim swim
                    && swim.planned()
                    && swim.openWater()
                    && swim.celsius() == null);
  }

  /** The last seven nights; null without a recent one. */
  @Nullable Sleep sleep() {
    return sleep;
  }

  /** How the athlete comes to the taper; null away from its start. */
  @Nullable TaperStart taperStart() {
    return taperStart;
  }

  /** True when it is known on which day the taper starts. */
  boolean knowsTaperStart() {
    return TaperStart.starts(timeline) != null;
  }

  /** What the plan's health entries say. */
  HealthFile file() {
    return file;
  }

  /** True when the first week back can be told after every illness after which that is asked. */
  boolean knowsFirstWeeks() {
    return comebacks.stream()
        .filter(comeback -> !comeback.firstWeekKnown())
        .noneMatch(
            comeback ->
                illnesses.stream()
                    .anyMatch(
                        illness ->
                            illness.from().equals(comeback.from())
                                && illness.viral()
                                && !illness.cleared()));
  }
}
