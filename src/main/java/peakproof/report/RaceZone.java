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
 * A time zone as far as one race needs it: what holds at its start, since when. By the rules of
 * this Java, as those that come with the calendar library go by the names of other places.
 */
final class RaceZone {
  private static final LocalDateTime LONG_AGO = LocalDateTime.of(1970, 1, 1, 0, 0);

  private RaceZone() {}

  static VTimeZone at(ZoneId zone, LocalDateTime start) {
    ZoneRules rules = zone.getRules();
    Instant instant = start.atZone(zone).toInstant();
    ZoneOffset offset = rules.getOffset(instant);
    ZoneOffsetTransition before = rules.previousTransition(instant.plusSeconds(1));
    Observance observance = rules.isDaylightSavings(instant) ? new Daylight() : new Standard();
    observance.add(new DtStart<>(before == null ? LONG_AGO : before.getDateTimeBefore()));
    observance.add(new TzOffsetFrom(before == null ? offset : before.getOffsetBefore()));
    observance.add(new TzOffsetTo(offset));
    VTimeZone rulesOfRace = new VTimeZone();
    rulesOfRace.add(new TzId(zone.getId()));
    rulesOfRace.add(observance);
    return rulesOfRace;
  }
}
