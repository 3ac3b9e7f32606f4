package peakproof.fact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import peakproof.document.Documents;
import peakproof.document.Dossier;
import peakproof.document.WaterTable;
import peakproof.measure.ShippedConstants;

class LoadsTest {
  private static final Offset<Double> EXACT = within(1e-6);
  private static final LocalDate FIRST = LocalDate.parse("2027-05-03");

  @Test
  void whoDoesExactlyThePlanShowsNoStepAtTheAsOfDate(@TempDir Path folder) throws IOException {
    // easy is expected at 3 and steady at 4; this athlete rates both half as much again
    List<Double> weeks = weekLoads(facts(folder, 4.5, 6));
    assertThat(weeks).hasSize(6);
    weeks.forEach(load -> assertThat(load).isCloseTo(weeks.get(0), EXACT));
    // 40 x 4.5 + 60 x 6 + 90 x 4.5
    assertThat(weeks.get(0)).isCloseTo(945, EXACT);
  }

  @Test
  void plannedLoadsStandAsTheyAreUntilEnoughIsMatched(@TempDir Path folder) throws IOException {
    List<Double> weeks = weekLoads(facts(folder, 3, 4));
    weeks.forEach(load -> assertThat(load).isCloseTo(40 * 3 + 60 * 4 + 90 * 3, EXACT));
  }

  @Test
  void aSessionWithoutRatingLeavesItsWeekUnknown(@TempDir Path folder) throws IOException {
    String log = log(4.5, 6).replaceFirst("rpe: 4.5", "heart-rate: 120bpm");
    Measured first = weekLoad(facts(folder, log), FIRST);
    assertThat(first.value()).isNull();
    assertThat(first.unknown()).isEqualTo("time and rating of every session");
  }

  private static List<Double> weekLoads(Facts facts) {
    List<Double> loads = new ArrayList<>();
    for (int week = 0; week < 6; week++) {
      loads.add(Objects.requireNonNull(weekLoad(facts, FIRST.plusWeeks(week)).value()));
    }
    return loads;
  }

  private static Measured weekLoad(Facts facts, LocalDate monday) {
    return facts.measured().stream()
        .filter(value -> value.name().equals("week-load") && value.scope().size() == 1)
        .filter(value -> monday.toString().equals(value.scope().get("week")))
        .findFirst()
        .orElseThrow();
  }

  private static Facts facts(Path folder, double easy, double steady) throws IOException {
    return facts(folder, log(easy, steady));
  }

  /** Six weeks alike, the first three of them done. */
  private static Facts facts(Path folder, String log) throws IOException {
    StringBuilder weeks = new StringBuilder();
    for (int week = 1; week < 6; week++) {
      weeks
          .append("    - {starts: ")
          .append(FIRST.plusWeeks(week))
          .append(", like: ")
          .append(FIRST)
          .append("}\n");
    }
    Files.writeString(
        folder.resolve("plan.yaml"),
        """
        plan:
          format: 1
          athlete: {name: Lena Brandl}
          event: {name: Weiherburg Half, date: 2027-07-11, legs: {swim: 1.9km, bike: 90km, run: 21.1km}}
          weeks:
            - starts: 2027-05-03
              days:
                tue: [{run: 40min easy}]
                thu: [{bike: 1h steady}]
                sat: [{bike: 1h30 easy}]
        """
            + weeks.toString().indent(0));
    Files.writeString(folder.resolve("log.yaml"), log);
    Dossier dossier =
        Objects.requireNonNull(Documents.read(folder.resolve("plan.yaml"), null).dossier());
    return Facts.of(dossier, LocalDate.parse("2027-05-23"), ShippedConstants.constants(), new WaterTable(List.of()));
  }

  private static String log(double easy, double steady) {
    StringBuilder days =
        new StringBuilder("log:\n  format: 1\n  complete-since: 2027-05-03\n  days:\n");
    for (int week = 0; week < 3; week++) {
      LocalDate monday = FIRST.plusWeeks(week);
      day(days, monday.plusDays(1), "run: 40min", easy);
      day(days, monday.plusDays(3), "bike: 1h", steady);
      day(days, monday.plusDays(5), "bike: 1h30", easy);
      days.append("    ").append(monday.plusDays(6)).append(": rest\n");
    }
    return days.toString();
  }

  private static void day(StringBuilder days, LocalDate date, String session, double rating) {
    days.append("    ")
        .append(date)
        .append(": {sessions: [{")
        .append(session)
        .append(", rpe: ")
        .append(rating)
        .append("}]}\n");
  }
}
