package peakproof.report;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import java.nio.charset.StandardCharsets;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import peakproof.Golden;

/** The calendar, read back by a parser that is not the writer's. */
class BriefCalendarTest {
  private static final String TOVE = "plans/tove/plan.yaml";

  @Test
  void writesTheSameEveryTime() {
    String calendar = BriefCalendar.of(Briefs.of(TOVE));
    assertThat(calendar.replace("\r\n", "")).doesNotContain("\r", "\n");
    assertThat(BriefCalendar.of(Briefs.of(TOVE))).isEqualTo(calendar);
    Golden.assertMatches("report/brief-tove.ics", calendar);
  }

  @ParameterizedTest
  @MethodSource("peakproof.report.Briefs#demos")
  void holdsEverySessionAndTheRace(String plan) {
    Brief brief = Briefs.of(plan);
    ICalendar calendar = parsed(BriefCalendar.of(brief));
    assertThat(calendar.validate(ICalVersion.V2_0).isEmpty()).isTrue();
    List<String> expected = new ArrayList<>();
    for (Brief.Week week : brief.weeks()) {
      for (Brief.Day day : week.days()) {
        day.sessions().forEach(session -> expected.add(day.date() + " " + session.title()));
      }
    }
    expected.add(brief.race().date() + " Race: " + brief.race().name());
    assertThat(calendar.getEvents())
        .extracting(event -> day(event) + " " + event.getSummary().getValue())
        .containsExactlyElementsOf(expected);
    assertThat(calendar.getEvents())
        .extracting(event -> event.getUid().getValue())
        .doesNotHaveDuplicates();
    assertThat(calendar.getEvents()).allMatch(event -> event.getAlarms().isEmpty());
  }

  @Test
  void takesTheDayWithoutATimeAndBlocksNothing() {
    VEvent run = event(Briefs.of(TOVE), "Swim in the pool");
    assertThat(run.getDateStart().getValue().hasTime()).isFalse();
    assertThat(run.getTransparency().isTransparent()).isTrue();
    assertThat(run.getDescription().getValue())
        .contains("- 6 × 50 m technique drills, with 15 s rest after each\n");
  }

  @Test
  void putsATimeTheCoachGivesOnTheAthletesClock() {
    String calendar = BriefCalendar.of(Briefs.of(Briefs.CANARY));
    assertThat(calendar)
        .contains("DTSTART:20270601T070000\r\n", "DTEND:20270601T074000\r\n")
        .contains("DTSTART;VALUE=DATE:20270601\r\nSUMMARY:Walk to SAID3 in the morning")
        .contains("DTSTART:20270613T063000\r\n");
    assertThat(event(Briefs.of(Briefs.CANARY), "Run").getTransparency().isOpaque()).isTrue();
  }

  @Test
  void putsTheRaceInItsZone() {
    Brief brief = Briefing.of(Briefs.workup(TOVE), ZoneId.of("Europe/Oslo"));
    String text = BriefCalendar.of(brief);
    assertThat(text)
        .contains(
            "BEGIN:VTIMEZONE\r\nTZID:Europe/Oslo\r\n", "DTSTART;TZID=Europe/Oslo:20270704T063000");
    VEvent race = event(brief, "Race: Saltmarsh Long Course");
    assertThat(race.getDateStart().getValue().toInstant()).hasToString("2027-07-04T04:30:00Z");
    assertThat(BriefCalendar.of(Briefing.of(Briefs.workup(TOVE), ZoneId.of("UTC"))))
        .contains("DTSTART;TZID=UTC:20270704T063000");
  }

  @Test
  void knowsARewrittenSessionAgainAndNoOther() {
    CalendarUid uids = new CalendarUid(Briefs.of(TOVE));
    Brief.Week week = Briefs.of(TOVE).weeks().get(0);
    Brief.Session swim = week.days().get(0).sessions().get(0);
    Brief.Session rewritten = new Brief.Session("Swim", null, null, null, swim.kind(), List.of());
    String first = uids.ofNext(week.starts(), swim);
    assertThat(new CalendarUid(Briefs.of(TOVE)).ofNext(week.starts(), rewritten)).isEqualTo(first);
    assertThat(uids.ofNext(week.starts(), swim)).isNotEqualTo(first);
    assertThat(uids.ofNext(week.starts().plusDays(1), swim)).isNotEqualTo(first);
    assertThat(new CalendarUid(Briefs.of("plans/radek/plan.yaml")).ofNext(week.starts(), swim))
        .isNotEqualTo(first);
  }

  @Test
  void namesNobodyInAnIdentity() {
    assertThat(new CalendarUid(Briefs.of(TOVE)).ofRace()).matches("[0-9a-f-]{36}");
  }

  @Test
  void fetchesNoTimeZones() {
    BriefCalendar.of(Briefs.of(TOVE));
    assertThat(System.getProperty("net.fortuna.ical4j.timezone.update.enabled")).isEqualTo("false");
    assertThat(
            net.fortuna.ical4j.util.Configurator.getProperty(
                "net.fortuna.ical4j.timezone.update.enabled"))
        .contains("false");
  }

  @Test
  void foldsWithoutPartingACharacter() {
    String folded = Folded.of("SUMMARY:" + "🏊".repeat(40) + "\r\nEND:X\r\n");
    assertThat(folded.split("\r\n"))
        .allMatch(line -> line.getBytes(StandardCharsets.UTF_8).length <= 75)
        .allMatch(line -> !line.contains("\ufffd"));
    assertThat(folded.replace("\r\n ", ""))
        .isEqualTo("SUMMARY:" + "🏊".repeat(40) + "\r\nEND:X\r\n");
    assertThat(Folded.of("x".repeat(75))).isEqualTo("x".repeat(75));
    assertThat(Folded.of("x".repeat(76))).isEqualTo("x".repeat(75) + "\r\n x");
  }

  private static VEvent event(Brief brief, String summary) {
    return parsed(BriefCalendar.of(brief)).getEvents().stream()
        .filter(event -> event.getSummary().getValue().equals(summary))
        .findFirst()
        .orElseThrow();
  }

  private static String day(VEvent event) {
    var raw = event.getDateStart().getValue().getRawComponents();
    return List.of(raw.getYear(), raw.getMonth(), raw.getDate()).stream()
        .map(part -> String.format("%02d", part))
        .collect(Collectors.joining("-"));
  }

  private static ICalendar parsed(String calendar) {
    return Biweekly.parse(calendar).first();
  }
}
