package peakproof.report;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.zone.ZoneOffsetTransition;
import java.time.zone.ZoneRules;
import net.fortuna.ical4j.model.component.Daylight;
import net.fortuna.ical4j.model.component.Observance;
import net.fortuna.ical4j.model.component.Standard;
import net.fortuna.ical4j.model.component.VTimeZone;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.TzId;
import net.fortuna.ical4j.model.property.TzOffsetFrom;
import net.fortuna.ical4j.model.property.TzOffsetTo;

/**
 * A time zone as far as one race needs it: what holds at its start, since when, and what held
 * before. By the rules of this Java, as those that come with the calendar library go by the names
 * of other places.
 */
final class RaceZone {
  private static final LocalDateTime LONG_AGO = LocalDateTime.of(1970, 1, 1, 0, 0);

  private RaceZone() {}

  static VTimeZone at(ZoneId zone, LocalDateTime start) {
    ZoneRules rules = zone.getRules();
    Instant instant = start.atZone(zone).toInstant();
    VTimeZone ofRace = new VTimeZone();
    ofRace.add(new TzId(zone.getId()));
    ZoneOffsetTransition last = rules.previousTransition(instant.plusSeconds(1));
    if (last == null) {
      ZoneOffset offset = rules.getOffset(instant);
      ofRace.add(observance(false, LONG_AGO, offset, offset));
      return ofRace;
    }
    ZoneOffsetTransition before = rules.previousTransition(last.getInstant());
    if (before != null) {
      ofRace.add(observance(rules, before));
    }
    ofRace.add(observance(rules, last));
    return ofRace;
  }

  private static Observance observance(ZoneRules rules, ZoneOffsetTransition change) {
    return observance(
        rules.isDaylightSavings(change.getInstant()),
        change.getDateTimeBefore(),
        change.getOffsetBefore(),
        change.getOffsetAfter());
  }

  private static Observance observance(
      boolean daylight, LocalDateTime since, ZoneOffset from, ZoneOffset to) {
    Observance observance = daylight ? new Daylight() : new Standard();
    observance.add(new DtStart<>(since));
    observance.add(new TzOffsetFrom(from));
    observance.add(new TzOffsetTo(to));
    return observance;
  }
}
