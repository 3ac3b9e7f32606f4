package peakproof.begin;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Audit;
import peakproof.audit.Auditor;
import peakproof.document.Documents;
import peakproof.document.Dossier;
import peakproof.document.Plan;
import peakproof.document.Reading;
import peakproof.measure.DistanceClass;
import peakproof.rule.Resolution;
import peakproof.rule.Ruleset;
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
    Reading bare = Documents.read(file, head.bare(), house);
    Dossier dossier = bare.dossier();
    if (dossier == null) {
      return new Draft.Refused(reasons(bare));
    }
    Auditor judge = auditor.get();
    DistanceClass distance =
        DistanceClass.of(dossier.plan().event(), resolved(judge, dossier).constants());
    if (distance == null) {
      return new Draft.Refused(
          List.of("the event does not say which distance it is; write 'distance: full' into it"));
    }
    Brief brief = brief(judge, dossier, distance, answers);
    String trouble = PlanTime.trouble(brief);
    return trouble == null
        ? drafted(judge, brief, head, block(answers, brief))
        : new Draft.Refused(List.of(trouble));
  }

  private static List<String> reasons(Reading reading) {
    return List.of(Objects.requireNonNull(Item.first(reading.faults())));
  }

  private static Resolution resolved(Auditor judge, Dossier dossier) {
    return Resolution.of(judge.rules(), dossier);
  }

  private static Brief brief(
      Auditor judge, Dossier dossier, DistanceClass distance, Answers answers) {
    Ruleset rules = judge.rules();
    HouseNumbers numbers = new HouseNumbers(rules, resolved(judge, dossier).settings());
    Profile profile = Objects.requireNonNull(Profile.of(answers.required("profile")));
    return new Brief(
        dossier.plan(),
        distance,
        profile,
        PlanTime.begins(answers.text("starts"), dossier.plan().event().date()),
        numbers);
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
    Reading reading = Documents.read(file, text, house);
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
