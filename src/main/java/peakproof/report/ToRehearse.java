package peakproof.report;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import peakproof.document.PlanDay;
import peakproof.document.PlanWeek;
import peakproof.document.Session;
import peakproof.document.Sport;

/** What the race asks for and the plan practises, with the days it is planned for. */
final class ToRehearse {
  private static final Set<String> RACE_KIT =
      Set.of("wetsuit", "race-bike", "race-clothing", "race-shoes", "race-wheels", "race-helmet");

  private final Map<String, List<LocalDate>> days = new LinkedHashMap<>();

  private ToRehearse() {}

  /** From the weeks shown, up to the eve of the race; skills first, then kit, fuel and bricks. */
  static List<Brief.Rehearsal> of(List<PlanWeek> weeks, LocalDate race) {
    ToRehearse skills = new ToRehearse();
    ToRehearse rest = new ToRehearse();
    for (PlanWeek week : weeks) {
      for (DayOfWeek weekday : DayOfWeek.values()) {
        PlanDay day = week.days().get(weekday);
        LocalDate date = week.starts().plusDays(weekday.getValue() - 1L);
        if (day != null && date.isBefore(race)) {
          day.sessions().forEach(session -> collect(skills, rest, session, date));
        }
      }
    }
    List<Brief.Rehearsal> all = new ArrayList<>();
    skills.days.forEach((what, when) -> all.add(new Brief.Rehearsal(what, when)));
    rest.days.forEach((what, when) -> all.add(new Brief.Rehearsal(what, when)));
    return all;
  }

  private static void collect(ToRehearse skills, ToRehearse rest, Session session, LocalDate date) {
    Set<String> practise = session.wear().practise();
    if (practise != null) {
      practise.forEach(word -> skills.add(capital(PlainWords.of(word)), date));
    }
    Set<String> kit = session.wear().kit();
    if (kit != null) {
      kit.stream()
          .filter(RACE_KIT::contains)
          .forEach(word -> rest.add("With your " + PlainWords.of(word), date));
    }
    Session.Fuel fuel = session.fuel();
    if (fuel != null && "race".equals(fuel.products())) {
      rest.add("Eating and drinking as in the race", date);
    }
    Session then = session.then();
    if (then != null) {
      if (then.sport() == Sport.RUN && session.sport() == Sport.BIKE) {
        rest.add("Running straight off the bike", date);
      }
      collect(skills, rest, then, date);
    }
  }

  private void add(String what, LocalDate date) {
    List<LocalDate> so = days.computeIfAbsent(what, first -> new ArrayList<>());
    if (!so.contains(date)) {
      so.add(date);
    }
  }

  private static String capital(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
