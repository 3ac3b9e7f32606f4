package peakproof.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Objects;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import peakproof.document.Documents;
import peakproof.document.Dossier;
import peakproof.document.Session;
import peakproof.document.SetLine;
import peakproof.document.Tree;
import peakproof.document.YamlTree;

/** Means by hand; the rider: critical power 200 W, 180 beats at the most, race effort 140 W. */
class HeldEffortTest {
  private static final Offset<Double> EXACT = within(1e-9);
  private static final Constants CONSTANTS = ShippedConstants.constants();

  @Test
  void weighsPartsByTheirMinutes() {
    HeldEffort held = planned("1h @70%cp, 2h @160W");
    assertThat(held.powerMinutes()).isEqualTo(180, EXACT);
    assertThat(held.powerShare()).isEqualTo((60 * 0.7 + 120 * 0.8) / 180, EXACT);
    assertThat(held.heartShare()).isNull();
    assertThat(held.open()).isFalse();
  }

  @Test
  void takesRaceEffortForTheGoals() {
    HeldEffort held = planned("30min easy, 3h race");
    assertThat(held.powerMinutes()).isEqualTo(180, EXACT);
    assertThat(held.powerShare()).isEqualTo(0.7, EXACT);
  }

  @Test
  void keepsPowerAndHeartRateApart() {
    HeldEffort held = planned("1h @150bpm, 2h @60%maxhr, 1h @200W");
    assertThat(held.heartMinutes()).isEqualTo(180, EXACT);
    assertThat(held.heartShare()).isEqualTo((60 * 150 / 180.0 + 120 * 0.6) / 180, EXACT);
    assertThat(held.powerMinutes()).isEqualTo(60, EXACT);
    assertThat(held.powerShare()).isEqualTo(1, EXACT);
  }

  @Test
  void leavesWordsAndRatingsAndRestsOut() {
    HeldEffort held = planned("1h easy, 2x(30min @90%cp r10min), 1h steady, 1h @rpe6");
    assertThat(held.powerMinutes()).isEqualTo(60, EXACT);
    assertThat(held.powerShare()).isEqualTo(0.9, EXACT);
    assertThat(held.open()).isFalse();
  }

  @Test
  void isOpenWhereTheAthletesFigureIsMissing() {
    String unknown = "";
    assertThat(planned("2h @150W", unknown, "").open()).isTrue();
    assertThat(planned("2h @150bpm", unknown, "").open()).isTrue();
    assertThat(planned("2h @65%hrr", unknown, "").open()).isTrue();
    assertThat(planned("2h race", unknown, "").open()).isTrue();
    assertThat(planned("2h @80%maxhr", unknown, "").heartShare()).isEqualTo(0.8, EXACT);
    assertThat(planned("2h steady", unknown, "").open()).isFalse();
  }

  @Test
  void readsNoHeartRateUnderABetaBlocker() {
    HeldEffort held =
        planned(
            "2h @80%maxhr",
            "    heart-rate: {max: 180bpm}\n    health: {conditions: [beta-blocker]}\n", "");
    assertThat(held.heartShare()).isNull();
    assertThat(held.open()).isTrue();
  }

  @Test
  void takesALoggedRideByItsPowerBeforeItsHeartRate() {
    HeldEffort held = logged("power: 150W, heart-rate: 171bpm", RIDER);
    assertThat(held.powerMinutes()).isEqualTo(240, EXACT);
    assertThat(held.powerShare()).isEqualTo(0.75, EXACT);
    assertThat(held.heartShare()).isNull();
  }

  @Test
  void takesALoggedRideByItsHeartRateButInHeat() {
    assertThat(logged("heart-rate: 153bpm", RIDER).heartMinutes()).isEqualTo(240, EXACT);
    assertThat(logged("heart-rate: 153bpm", RIDER).heartShare()).isEqualTo(0.85, EXACT);
    assertThat(logged("heart-rate: 153bpm, heat: yes", RIDER).heartShare()).isNull();
    assertThat(logged("heart-rate: 153bpm", RIDER).powerShare()).isNull();
    assertThat(logged("rpe: 5", RIDER).open()).isFalse();
  }

  private static final String RIDER =
      "    heart-rate: {max: 180bpm, resting: 50bpm}\n    bike: {critical-power: 200W}\n";

  private static HeldEffort planned(String line) {
    return planned(line, RIDER, "  goal: {bike-effort: 140W}\n");
  }

  private static HeldEffort planned(String line, String rider, String goal) {
    Dossier dossier = dossier(rider, goal, "{bike: \"" + line + "\"}", "");
    SetLine set = Objects.requireNonNull(ride(dossier).set());
    return HeldEffort.planned(set, calibration(dossier), CONSTANTS);
  }

  private static HeldEffort logged(String means, String rider) {
    Dossier dossier = dossier(rider, "", "{bike: 4h easy}", means);
    Session ride =
        Objects.requireNonNull(dossier.log())
            .days()
            .get(LocalDate.parse("2027-05-29"))
            .sessions()
            .get(0);
    return HeldEffort.logged(ride, 240, calibration(dossier));
  }

  private static Session ride(Dossier dossier) {
    return Objects.requireNonNull(dossier.plan().weeks().get(0).days().get(DayOfWeek.SATURDAY))
        .sessions()
        .get(0);
  }

  private static Calibration calibration(Dossier dossier) {
    return Calibration.of(dossier.plan(), dossier.log(), LocalDate.parse("2027-05-30"), CONSTANTS);
  }

  private static Dossier dossier(String rider, String goal, String session, String means) {
    String plan =
        "plan:\n  format: 1\n  athlete:\n    name: Lena Brandl\n"
            + rider
            + "  event: {name: Weiherburg Half, date: 2027-07-11,"
            + " legs: {swim: 1.9km, bike: 90km, run: 21.1km}}\n"
            + goal
            + "  weeks:\n    - starts: 2027-05-31\n      days:\n        sat: ["
            + session
            + "]\n";
    String log =
        "log:\n  format: 1\n  days:\n    2027-05-29: {sessions: [{bike: 4h"
            + (means.isEmpty() ? "" : ", " + means)
            + "}]}\n";
    return Objects.requireNonNull(
        Documents.read("plan.yaml", tree(plan), null, tree(log), null).dossier());
  }

  private static Tree tree(String text) {
    return Objects.requireNonNull(
        YamlTree.read("plan.yaml", text.getBytes(StandardCharsets.UTF_8)).tree());
  }
}
