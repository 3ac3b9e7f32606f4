package peakproof.intake;

import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import peakproof.document.Fault;
import peakproof.document.Sport;
import peakproof.document.YamlValue;

/** Makes sessions of a GPX file's tracks, one of each. */
public final class GpxSessions {
  /** The trade's own words for the sports, as a track's type may say them. */
  private static final Map<String, Sport> WORDS =
      Map.ofEntries(
          Map.entry("run", Sport.RUN),
          Map.entry("running", Sport.RUN),
          Map.entry("trail running", Sport.RUN),
          Map.entry("bike", Sport.BIKE),
          Map.entry("biking", Sport.BIKE),
          Map.entry("cycling", Sport.BIKE),
          Map.entry("ride", Sport.BIKE),
          Map.entry("swim", Sport.SWIM),
          Map.entry("swimming", Sport.SWIM),
          Map.entry("open water swimming", Sport.SWIM),
          Map.entry("walking", Sport.OTHER),
          Map.entry("hiking", Sport.OTHER),
          Map.entry("rowing", Sport.OTHER));

  private GpxSessions() {}

  /**
   * Reads a file's bytes.
   *
   * @param zone where the athlete was: GPX tells the time in UTC, a log has the local day
   * @param sport what all tracks are; null to go by what each says
   * @param where the place to train, as a log has it; null for none
   */
  public static Received read(
      String file, byte[] bytes, ZoneId zone, @Nullable Sport sport, @Nullable String where) {
    GpxReader.Outcome outcome = GpxReader.read(file, bytes);
    if (outcome.fault() != null) {
      return Received.wrong(List.of(outcome.fault()));
    }
    List<Incoming> sessions = new ArrayList<>();
    List<Received.Passed> passed = new ArrayList<>();
    List<Fault> faults = new ArrayList<>();
    for (GpxReader.Recording recording : outcome.recordings()) {
      Sport its = sport == null ? sport(recording.type()) : sport;
      Track track = Track.of(recording.segments());
      if (its == null) {
        faults.add(noSport(recording));
      } else if (Math.round(track.movingSeconds()) == 0) {
        passed.add(new Received.Passed(recording.place(), its.word(), "it never moves"));
      } else {
        sessions.add(session(recording, track, its, zone, where));
      }
    }
    return faults.isEmpty() ? new Received(sessions, passed, faults) : Received.wrong(faults);
  }

  private static @Nullable Sport sport(@Nullable String type) {
    String word =
        type == null ? "" : type.toLowerCase(Locale.ROOT).replaceAll("[_ -]+", " ").strip();
    return WORDS.get(word);
  }

  private static Fault noSport(GpxReader.Recording recording) {
    return new Fault(
        recording.place(),
        recording.type() == null
            ? "this track does not say its sport"
            : "'" + recording.type() + "' is no type of track that is known here",
        "expected a 'type' such as running, cycling or swimming",
        "name it with --sport run, bike, swim or other");
  }

  private static Incoming session(
      GpxReader.Recording recording,
      Track track,
      Sport sport,
      ZoneId zone,
      @Nullable String where) {
    ZonedDateTime start =
        recording.segments().stream()
            .flatMap(List::stream)
            .findFirst()
            .orElseThrow()
            .time()
            .atZone(zone);
    YamlValue.Keys keys =
        YamlValue.Keys.NONE.with(sport.word(), Amounts.duration(track.movingSeconds()));
    if (track.metres() >= 10) {
      keys = keys.with("distance", Amounts.distance(track.metres(), sport == Sport.SWIM));
    }
    if (track.heartRate() != null && Math.round(track.heartRate()) > 0) {
      keys = keys.with("heart-rate", Math.round(track.heartRate()) + "bpm");
    }
    if (track.climb() != null && sport != Sport.SWIM) {
      keys = keys.with("climb", Math.round(track.climb()) + "m");
    }
    keys = where == null ? keys : keys.with("where", where);
    LocalTime time = start.toLocalTime().truncatedTo(ChronoUnit.MINUTES);
    return new Incoming(
        recording.place(), start.toLocalDate(), sport, keys.with("at", time.toString()));
  }
}
