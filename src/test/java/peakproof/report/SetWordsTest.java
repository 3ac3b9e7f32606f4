package peakproof.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import peakproof.audit.Workup;
import peakproof.document.PlanDay;
import peakproof.document.Session;
import peakproof.document.SetLine;
import peakproof.document.SetLines;
import peakproof.document.Sport;

/**
 * Tove: goal 1:10:00 for 3.8 km and 3:50:00 for 42.195 km, ridden at 70 % of 182 bpm; critical
 * power 218 W. Her swim tests (400 m in 388 s, 200 m in 185 s) give 203 s over 200 m, 1:41.5 per
 * 100 m; her half-marathon of 101:30 gives an open marathon of 101.5 × 2^1.06 = 211.6 min, 5:00.9 a
 * km.
 */
class SetWordsTest {
  private static final Workup TOVE = Briefs.workup("plans/tove/plan.yaml");

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "400 easy | - 400 m easy",
        "8x50 drill r15s, 200 easy"
            + " | - 8 × 50 m technique drills, with 15 s rest after each / - 200 m easy",
        "5x600 race r30s | - 5 × 600 m at race pace (1:51 /100 m), with 30 s rest between",
        "6x100 hard | - 6 × 100 m hard (about 1:40 /100 m)",
        "500 threshold | - 500 m at threshold (about 1:42 /100 m)",
        "500 steady | - 500 m steady (about 1:48 /100 m)",
        "4x50 max r1min | - 4 × 50 m all out, with 1 min rest between",
        "38x100 @1:50/100m off 2:00 | - 38 × 100 m at 1:50 /100 m, leaving every 2:00",
        "38x100 on 2:00 | - 38 × 100 m steady (about 1:48 /100 m), leaving every 2:00",
        "4x50 hard paddles fins r15s"
            + " | - 4 × 50 m hard (about 1:40 /100 m) with paddles and fins, with 15 s rest between",
        "200 easy pull-buoy | - 200 m easy with a pull buoy",
        "3x(400 race r20s, 4x50 hard r15s) r1min, 100 easy"
            + " | - 3 rounds, with 1 min rest after each, each of:"
            + " / -- 400 m at race pace (1:51 /100 m), then 20 s rest"
            + " / -- 4 × 50 m hard (about 1:40 /100 m), with 15 s rest after each"
            + " / - 100 m easy",
        "2x(3x(50 max r10s) r30s, 100 easy)"
            + " | - 2 rounds, each of: / -- 3 rounds, with 30 s rest after each, each of:"
            + " / --- 50 m all out, then 10 s rest / -- 100 m easy",
        "(400, 200) race | - 400 m at race pace (1:51 /100 m) / - 200 m at race pace (1:51 /100 m)",
        "(400 easy, 200 hard) paddles r1min, 100"
            + " | - In one go with paddles, then 1 min rest: / -- 400 m easy"
            + " / -- 200 m hard (about 1:40 /100 m) / - 100 m easy",
        "100 race off 2:00, 100 easy"
            + " | - 100 m at race pace (1:51 /100 m), allow 2:00 for it / - 100 m easy",
        "300, 600, 100 | - 300 m easy / - 600 m steady (about 1:48 /100 m) / - 100 m easy",
        "500yd @1:41/100yd | - 500 yd at 1:41 /100 yd",
        "20min @rpe6 | - 20 min at effort 6 out of 10",
        "1200 race r30s | - 1200 m at race pace (1:51 /100 m)",
        "400 race @1:48/100m | - 400 m at race pace (1:48 /100 m)",
      })
  void writesSwimsOut(String line, String words) {
    assertThat(words(line, Sport.SWIM)).isEqualTo(words);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "5x1km hard @4:20/km r90s | - 5 × 1 km hard at 4:20 /km, with 90 s easy between",
        "5x1km hard r2min, 1km | - 5 × 1 km hard (about 4:25 /km), with 2 min easy after each"
            + " / - 1 km easy (about 5:55 /km or slower)",
        "6x20s hard r1min | - 6 × 20 s hard, with 1 min easy between",
        "10x150m hard | - 10 × 150 m hard",
        "20min race | - 20 min at race pace (5:27 /km)",
        "8min threshold | - 8 min at threshold (about 4:40 /km)",
        "50min | - 50 min steady (about 5:20 /km)",
        "half-marathon max | - 21.1 km all out",
        "3mi @8:00/mi | - 3 mi at 8:00 /mi",
        "1h35 @140bpm | - 1 h 35 min at 140 bpm",
        "30min @65%hrr | - 30 min at 134 bpm, 65 % of your heart-rate reserve",
        "30min drill | - 30 min technique drills",
      })
  void writesRunsOut(String line, String words) {
    assertThat(words(line, Sport.RUN)).isEqualTo(words);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "4h30 race | - 4 h 30 min at race effort (127 bpm, 70 % of your maximum)",
        "5x5min hard r3min, 15min"
            + " | - 5 × 5 min hard (above 218 W), with 3 min easy after each / - 15 min easy",
        "1h45 steady | - 1 h 45 min steady (below 175 W)",
        "12min threshold | - 12 min at threshold (up to 218 W)",
        "5x5min @85%cp r3min | - 5 × 5 min at 185 W, with 3 min easy between",
        "90km race @205W | - 90 km at race effort (205 W)",
        "4h30 @70%maxhr | - 4 h 30 min at 127 bpm, 70 % of your maximum",
        "2h hard @rpe7.5 | - 2 h hard at effort 7.5 out of 10",
        "4x20s max r40s | - 4 × 20 s all out, with 40 s easy between",
      })
  void writesRidesOut(String line, String words) {
    assertThat(words(line, Sport.BIKE)).isEqualTo(words);
  }

  @Test
  void leavesOutWhatNoTestSupports() {
    Workup untested = Briefs.workup("src/test/resources/brief/untested/plan.yaml");
    assertThat(words(untested, "6x100 hard, 1000 race", Sport.SWIM))
        .isEqualTo("- 6 × 100 m hard / - 1000 m at race pace (1:51 /100 m)");
    assertThat(words(untested, "30min easy", Sport.RUN)).isEqualTo("- 30 min easy");
    assertThat(words(untested, "3h @85%cp, 1h steady", Sport.BIKE))
        .isEqualTo("- 3 h at 85 % of your critical power / - 1 h steady");
    assertThat(words(untested, "3h @70%maxhr", Sport.BIKE))
        .isEqualTo("- 3 h at 70 % of your maximum heart rate");
    assertThat(words(untested, "1h race", Sport.BIKE)).isEqualTo("- 1 h at race effort (30 km/h)");
  }

  @Test
  void turnsNoShareIntoBeatsUnderABetaBlocker() {
    Workup blocked = Briefs.workup("src/test/resources/brief/canary/plan.yaml");
    assertThat(words(blocked, "3h @70%maxhr", Sport.BIKE))
        .isEqualTo("- 3 h at 70 % of your maximum heart rate");
    assertThat(words(blocked, "3h @127bpm", Sport.BIKE)).isEqualTo("- 3 h at 127 bpm");
  }

  /** Every number of a line comes back in its words: counts, amounts and rests. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "plans/tove",
        "plans/gwen",
        "plans/haruki",
        "plans/ines",
        "plans/mateus",
        "plans/meera",
        "plans/noor",
        "plans/radek",
        "rules/base"
      })
  void leavesNothingOfAPlanOut(String plan) {
    Workup workup = Briefs.workup(plan + "/plan.yaml");
    List<Session> sessions =
        workup.dossier().plan().weeks().stream()
            .flatMap(week -> week.days().values().stream())
            .map(PlanDay::sessions)
            .flatMap(List::stream)
            .flatMap(RaceWords::chain)
            .filter(session -> session.sport() != null && session.sport().racing())
            .toList();
    assertThat(sessions).hasSizeGreaterThan(10);
    for (Session session : sessions) {
      SetLine line = session.set();
      Sport sport = session.sport();
      if (line == null || sport == null) {
        continue;
      }
      String words = words(workup, line, sport);
      amounts(line.parts(), sport, true)
          .forEach(amount -> assertThat(words).as(line.text()).contains(amount));
      assertThat(words).doesNotContain("null", "NaN", "Infinity", "{", "[");
    }
  }

  private static Stream<String> amounts(List<SetLine.Part> parts, Sport sport, boolean outer) {
    List<String> amounts = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      SetLine.Part part = parts.get(i);
      boolean taken = part.count() > 1 || !outer || i < parts.size() - 1;
      if (part.count() > 1) {
        amounts.add(part.count() + (part.work() instanceof SetLine.Group ? " rounds" : " × "));
      }
      if (part.work() instanceof SetLine.Group group) {
        amounts(group.parts(), sport, false).forEach(amounts::add);
      } else if (part.work() instanceof SetLine.Time time) {
        amounts.add(Figures.time(time.seconds()));
      } else if (part.work() instanceof SetLine.Distance distance) {
        amounts.add(Figures.distance(distance.metres(), sport));
      }
      if (part.rest() instanceof SetLine.After after && taken) {
        amounts.add(Figures.time(after.seconds()));
      } else if (part.rest() instanceof SetLine.SendOff sendOff) {
        amounts.add(Figures.clock(sendOff.seconds()));
      }
    }
    return amounts.stream();
  }

  private static String words(String line, Sport sport) {
    return words(TOVE, line, sport);
  }

  private static String words(Workup workup, String line, Sport sport) {
    SetLine parsed = SetLines.read(line, sport).orNull();
    assertThat(parsed).as(line).isNotNull();
    return words(workup, parsed, sport);
  }

  private static String words(Workup workup, @Nullable SetLine line, Sport sport) {
    assertThat(line).isNotNull();
    List<String> lines = new ArrayList<>();
    flatten(lines, "-", SetWords.of(line, sport, workup.calibration(), workup.constants()));
    return String.join(" / ", lines);
  }

  private static void flatten(List<String> lines, String indent, List<Brief.Step> steps) {
    for (Brief.Step step : steps) {
      lines.add(indent + " " + step.words());
      flatten(lines, indent + "-", step.rounds());
    }
  }
}
