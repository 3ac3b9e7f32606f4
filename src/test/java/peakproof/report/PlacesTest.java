package peakproof.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import peakproof.audit.Finding.Location;
import peakproof.document.Place;

class PlacesTest {
  private final Places places = new Places(Sample.runa());

  @Test
  void readFromThePlansOwnFolder() {
    assertThat(places.file("plans/runa/log.yaml")).isEqualTo("log.yaml");
    assertThat(places.file("plans/runa/../events/saltmarsh.yaml"))
        .isEqualTo("../events/saltmarsh.yaml");
    assertThat(places.file("/elsewhere/house.yaml")).isEqualTo("/elsewhere/house.yaml");
  }

  @Test
  void nameADayOnceForAllItsLines() {
    assertThat(of(at(3, "2027-05-31", null), at(5, "2027-05-31", null), at(5, "2027-05-31", null)))
        .containsExactly("Mon 31 May, plan.yaml:3, plan.yaml:5");
  }

  @Test
  void nameTheYearWhenItIsNotTheRaces() {
    assertThat(of(at(3, "2026-12-31", null), at(4, null, "2026-12-28")))
        .containsExactly("Thu 31 Dec 2026, plan.yaml:3", "week of 28 Dec 2026, plan.yaml:4");
  }

  @Test
  void areCountedBeyondAFew() {
    Location[] many =
        IntStream.rangeClosed(1, 6).mapToObj(line -> at(line, null, null)).toArray(Location[]::new);
    assertThat(of(many))
        .containsExactly("plan.yaml:1, plan.yaml:2, plan.yaml:3, plan.yaml:4", "2 more places");
  }

  private List<String> of(Location... locations) {
    return places.of(List.of(locations), false).stream()
        .map(item -> item.replace('\u00a0', ' '))
        .toList();
  }

  private static Location at(int line, @Nullable String date, @Nullable String week) {
    return new Location(
        new Place("plans/runa/plan.yaml", line, 1),
        date == null ? null : LocalDate.parse(date),
        week == null ? null : LocalDate.parse(week));
  }
}
