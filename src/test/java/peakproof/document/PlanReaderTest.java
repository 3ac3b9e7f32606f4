package peakproof.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.Year;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;

class PlanReaderTest {
  private static Plan plan(String lines) {
    return Texts.dossier(Texts.PLAN + lines, Texts.EVENT, null, null).plan();
  }

  private static PlanDay day(PlanWeek week, DayOfWeek day) {
    return Objects.requireNonNull(week.days().get(day));
  }

  @Test
  void leavesUnsaidThingsUnknown() {
    Plan plan = plan("  weeks: []\n");
    assertThat(plan.goal()).isNull();
    assertThat(plan.block()).isNull();
    assertThat(plan.raceDay()).isNull();
    assertThat(plan.athlete().massKg()).isNull();
    assertThat(plan.athlete().health())
        .isEqualTo(new Athlete.Health(null, null, List.of(), Set.of(), null));
    assertThat(plan.event().swim().water()).isNull();
    assertThat(plan.changes()).isEmpty();
  }

  @Test
  void readsYearOrDateOfBirth() {
    String lines = "  weeks: []\n";
    String born = Texts.PLAN.replace("{name: Tove Lindqvist}", "{name: Tove, born: BORN}") + lines;
    Athlete year =
        Texts.dossier(born.replace("BORN", "1988"), Texts.EVENT, null, null).plan().athlete();
    Athlete date =
        Texts.dossier(born.replace("BORN", "1988-02-03"), Texts.EVENT, null, null).plan().athlete();
    assertThat(year.bornYear()).isEqualTo(Year.of(1988));
    assertThat(date.bornDate()).isEqualTo(LocalDate.of(1988, 2, 3));
  }

  @Test
  void sortsWeeksAndKeepsTheirPlace() {
    List<PlanWeek> weeks =
        plan("  weeks:\n    - starts: 2027-06-07\n    - starts: 2027-05-31\n").weeks();
    assertThat(weeks).extracting(PlanWeek::at).containsExactly("/plan/weeks/1", "/plan/weeks/0");
  }

  @Test
  void readsDays() {
    PlanWeek week =
        plan("""
                  weeks:
                    - starts: 2027-05-31
                      hours: 13h30
                      without: {swim: pool closed}
                      days:
                        mon: rest
                        tue:
                          - rest
                        wed:
                          - rest: yes
                          - warning: smoke
                          - warning: ice
                        thu:
                          - other: 40min walk on the beach
                            note: with the dog
                          - strength: 15min
                            for: [core, balance]
                            load: light
                            new: yes
                        sat:
                          - race: Reedmere Sprint
                            effort: controlled
                            legs: {swim: 750m, bike: 20km, run: 5km}
                """)
            .weeks()
            .get(0);
    assertThat(week.hours()).isEqualTo(48_600);
    assertThat(week.without()).isEqualTo(Map.of("swim", "pool closed"));
    assertThat(day(week, DayOfWeek.MONDAY).rest()).isTrue();
    assertThat(day(week, DayOfWeek.TUESDAY).rest()).isTrue();
    assertThat(day(week, DayOfWeek.WEDNESDAY).warnings()).containsExactly("smoke", "ice");
    List<Session> thursday = day(week, DayOfWeek.THURSDAY).sessions();
    assertThat(thursday.get(0).sport()).isEqualTo(Sport.OTHER);
    assertThat(thursday.get(0).note()).isEqualTo("walk on the beach; with the dog");
    assertThat(Objects.requireNonNull(thursday.get(1).set()).parts().get(0).work())
        .isEqualTo(new SetLine.Time(900));
    assertThat(thursday.get(1).strength())
        .isEqualTo(new Session.Strength(Set.of("core", "balance"), "light"));
    assertThat(thursday.get(1).fresh()).isTrue();
    Session race = day(week, DayOfWeek.SATURDAY).sessions().get(0);
    assertThat(race.sport()).isNull();
    assertThat(race.race()).isEqualTo("Reedmere Sprint");
    assertThat(race.effort()).isEqualTo("controlled");
    assertThat(race.legs()).isEqualTo(new Event.Legs(750.0, 20_000.0, 5_000.0));
    assertThat(day(week, DayOfWeek.SATURDAY).at()).isEqualTo("/plan/weeks/0/days/sat");
  }

  @Test
  void readsEverythingASessionCanSay() {
    Session session =
        day(
                plan("""
                          weeks:
                            - starts: 2027-05-31
                              days:
                                sat:
                                  - swim: |
                                      400 easy
                                      1200 race
                                    where: open-water
                                    company: group
                                    water: 16.5C
                                    air: 14C
                                    light: dusk
                                    traffic: quiet
                                    surface: wet
                                    climb: 100ft
                                    descent: 0m
                                    heat: yes
                                    fasted: true
                                    test: no
                                    optional: yes
                                    purpose: back-to-back
                                    medicine: painkiller
                                    at: pm
                                    kit: []
                                    practise: [sighting]
                                    aero: 0min
                        """)
                    .weeks()
                    .get(0),
                DayOfWeek.SATURDAY)
            .sessions()
            .get(0);
    assertThat(session.scene())
        .isEqualTo(
            new Session.Scene(
                "open-water", "group", 16.5, 14.0, 30.48, 0.0, "dusk", "quiet", "wet", true));
    assertThat(session.wear()).isEqualTo(new Session.Wear(Set.of(), Set.of("sighting"), 0.0));
    assertThat(session.fuel()).isEqualTo(new Session.Fuel(null, null, null, Set.of(), true));
    assertThat(session.time()).isEqualTo(LocalTime.of(17, 0));
    assertThat(session.test()).isFalse();
    assertThat(session.optional()).isTrue();
    assertThat(session.recorded()).isEqualTo(Session.Recorded.NOTHING);
    assertThat(Objects.requireNonNull(session.set()).parts()).hasSize(2);
  }

  @Test
  void fillsInALikeWeekWhateverTheOrder() {
    List<PlanWeek> weeks =
        plan("""
                  weeks:
                    - starts: 2027-06-14
                      like: 2027-06-07
                      but:
                        sun: [{run: 1h easy}]
                    - starts: 2027-05-31
                      focus: peak
                      days:
                        mon: [{swim: 400 easy}]
                        sun: [{run: 1h30 easy}]
                    - starts: 2027-06-07
                      like: 2027-05-31
                      but: {sun: rest, tue: [{bike: 1h easy}]}
                """)
            .weeks();
    PlanWeek second = weeks.get(1);
    assertThat(second.focus()).isNull();
    assertThat(second.days().keySet())
        .containsExactly(DayOfWeek.MONDAY, DayOfWeek.TUESDAY, DayOfWeek.SUNDAY);
    assertThat(day(second, DayOfWeek.SUNDAY).sessions()).isEmpty();
    assertThat(day(second, DayOfWeek.MONDAY).at()).isEqualTo("/plan/weeks/1/days/mon");
    assertThat(day(second, DayOfWeek.TUESDAY).at()).isEqualTo("/plan/weeks/2/but/tue");
    PlanWeek third = weeks.get(2);
    assertThat(third.days()).hasSize(3);
    assertThat(day(third, DayOfWeek.SUNDAY).at()).isEqualTo("/plan/weeks/0/but/sun");
    assertThat(day(third, DayOfWeek.TUESDAY).at()).isEqualTo("/plan/weeks/2/but/tue");
  }

  @Test
  void tellsACircleOfLikeWeeksOnce() {
    String weeks =
        """
          weeks:
            - starts: 2027-06-14
              like: 2027-06-07
            - starts: 2027-05-31
              like: 2027-06-14
            - starts: 2027-06-07
              like: 2027-05-31
            - starts: 2027-06-21
              like: 2027-06-07
        """;
    assertThat(Texts.faults(Texts.PLAN + weeks))
        .containsExactly(
            "plan.yaml:9:7: 'like' leads back to this week, by 2027-05-31, 2027-06-14, 2027-06-07; expected a week that is written out in the end; write the days of one of them");
  }

  @Test
  void tellsOneFaultWhenTheStartOfALikedWeekIsWrong() {
    String weeks =
        "  weeks:\n    - starts: 2027-06-xx\n    - {starts: 2027-06-14, like: 2027-06-07}\n";
    assertThat(Texts.faults(Texts.PLAN + weeks))
        .hasSize(1)
        .first()
        .asString()
        .contains("2027-06-xx");
  }

  @Test
  void readsWhatIsPlannedForTheRace() {
    Plan plan =
        plan(
            """
              weeks: []
              goal: {swim: 70min, bike: 6:00:00, transitions: 10min, bike-effort: 205W}
              block: {peak-weeks: 3, taper-weeks: 2}
              race-day:
                fuel:
                  bike: {carbohydrate: 80g/h, sources: [glucose, fructose], fluid: 20floz/h}
                caffeine: 0mg
                warm-up: 8min in the water
                wetsuit: {worn: no, thickness: 5mm}
                carries: 1.5l
                first-use: [new visor]
              travel: {arrive: 2027-07-01T14:00, zones: -6}
              changes: [{date: 2027-05-20, what: saddle}]
              aims: [weight-loss]
              settings: {run-longest-too-long: {longest: 3h, because: slow runner}}
              accepted:
                - {rule: swim-open-water-weekly, week: 2027-06-14, because: closed, by: MK, until: 2027-06-22}
            """);
    assertThat(Objects.requireNonNull(plan.goal()).swim()).isEqualTo(4_200);
    assertThat(Objects.requireNonNull(plan.goal()).bikeEffort()).isEqualTo(new Target.Power(205));
    Plan.RaceDay day = Objects.requireNonNull(plan.raceDay());
    assertThat(day.caffeine()).isZero();
    assertThat(day.wetsuitWorn()).isFalse();
    assertThat(day.wetsuitMillimetres()).isEqualTo(5);
    assertThat(day.runFuel()).isNull();
    assertThat(Objects.requireNonNull(day.bikeFuel()).sources())
        .containsExactly("glucose", "fructose");
    assertThat(Objects.requireNonNull(plan.travel()).zones()).isEqualTo(-6);
    assertThat(plan.settings())
        .isEqualTo(
            Map.of(
                "run-longest-too-long",
                Map.of(
                    "longest",
                        new Plan.SettingText("/plan/settings/run-longest-too-long/longest", "3h"),
                    "because",
                        new Plan.SettingText(
                            "/plan/settings/run-longest-too-long/because", "slow runner"))));
    assertThat(plan.accepted().get(0).until()).isEqualTo(LocalDate.of(2027, 6, 22));
  }

  @Test
  void readsAnEventInsideThePlan() {
    String plan =
        """
        plan:
          format: 1
          athlete: {name: Tove Lindqvist}
          event:
            name: Reedmere
            date: 2027-07-04
            legs: {swim: 1500m, bike: 40km, run: 10km}
            rule-book: {name: own, forbidden-above: 24.6C}
          weeks: []
        """;
    Dossier dossier = Texts.dossier(plan, null, null, null);
    assertThat(dossier.plan().event().name()).isEqualTo("Reedmere");
    assertThat(Objects.requireNonNull(dossier.plan().event().ruleBook()).forbiddenAbove())
        .isEqualTo(24.6);
    assertThat(dossier.positions().of("/event/legs/run")).hasToString("plan.yaml:7:37");
    assertThat(dossier.positions().of("/plan/event")).hasToString("plan.yaml:4:3");
  }

  @Test
  void saysWhenTheEventIsNotGiven() {
    assertThat(Texts.faults(Texts.PLAN + "  weeks: []\n", null, null, null))
        .containsExactly(
            "plan.yaml:4:10: the event 'event.yaml' is not given; expected the event beside the plan; write the event into the plan");
  }

  @Test
  void knowsWhereEverythingStands() {
    String plan =
        Texts.PLAN
            + """
              weeks:
                - starts: 2027-05-31
                  days:
                    sat:
                      - rest
                      - swim: 1200 race
                        then:
                          bike: 1h race
                          then: {run: 20min race}
            """;
    String log = "log:\n  format: 1\n  days:\n    2027-05-29: {sessions: [{run: 40min}]}\n";
    Positions positions =
        Texts.dossier(plan, Texts.EVENT, log, "house:\n  format: 1\n  name: Tidemill Tri\n")
            .positions();
    assertThat(positions.of("/plan/weeks/0")).hasToString("plan.yaml:6:7");
    assertThat(positions.of("/plan/weeks/0/days/sat")).hasToString("plan.yaml:8:9");
    assertThat(positions.of("/plan/weeks/0/days/sat/1")).hasToString("plan.yaml:10:13");
    assertThat(positions.of("/plan/weeks/0/days/sat/1/then/then")).hasToString("plan.yaml:13:15");
    assertThat(positions.of("/plan/weeks/0/days/sat/1/where")).hasToString("plan.yaml:10:13");
    assertThat(positions.of("/plan/athlete/mass")).hasToString("plan.yaml:3:3");
    assertThat(positions.of("/event/legs/bike")).hasToString("event.yaml:4:23");
    assertThat(positions.of("/log/days/2027-05-29/sessions/0")).hasToString("log.yaml:4:29");
    assertThat(positions.of("/house/name")).hasToString("house.yaml:3:3");
    assertThat(positions.of("/nothing")).hasToString("plan.yaml:1:1");
  }
}
