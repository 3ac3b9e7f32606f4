package peakproof.report;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;

/**
 * What a calendar knows an event again by: the athlete's name and the race's date, and of a session
 * its day, what it begins with and the how-manieth of those it is that day. So a session that is
 * rewritten stays the same event, and one that moves to another day becomes another. The names do
 * not show: they are hashed (RFC 4122, version 3), which RFC 7986 asks of a UID.
 */
final class CalendarUid {
  private final String identity;
  private final Map<String, Integer> soFar = new HashMap<>();

  CalendarUid(Brief brief) {
    this.identity = brief.identity();
  }

  String ofRace() {
    return hashed("race");
  }

  /** Of the next session of its day; to be asked for all in their order. */
  String ofNext(LocalDate day, Brief.Session session) {
    String place = day + "\n" + session.kind();
    return hashed(place + "\n" + soFar.merge(place, 1, Integer::sum));
  }

  private String hashed(String what) {
    byte[] name = (identity + "\n" + what).getBytes(StandardCharsets.UTF_8);
    return UUID.nameUUIDFromBytes(name).toString();
  }
}
