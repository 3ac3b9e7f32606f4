package peakproof.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import peakproof.audit.Audit;
import peakproof.audit.Finding;
import peakproof.rule.Severity;

class RosterTest {
  private static final int MOST_BYTES = 3_000_000;

  @Test
  void putsFirstWhoNeedsTheCoachFirst() {
    List<Audit> audits =
        new ArrayList<>(
            List.of(
                audit("Ann", found(Severity.HOLD, 2)),
                audit("Bo", found(Severity.HOLD, 1), found(Severity.FIX, 2)),
                audit("Cy", found(Severity.HOLD, 1), found(Severity.FIX, 1)),
                in(audit("Di", found(Severity.FIX, 4)), 10),
                audit("Ed", found(Severity.FIX, 4)),
                in(audit("Flo", found(Severity.FIX, 4)), -1),
                audit("Gil", found(Severity.NOTE, 9)),
                audit("Hal"),
                audit("Ida")));
    Random chance = new Random(1);
    for (int i = 0; i < 20; i++) {
      Collections.shuffle(audits, chance);
      assertThat(roster(audits).lines().stream().map(RosterLine::athlete))
          .containsExactly("Ann", "Bo", "Cy", "Di", "Ed", "Flo", "Gil", "Hal", "Ida");
    }
  }

  @Test
  void hasInCommonWhatThreeShare() {
    Finding finding = Sample.openWater();
    List<Audit> two = List.of(audit("A", List.of(finding)), audit("B", List.of(finding)));
    List<Audit> three = with(two, audit("C", List.of(finding)));
    assertThat(roster(with(two, audit("C"))).shared()).isEmpty();
    assertThat(roster(three).shared())
        .singleElement()
        .extracting(Shared::rule, Shared::athletes, Shared::of, Shared::share)
        .containsExactly("swim-open-water-weekly", 3, 3, "3 of 3");
  }

  @Test
  void hasInCommonWhatATenthOfALargeSquadShares() {
    List<Audit> squad =
        new ArrayList<>(
            IntStream.range(0, 4)
                .mapToObj(number -> audit("A" + number, List.of(Sample.openWater())))
                .toList());
    IntStream.range(0, 36).forEach(number -> squad.add(audit("B" + number)));
    assertThat(roster(squad).shared()).hasSize(1);
    squad.add(audit("C"));
    assertThat(roster(squad).shared()).isEmpty();
  }

  @Test
  void countsARuleOnceAnAthleteAndByItsUsualSeverity() {
    List<Audit> squad =
        List.of(
            audit("A", found("load-jump", Severity.HOLD), found("load-jump", Severity.ASK)),
            audit("B", found("load-jump", Severity.ASK)),
            audit("C", found("load-jump", Severity.ASK)));
    assertThat(roster(squad).shared())
        .singleElement()
        .extracting(Shared::severity, Shared::athletes)
        .containsExactly(Severity.ASK, 3);
  }

  @Test
  void readsTheHeavierFirstAndNotesNotAtAll() {
    List<Finding> all =
        List.of(
            Sample.finding("a", Severity.NOTE),
            Sample.finding("b", Severity.ASK),
            Sample.finding("c", Severity.ASK),
            Sample.finding("d", Severity.FIX),
            Sample.finding("e", Severity.HOLD));
    Roster roster = roster(List.of(audit("A", all), audit("B", all), audit("C", all)));
    assertThat(roster.shared().stream().map(Shared::rule)).containsExactly("e", "d", "b", "c", "a");
    assertThat(roster.sharedFirst().stream().map(Shared::rule)).containsExactly("e", "d", "b");
  }

  @Test
  void writesADraftWithoutNamesOrEntries() {
    Audit audit = audit("Runa Halvorsen", List.of(Sample.openWater()));
    assertThat(roster(List.of(audit, audit, audit)).shared().get(0).message())
        .isEqualTo(
            "This is for 3 of the 3 of us. No open-water swim this week. Turn one pool session into"
                + " a supervised open-water swim. Take care: In company, with a bright cap and a"
                + " float. Never alone.");
  }

  @Test
  void writesNoDraftOfWhatIsFoundInHealthEntriesWhateverItsTheme() {
    Audit audit = audit("Runa Halvorsen", List.of(Sample.openWater()));
    Roster.Entry entry = Roster.Entry.of(new Judged(audit, true), null, null);
    Roster roster = new Roster(List.of("a", "b", "c"), null);
    Roster.Entry ofHealth =
        new Roster.Entry(
            entry.rank(), entry.line(), entry.findings(), Set.of("swim-open-water-weekly"));
    IntStream.range(0, 3).forEach(athlete -> roster.add(ofHealth, null));
    Shared shared = roster.shared().get(0);
    assertThat(shared.theme()).isNotEqualTo("health");
    assertThat(shared.health()).isTrue();
    assertThat(shared.message()).isNull();
  }

  @Test
  void leavesOutOfADraftWhatIsAboutFilesUnlessNothingElseIsSaid() {
    assertThat(draft("Swim it. Write `kit` on it. Then rest."))
        .contains("Swim it. Then rest.")
        .doesNotContain("`");
    assertThat(draft("Swim it and write `kit`.")).contains("Swim it and write `kit`.");
  }

  @Test
  void draftsNothingOfHealthAndNamesNobodyForIt() {
    List<Audit> squad =
        Stream.of("A", "B", "C").map(name -> audit(name, List.of(Sample.pain()))).toList();
    Roster roster = roster(squad);
    assertThat(roster.shared().get(0).message()).isNull();
    assertThat(roster.shared().get(0).athletes()).isEqualTo(3);
    assertThat(RosterText.of(roster, true, 100, Ink.PLAIN)).doesNotContain("to the squad");
    assertThat(RosterPage.of(roster)).doesNotContain("<option value=\"0\"", "data-in=\"0\"");
  }

  @Test
  void draftsNothingWhereTheAdviceDiffers() {
    Roster roster =
        roster(
            List.of(
                audit("A", List.of(saying("Swim once."))),
                audit("B", List.of(saying("Swim twice."))),
                audit("C", List.of(saying("Swim once.")))));
    assertThat(roster.shared()).singleElement().extracting(Shared::message).isNull();
  }

  @Test
  void tellsWhatIsNewHeavierAndGone() {
    Audit then =
        audit(
            "A",
            List.of(
                Sample.finding("stays", Severity.ASK),
                Sample.finding("grows", Severity.ASK),
                Sample.finding("shrinks", Severity.FIX),
                Sample.finding("goes", Severity.NOTE)));
    Audit now =
        audit(
            "A",
            List.of(
                Sample.finding("stays", Severity.ASK),
                Sample.finding("grows", Severity.FIX),
                Sample.finding("shrinks", Severity.ASK),
                Sample.finding("comes", Severity.HOLD)));
    SinceDay since = SinceDay.of(LocalDate.parse("2027-05-23"), now, then);
    assertThat(since.compared()).isTrue();
    assertThat(since.added()).extracting(Headline::rule).containsExactly("comes");
    assertThat(since.heavier()).extracting(Headline::rule).containsExactly("grows");
    assertThat(since.gone()).extracting(Headline::rule).containsExactly("goes");
  }

  @Test
  void comparesNothingWithADayThatIsNotBefore() {
    Audit audit = audit("A", found("stays", Severity.ASK));
    assertThat(SinceDay.of(audit.asOf(), audit, audit).compared()).isFalse();
    assertThat(SinceDay.of(audit.asOf().minusDays(1), audit, null).compared()).isFalse();
    assertThat(SinceDay.of(audit.asOf().minusDays(1), audit, audit).compared()).isTrue();
  }

  @Test
  void saysWhenAnAuditIsIncomplete() {
    Roster roster = new Roster(List.of("plans/A/plan.yaml", "plans/B/plan.yaml"), null);
    roster.add(Roster.Entry.of(new Judged(audit("A"), false), null, null), null);
    assertThat(RosterText.of(roster, false, 120, Ink.PLAIN))
        .contains("nothing found (incomplete: a rule is broken)")
        .contains("not audited: plans/B/plan.yaml");
    assertThat(RosterPage.of(roster)).contains("is wrong: plans/B/plan.yaml");
  }

  @Test
  void fitsItsWidth() {
    Finding finding = Sample.finding("a".repeat(30), Severity.FIX);
    String name = "Wolfeschlegelsteinhausenbergerdorff Ng";
    Audit audit = audit(name, List.of(finding, Sample.pain(), Sample.openWater()));
    Roster roster = roster(List.of(audit, audit, audit));
    for (int width : List.of(60, 83, 84, 100, 140)) {
      assertThat(RosterText.of(roster, true, width, Ink.PLAIN).lines())
          .allMatch(line -> line.length() <= width);
    }
  }

  @Test
  void escapesWhatADocumentSays() {
    String name = "</td><script>alert(1)</script>\u202e\" onclick=\"x";
    String page = RosterPage.of(roster(List.of(audit(name))));
    assertThat(page)
        .contains("&lt;/td&gt;&lt;script&gt;alert(1)")
        .doesNotContain("<script>alert", "\u202e");
  }

  @Test
  void staysSmallForAThousandAthletes() {
    Random chance = new Random(2);
    List<Audit> squad = new ArrayList<>();
    for (int number = 0; number < 1000; number++) {
      List<Finding> findings = new ArrayList<>();
      for (int rule = 0; rule < 40; rule++) {
        if (chance.nextInt(3) == 0) {
          Severity severity = Severity.values()[chance.nextInt(4)];
          findings.add(Sample.finding("rule-with-a-usual-name-" + rule, severity));
        }
      }
      squad.add(audit("Athlete with a Name " + number, findings));
    }
    Roster roster = new Roster(List.of(), LocalDate.parse("2027-05-23"));
    for (Audit audit : squad) {
      Audit other = squad.get(chance.nextInt(squad.size()));
      roster.add(
          Roster.Entry.of(new Judged(audit, true), LocalDate.parse("2027-05-23"), other),
          "athlete-with-a-name-12345678.html");
    }
    assertThat(RosterPage.of(roster).getBytes(StandardCharsets.UTF_8))
        .hasSizeBetween(500_000, MOST_BYTES);
  }

  private static String draft(String remedy) {
    List<Finding> found = List.of(saying(remedy));
    return String.valueOf(
        roster(List.of(audit("A", found), audit("B", found), audit("C", found)))
            .shared()
            .get(0)
            .message());
  }

  private static Finding saying(String remedy) {
    Finding one = Sample.openWater();
    return new Finding(
        one.rule(),
        one.severity(),
        one.hold(),
        one.theme(),
        one.title(),
        one.why(),
        remedy,
        one.care(),
        one.grade(),
        one.sources(),
        one.values(),
        one.where(),
        one.fingerprint(),
        one.bites());
  }

  private static Roster roster(List<Audit> audits) {
    Roster roster = new Roster(audits.stream().map(Audit::plan).toList(), null);
    audits.forEach(audit -> roster.add(Roster.Entry.of(new Judged(audit, true), null, null), null));
    return roster;
  }

  private static List<Audit> with(List<Audit> audits, Audit more) {
    return Stream.concat(audits.stream(), Stream.of(more)).toList();
  }

  private static List<Finding> found(Severity severity, int count) {
    return IntStream.range(0, count)
        .mapToObj(number -> Sample.finding(severity + "-" + number, severity))
        .toList();
  }

  private static List<Finding> found(String rule, Severity severity) {
    return List.of(Sample.finding(rule, severity));
  }

  private static Audit audit(String athlete) {
    return audit(athlete, List.of());
  }

  private static Audit audit(String athlete, List<Finding> findings) {
    return Sample.audit(athlete, null, findings);
  }

  private static Audit audit(String athlete, List<Finding> some, List<Finding> more) {
    return audit(athlete, Stream.concat(some.stream(), more.stream()).toList());
  }

  /** The same athlete, so many days before the race. */
  private static Audit in(Audit audit, int days) {
    return new Audit(
        audit.plan(),
        audit.log(),
        audit.athlete(),
        audit.event(),
        audit.asOf().plusDays(days),
        audit.asOf(),
        audit.logEnds(),
        audit.shape(),
        audit.findings(),
        audit.clear(),
        audit.notJudged(),
        audit.notForThisPlan(),
        audit.silenced(),
        audit.accepted(),
        audit.preset(),
        audit.settings(),
        audit.notDeclared(),
        audit.remarks(),
        audit.ofHealth());
  }
}
