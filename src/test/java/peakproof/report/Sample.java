package peakproof.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Audit;
import peakproof.audit.Audit.AcceptedFinding;
import peakproof.audit.Audit.NotFor;
import peakproof.audit.Audit.NotJudged;
import peakproof.audit.Audit.Silenced;
import peakproof.audit.Finding;
import peakproof.audit.Finding.Location;
import peakproof.audit.Finding.Value;
import peakproof.document.Place;
import peakproof.document.WaterTable;
import peakproof.rule.Hold;
import peakproof.rule.MeasureSettings;
import peakproof.rule.Preset;
import peakproof.rule.Presets;
import peakproof.rule.Resolution.Changed;
import peakproof.rule.Resolution.Chosen;
import peakproof.rule.Ruleset;
import peakproof.rule.Severity;

/** Audits written by hand, for tests of what people see. */
public final class Sample {
  private static final LocalDate RACE = LocalDate.parse("2027-07-04");
  private static final String FOLDER = "plans/runa/";

  private Sample() {}

  /** One athlete with something of everything. */
  public static Audit runa() {
    return new Audit(
        FOLDER + "plan.yaml",
        FOLDER + "log.yaml",
        "Runa Halvorsen",
        "Saltmarsh Long Course",
        RACE,
        LocalDate.parse("2027-05-30"),
        LocalDate.parse("2027-05-27"),
        "3 peak + 2 taper weeks",
        List.of(
            pain(),
            openWater(),
            finding("run-session-spike", Severity.FIX),
            finding("fuel-plan-missing", Severity.ASK),
            finding("swim-skills-sighting", Severity.ASK),
            finding("swim-bilateral", Severity.NOTE)),
        List.of("brick-none", "taper-missing"),
        List.of(
            new NotJudged("bike-race-effort-block", List.of("athlete.heart-rate.max"), false),
            new NotJudged(
                "run-race-pace-too-fast", List.of("athlete.heart-rate.max", "goal.run"), false),
            new NotJudged("fluid-overplan", List.of("race-day.fuel"), true)),
        List.of(new NotFor("swim-set-impossible", "no swim set with a send-off")),
        List.of(
            new Silenced("swim-in-company", "we always swim together", false),
            new Silenced("swim-alone-open-water", "the club lake is watched all day", true)),
        List.of(
            new AcceptedFinding(
                finding("strength-none", Severity.ASK),
                "physiotherapist has her exercises",
                "MK",
                LocalDate.parse("2027-06-22"))),
        new Chosen(Preset.EXPERIENCED, "the plan says so"),
        List.of(
            new Changed("preset", "swim-wetsuit-rehearsal", "swims 1", false),
            new Changed("house", "strength-none", "severity ASK", false),
            new Changed("house", "swim-open-water-none", "severity FIX", true),
            new Changed("plan", "run-longest-too-long", "longest 3h", false)),
        List.of("changes", "medicines"),
        List.of("log entries after Sun 30 May were not read"),
        Set.of("run-pain-rule", "sleep-short"));
  }

  /** An audit of this athlete with these findings and nothing else. */
  public static Audit audit(String athlete, @Nullable String log, List<Finding> findings) {
    return new Audit(
        "plans/" + athlete + "/plan.yaml",
        log,
        athlete,
        "Saltmarsh Long Course",
        RACE,
        LocalDate.parse("2027-05-30"),
        log == null ? null : LocalDate.parse("2027-05-30"),
        "3 peak + 2 taper weeks",
        findings,
        List.of("brick-none", "taper-missing"),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        new Chosen(Preset.DEFAULT, "nothing else fits"),
        List.of(),
        List.of(),
        List.of(),
        Set.of("run-pain-rule", "sleep-short"));
  }

  static Finding pain() {
    return new Finding(
        "run-pain-rule",
        Severity.HOLD,
        Hold.HURT,
        "health",
        "Running planned on a painful tendon",
        "5 x 1 km hard on 31 May; left achilles 6/10 on 29 May, worse on the 30th (house limit 5/10,"
            + " or worse next morning).",
        "Make it 40 min easy on soft ground, or aqua running; hard work goes to Tuesday's ride.",
        "Pain that lasts into the next day, swells or changes the stride needs a physiotherapist or"
            + " doctor before the next hard run.",
        "cohort",
        List.of("Silbernagel KG, 2007, Am J Sports Med 35:897"),
        Map.of(
            "level", new Value(6.0, "6/10", ""),
            "site", new Value(null, "left achilles", ""),
            "run", new Value(7.25, "7.25km", "km")),
        List.of(
            new Location(
                new Place(FOLDER + "plan.yaml", 52, 13), LocalDate.parse("2027-05-31"), null),
            new Location(
                new Place(FOLDER + "log.yaml", 31, 7), LocalDate.parse("2027-05-29"), null),
            new Location(
                new Place(FOLDER + "log.yaml", 40, 7), LocalDate.parse("2027-05-30"), null)),
        "9f1c",
        LocalDate.parse("2027-05-31"));
  }

  static Finding openWater() {
    return new Finding(
        "swim-open-water-weekly",
        Severity.FIX,
        null,
        "swim",
        "No open-water swim this week",
        "The week of 14 June has 0 open-water swims; the house asks for 1.",
        "Turn one pool session into a supervised open-water swim.",
        "In company, with a bright cap and a float. Never alone.",
        "expert-practice",
        List.of(),
        Map.of("swims-per-week", new Value(1.0, "1", "swims")),
        List.of(
            new Location(
                new Place(FOLDER + "plan.yaml", 80, 7), null, LocalDate.parse("2027-06-14"))),
        "77aa",
        LocalDate.parse("2027-06-20"));
  }

  /** A short finding of a rule. */
  public static Finding finding(String rule, Severity severity) {
    return new Finding(
        rule,
        severity,
        severity == Severity.HOLD ? Hold.RULES : null,
        "load",
        "Found by " + rule,
        "Reason of " + rule + ".",
        "Remedy of " + rule + ".",
        null,
        "arithmetic",
        List.of(),
        Map.of(),
        List.of(new Location(new Place(FOLDER + "plan.yaml", 9, 3), null, null)),
        "fp-" + rule,
        RACE);
  }

  /** Rules without any card. */
  static Ruleset noRules() {
    return new Ruleset(
        Map.of(),
        Map.of(),
        () -> {
          throw new IllegalStateException("nothing is judged");
        },
        Map.of(),
        new MeasureSettings(Map.of()),
        new WaterTable(List.of()),
        new Presets(Map.of()),
        Map.of(),
        Map.of(),
        Set.of(),
        List.of());
  }
}
