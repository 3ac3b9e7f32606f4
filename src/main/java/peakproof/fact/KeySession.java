package peakproof.fact;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import peakproof.document.Sport;

/**
 * The next session a coach would ask about: a race on the way, a test, a dress rehearsal, or one
 * that is hard, long, or at race effort for some minutes. Common practice, no source.
 *
 * @param date today or later
 * @param sport of the session; the first of the day's in a rehearsal
 * @param label as written: its set line, duration or distance; of a rehearsal all of the day's
 * @param minutes unknown when neither written nor computable
 */
public record KeySession(
    LocalDate date, Sport sport, Kind kind, String label, @Nullable Double minutes) {

  /** What makes it one, what says most of it first. */
  public enum Kind {
    RACE("race"),
    TEST("test"),
    REHEARSAL("dress rehearsal"),
    HARD("hard"),
    LONG("long"),
    RACE_EFFORT("race effort");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** As a coach says it. */
    public String word() {
      return word;
    }
  }

  /** The first that is still to come; null when none is written. */
  static @Nullable KeySession next(Timeline timeline) {
    for (Day day : timeline.between(timeline.asOf(), timeline.raceDate().minusDays(1))) {
      KeySession key = day.changeable() ? on(day, timeline) : null;
      if (key != null) {
        return key;
      }
    }
    return null;
  }

  private static @Nullable KeySession on(Day day, Timeline timeline) {
    KeySession first =
        day.sessions().stream()
            .map(KeySession::of)
            .filter(Objects::nonNull)
            .min(Comparator.comparing(KeySession::kind))
            .orElse(null);
    boolean raced = first != null && first.kind() == Kind.RACE;
    return !raced && timeline.rehearsals().dress().on(List.of(day)).value() > 0
        ? rehearsal(day)
        : first;
  }

  private static KeySession rehearsal(Day day) {
    return new KeySession(
        day.date(),
        day.sessions().get(0).sport(),
        Kind.REHEARSAL,
        String.join(" + ", day.sessions().stream().map(Session::label).toList()),
        day.minutes());
  }

  private static @Nullable KeySession of(Session session) {
    Kind kind = kind(session);
    return kind == null
        ? null
        : new KeySession(session.date(), session.sport(), kind, session.label(), session.minutes());
  }

  private static @Nullable Kind kind(Session session) {
    if (session.written.race() != null) {
      return Kind.RACE;
    }
    if (session.test()) {
      return Kind.TEST;
    }
    if (session.hard()) {
      return Kind.HARD;
    }
    if (session.hardOrLong()) {
      return Kind.LONG;
    }
    return session.sharp() ? Kind.RACE_EFFORT : null;
  }
}
