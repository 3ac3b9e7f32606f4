package peakproof.begin;

import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Audit;
import peakproof.audit.Auditor;
import peakproof.document.Athlete;
import peakproof.document.Documents;
import peakproof.document.Dossier;
import peakproof.document.Plan;
import peakproof.document.Reading;
import peakproof.measure.DistanceClass;
import peakproof.rule.Resolution;
import peakproof.rule.Severity;

/**
 * A plan's skeleton: weeks with sessions from what the athlete did lately to the race, by the
 * numbers of the house, judged before it is handed out.
 */
public final class NewPlan implements Beginning {
  private final Path file;
  private final @Nullable Path house;
  private final Supplier<Auditor> auditor;

  /**
   * @param file where the plan will be
   * @param house the house file instead of the nearest one
   * @param auditor judges it; asked for once the answers are in
   */
  public NewPlan(Path file, @Nullable Path house, Supplier<Auditor> auditor) {
    this.file = file;
    this.house = house;
    this.auditor = auditor;
  }

  /** What has to be known, whatever the file. */
  public static List<Item> asked() {
    return PlanItems.ALL;
  }

  @Override
  public List<Item> items() {
    return PlanItems.ALL;
  }

  @Override
  public Draft draft(Answers answers) {
    PlanHead head = new PlanHead(answers, file);
    Reading bare = Documents.readAs(file, head.bare(), house);
    Dossier dossier = bare.dossier();
    if (dossier == null) {
      return new Draft.Refused(reasons(bare));
    }
    LocalDate begins = PlanTime.begins(answers.text("starts"), dossier.plan().event().date());
    String trouble = trouble(dossier.plan(), begins);
    return trouble == null
        ? drafted(dossier, begins, answers, head)
        : new Draft.Refused(List.of(trouble));
  }

  private static @Nullable String trouble(Plan plan, LocalDate begins) {
    Athlete.Available available = plan.athlete().available();
    Set<DayOfWeek> daysOff = available == null ? Set.of() : available.daysOff();
    return PlanTime.trouble(begins, plan.event().date(), daysOff);
  }

  private Draft drafted(Dossier dossier, LocalDate begins, Answers answers, PlanHead head) {
    Auditor judge = auditor.get();
    DistanceClass distance =
        DistanceClass.of(dossier.plan().event(), resolved(judge, dossier).constants());
    if (distance == null) {
      return new Draft.Refused(
          List.of("the event does not say which distance it is; write 'distance: full' into it"));
    }
    HouseNumbers numbers = new HouseNumbers(judge.rules(), resolved(judge, dossier).settings());
    Profile profile = Objects.requireNonNull(Profile.of(answers.required("profile")));
    Brief brief = new Brief(dossier.plan(), distance, profile, begins, numbers);
    return drafted(judge, brief, head, block(answers, brief));
  }

  private static List<String> reasons(Reading reading) {
    return List.of(Objects.requireNonNull(Item.first(reading.faults())));
  }

  private static Resolution resolved(Auditor judge, Dossier dossier) {
    return Resolution.of(judge.rules(), dossier);
  }

  private static Plan.Block block(Answers answers, Brief brief) {
    Plan.Block given = brief.plan().block();
    return answers.text("block") == null || given == null
        ? new Plan.Block("", brief.profile().peakWeeks, brief.profile().taperWeeks)
        : given;
  }

  private Draft drafted(Auditor judge, Brief brief, PlanHead head, Plan.Block block) {
    int peaks = Objects.requireNonNull(block.peakWeeks());
    int tapers = Objects.requireNonNull(block.taperWeeks());
    Skeleton skeleton = new Skeleton(brief, peaks, tapers);
    String text = head.whole(brief, block, skeleton);
    Reading reading = Documents.readAs(file, text, house);
    if (reading.dossier() == null) {
      return new Draft.Refused(reasons(reading));
    }
    List<String> remarks = new ArrayList<>(skeleton.shortfalls());
    remarks.addAll(judged(judge.audit(reading, null)));
    return new Draft.Written(text, remarks);
  }

  private static List<String> judged(Auditor.Outcome outcome) {
    if (outcome instanceof Auditor.Outcome.Judged judged) {
      return told(judged.audit());
    }
    return outcome instanceof Auditor.Outcome.Wrong wrong
        ? wrong.faults().stream().map(Object::toString).toList()
        : List.of(((Auditor.Outcome.Stopped) outcome).rule().toString());
  }

  private static List<String> told(Audit audit) {
    List<String> told = new ArrayList<>();
    told.add(
        "audited as of "
            + audit.asOf()
            + ": "
            + audit.count(Severity.HOLD)
            + " hold "
            + audit.count(Severity.FIX)
            + " fix "
            + audit.count(Severity.ASK)
            + " ask "
            + audit.count(Severity.NOTE)
            + " note found");
    audit.findings().stream()
        .filter(finding -> finding.severity() != Severity.NOTE)
        .forEach(finding -> told.add(finding.severity() + ": " + finding.title()));
    return told;
  }
}
