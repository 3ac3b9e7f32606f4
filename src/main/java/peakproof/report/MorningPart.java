package peakproof.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import peakproof.document.Log;
import peakproof.fact.Words;

/**
 * What the athlete wrote of mornings, pain and illness, newest first, as it was written: nothing is
 * put together or held against anything here.
 *
 * @param latest the newest entries
 * @param earlier those before
 */
record MorningPart(List<Entry> latest, List<Entry> earlier) {
  private static final int LATEST = 10;

  /** A day; what was not written is empty. */
  record Entry(
      String day,
      String sleep,
      String fatigue,
      String soreness,
      String mood,
      String stress,
      String resting,
      String health) {}

  static MorningPart of(@Nullable Log log, LocalDate asOf, LocalDate race) {
    List<Entry> all = new ArrayList<>();
    if (log != null) {
      for (Map.Entry<LocalDate, Log.Day> day : log.days().entrySet()) {
        if (!day.getKey().isAfter(asOf) && tells(day.getValue())) {
          all.add(0, entry(Dates.day(day.getKey(), race), day.getValue()));
        }
      }
    }
    int latest = Math.min(LATEST, all.size());
    return new MorningPart(
        List.copyOf(all.subList(0, latest)), List.copyOf(all.subList(latest, all.size())));
  }

  private static boolean tells(Log.Day day) {
    return day.morning() != null
        || !day.pain().isEmpty()
        || day.ill() != null
        || !day.medicine().isEmpty();
  }

  private static Entry entry(String date, Log.Day day) {
    Log.Morning morning = day.morning();
    return morning == null
        ? new Entry(date, "", "", "", "", "", "", health(day))
        : new Entry(
            date,
            morning.sleepSeconds() == null ? "" : Words.minutes(morning.sleepSeconds() / 60),
            number(morning.fatigue()),
            number(morning.soreness()),
            number(morning.mood()),
            number(morning.stress()),
            number(morning.restingHeartRate()),
            health(day));
  }

  private static String number(@Nullable Double number) {
    return number == null ? "" : Words.number(number);
  }

  private static String health(Log.Day day) {
    List<String> parts = new ArrayList<>();
    day.pain().forEach(pain -> parts.add(pain(pain)));
    Log.Ill ill = day.ill();
    if (ill != null) {
      parts.add(ill(ill));
    }
    if (!day.medicine().isEmpty()) {
      parts.add("medicine: " + words(day.medicine()));
    }
    return String.join("; ", parts);
  }

  private static String pain(Log.Pain pain) {
    return "pain "
        + joined(
            Stream.of(
                pain.site() + (pain.level() == null ? "" : " " + number(pain.level()) + "/10"),
                pain.when(),
                pain.nextMorning() == null ? null : "next morning " + pain.nextMorning(),
                words(pain.signs())));
  }

  private static String ill(Log.Ill ill) {
    return joined(
        Stream.of(
            "ill" + (ill.kind() == null ? "" : " (" + ill.kind() + ")"),
            Boolean.TRUE.equals(ill.fever()) ? "fever" : null,
            words(ill.signs()),
            ill.over() == null ? null : "over " + Words.day(ill.over())));
  }

  private static String joined(Stream<@Nullable String> parts) {
    return parts.filter(part -> part != null && !part.isEmpty()).collect(Collectors.joining(", "));
  }

  private static String words(Set<String> words) {
    return words.stream().sorted().collect(Collectors.joining(", "));
  }
}
