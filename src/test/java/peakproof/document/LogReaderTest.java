package peakproof.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;

class LogReaderTest {
  private static final String PLAN = Texts.PLAN + "  weeks: []\n";

  private static Dossier dossier(String days) {
    String log =
        "log:\n  format: 1\n  complete-since: 2027-03-22\n  weeks: {2027-05-10: lighter}\n  days:\n";
    return Texts.dossier(PLAN, Texts.EVENT, log + days.indent(4), null);
  }

  private static Log.Day day(Dossier dossier, String date) {
    return Objects.requireNonNull(
        Objects.requireNonNull(dossier.log()).days().get(LocalDate.parse(date)));
  }

  private static Log.Day day(String text) {
    return day(dossier("2027-05-30: " + text), "2027-05-30");
  }

  @Test
  void readsALongDay() {
    Log.Day day =
        day(
            dossier(
                """
                2027-05-29:
                  sessions:
                    - bike: 4h52
                      distance: 141km
                      rpe: 5
                      heart-rate: 129bpm
                      power: 148W
                      then: {run: 25min, distance: 4.6km, rpe: 6}
                    - swim: 10x100 race r15s
                      time: 34min
                      held: 1:50/100m
                      last-quarter: 1:53/100m
                  morning: {sleep: 6h30, fatigue: 6, soreness: 5, mood: 6, stress: 4.5, resting-heart-rate: 53bpm}
                  pain: [{site: left achilles, level: 4, when: running, next-morning: worse, signs: [limp]}]
                  ill: {signs: [sore-throat], fever: no, kind: cold, over: 2027-06-01}
                  medicine: [painkiller]
                  missed: {sessions: 1, because: work}
                """),
            "2027-05-29");
    Session ride = day.sessions().get(0);
    assertThat(ride.set()).isNull();
    assertThat(ride.recorded())
        .isEqualTo(new Session.Recorded(17_520.0, 141_000.0, 5.0, 129.0, 148.0, null, null));
    assertThat(Objects.requireNonNull(ride.then()).at())
        .isEqualTo("/log/days/2027-05-29/sessions/0/then");
    Session swim = day.sessions().get(1);
    assertThat(Objects.requireNonNull(swim.set()).parts()).hasSize(1);
    assertThat(swim.recorded())
        .isEqualTo(new Session.Recorded(2_040.0, null, null, null, null, 1.1, 1.13));
    assertThat(day.morning()).isEqualTo(new Log.Morning(23_400.0, 6.0, 5.0, 6.0, 4.5, 53.0));
    assertThat(day.pain())
        .containsExactly(
            new Log.Pain(
                "/log/days/2027-05-29/pain/0",
                "left achilles",
                4.0,
                "running",
                "worse",
                Set.of("limp")));
    assertThat(day.ill())
        .isEqualTo(
            new Log.Ill(
                "/log/days/2027-05-29/ill",
                Set.of("sore-throat"),
                false,
                "cold",
                LocalDate.of(2027, 6, 1)));
    assertThat(day.medicine()).containsExactly("painkiller");
    assertThat(day.missed()).isEqualTo(new Log.Missed(1, "work"));
  }

  @Test
  void readsADayOnOneLine() {
    Log.Day day = day("run 1h31 15.9km rpe4 138bpm; sleep 7h15; fatigue 4");
    Session run = day.sessions().get(0);
    assertThat(run.sport()).isEqualTo(Sport.RUN);
    assertThat(run.recorded())
        .isEqualTo(new Session.Recorded(5_460.0, 15_900.0, 4.0, 138.0, null, null, null));
    assertThat(day.morning()).isEqualTo(new Log.Morning(26_100.0, 4.0, null, null, null, null));
    assertThat(day.rest()).isFalse();
  }

  @Test
  void joinsSessionsThatFollowStraightAfter() {
    Dossier dossier =
        dossier("2027-05-30: 'swim 1500 + bike 4h 120km 148W + run 20min; strength 15min rpe4'");
    Log.Day day = day(dossier, "2027-05-30");
    assertThat(day.sessions()).hasSize(2);
    Session swim = day.sessions().get(0);
    assertThat(swim.recorded().metres()).isEqualTo(1_500);
    Session run = Objects.requireNonNull(Objects.requireNonNull(swim.then()).then());
    assertThat(run.at()).isEqualTo("/log/days/2027-05-30/sessions/0/then/then");
    assertThat(dossier.positions().of(run.at())).hasToString("log.yaml:6:51");
    assertThat(dossier.positions().of("/log/days/2027-05-30/sessions/1"))
        .hasToString("log.yaml:6:62");
  }

  @Test
  void readsRestAndMissedDays() {
    assertThat(day("rest").rest()).isTrue();
    assertThat(day("rest; sleep 8h").morning()).isNotNull();
    assertThat(day("{rest: yes, morning: {sleep: 7h30}}").rest()).isTrue();
    assertThat(day("missed work").missed()).isEqualTo(new Log.Missed(null, "work"));
    assertThat(day("missed 2 illness").missed()).isEqualTo(new Log.Missed(2, "illness"));
    assertThat(day("missed").missed()).isEqualTo(new Log.Missed(null, null));
    assertThat(day("other 40min easy walk").sessions().get(0).note()).isEqualTo("easy walk");
  }

  @Test
  void keepsHowWeeksWereMeantAndSortsDays() {
    Log log = Objects.requireNonNull(dossier("2027-05-30: rest\n2027-05-29: rest\n").log());
    assertThat(log.completeSince()).isEqualTo(LocalDate.of(2027, 3, 22));
    assertThat(log.weeks()).isEqualTo(Map.of(LocalDate.of(2027, 5, 10), "lighter"));
    assertThat(log.days().keySet())
        .containsExactly(LocalDate.of(2027, 5, 29), LocalDate.of(2027, 5, 30));
  }

  @Test
  void takesTheClubsOwnWords() {
    String log =
        "log:\n  format: 1\n  days:\n    2027-05-29: {sessions: [{run: 40min, kit: [visor]}]}\n";
    String house =
        """
        house:
          format: 1
          name: Tidemill Tri
          preset: by-athlete
          settings: {swim-open-water-weekly: {swims-per-week: 2}, measures: {taper-reference-weeks: 4}}
          severity: {strength-none: ASK}
          silenced: [{rule: swim-bilateral, because: we teach it in winter}]
          lists: {kit: [visor]}
          sessions: {tuesday-fives: "20min easy, 5x5min hard r3min, 15min easy"}
        """;
    Dossier dossier = Texts.dossier(PLAN, Texts.EVENT, log, house);
    assertThat(day(dossier, "2027-05-29").sessions().get(0).wear().has("visor")).isTrue();
    House read = Objects.requireNonNull(dossier.house());
    assertThat(read.name()).isEqualTo("Tidemill Tri");
    assertThat(read.severity())
        .isEqualTo(
            Map.of("strength-none", new Plan.SettingText("/house/severity/strength-none", "ASK")));
    assertThat(read.silenced())
        .isEqualTo(
            List.of(
                new House.Silenced(
                    "/house/silenced/0", "swim-bilateral", "we teach it in winter")));
    assertThat(read.settings().keySet()).containsExactly("swim-open-water-weekly", "measures");
    assertThat(read.preset()).isEqualTo("by-athlete");
    assertThat(Texts.faults(PLAN, Texts.EVENT, log, null)).hasSize(1);
  }
}
