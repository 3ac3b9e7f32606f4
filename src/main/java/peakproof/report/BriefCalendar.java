package peakproof.report;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.time.temporal.Temporal;
import java.util.ArrayList;
import java.util.List;
import net.fortuna.ical4j.data.CalendarOutputter;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.Description;
import net.fortuna.ical4j.model.property.DtEnd;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.LastModified;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.Sequence;
import net.fortuna.ical4j.model.property.Summary;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.model.property.immutable.ImmutableCalScale;
import net.fortuna.ical4j.model.property.immutable.ImmutableClazz;
import net.fortuna.ical4j.model.property.immutable.ImmutableTransp;
import net.fortuna.ical4j.model.property.immutable.ImmutableVersion;
import org.jspecify.annotations.Nullable;

/**
 * The brief as a calendar (RFC 5545): an event a session, and the race. A session without a time
 * takes the day and blocks nothing; one with a time is in local time wherever the athlete is, and
 * so is the race unless its time zone is known. No alarms. What changes with the as-of date alone
 * is the stamp and the sequence, so that a calendar takes the newer brief over the older.
 */
public final class BriefCalendar {
  /** Where the library looks for its settings; it reads them once, when first used. */
  private static final String UPDATES = "net.fortuna.ical4j.timezone.update.enabled";

  private static final int LONGEST_SUMMARY = 100;

  private final Brief brief;
  private final CalendarUid uids;
  private final Instant stamp;
  private final Calendar calendar = new Calendar();

  private BriefCalendar(Brief brief) {
    this.brief = brief;
    this.uids = new CalendarUid(brief);
    this.stamp = brief.asOf().atStartOfDay(ZoneOffset.UTC).toInstant();
  }

  /** The whole calendar; lines end in CRLF and hold at most 75 octets. */
  public static String of(Brief brief) {
    System.setProperty(UPDATES, "false");
    BriefCalendar page = new BriefCalendar(brief);
    page.fill();
    StringWriter unfolded = new StringWriter();
    try {
      new CalendarOutputter(true).output(page.calendar, unfolded);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return Folded.of(unfolded.toString().replace("\r\n ", ""));
  }

  private void fill() {
    calendar.add(new ProdId("-//Peakproof//Brief//EN"));
    calendar.add(ImmutableVersion.VERSION_2_0);
    calendar.add(ImmutableCalScale.GREGORIAN);
    ZoneId zone = brief.race().zone();
    LocalDateTime start = raceStart();
    if (zone != null && start != null) {
      calendar.add(RaceZone.at(zone, start));
    }
    for (Brief.Week week : brief.weeks()) {
      for (Brief.Day day : week.days()) {
        day.sessions().forEach(session -> session(day, session));
      }
    }
    race(start);
  }

  private void session(Brief.Day day, Brief.Session session) {
    LocalTime at = session.at();
    Double seconds = session.seconds();
    LocalDateTime start = at == null ? null : day.date().atTime(at);
    LocalDateTime end =
        start == null || seconds == null
            ? null
            : start.plusSeconds(Math.round(seconds)).truncatedTo(ChronoUnit.MINUTES);
    List<String> text = new ArrayList<>(day.warnings());
    if (!session.size().isEmpty()) {
      text.add(session.size());
    }
    for (Brief.Leg leg : session.legs()) {
      if (!leg.title().isEmpty()) {
        text.add(leg.title());
      }
      steps(text, "", leg.steps());
      text.addAll(leg.details());
    }
    event(
        uids.ofNext(day.date(), session),
        start == null ? day.date() : start,
        end != null && end.isAfter(start) ? end : null,
        session.title(),
        text);
  }

  private static void steps(List<String> text, String indent, List<Brief.Step> steps) {
    for (Brief.Step step : steps) {
      text.add(indent + "- " + step.words());
      steps(text, indent + "  ", step.rounds());
    }
  }

  private void race(@Nullable LocalDateTime start) {
    Brief.Race race = brief.race();
    List<String> text = new ArrayList<>();
    for (RaceCard.Row row : brief.card().rows()) {
      text.add(row.inWords());
    }
    text.addAll(brief.card().notes());
    text.addAll(brief.fuelling());
    ZoneId zone = race.zone();
    Temporal local = start == null ? race.date() : start;
    Temporal at = start == null || zone == null ? local : start.atZone(zone);
    event(uids.ofRace(), at, null, "Race: " + race.name(), text);
  }

  private @Nullable LocalDateTime raceStart() {
    LocalTime start = brief.race().start();
    return start == null ? null : brief.race().date().atTime(start);
  }

  private void event(
      String uid, Temporal start, @Nullable Temporal end, String summary, List<String> text) {
    VEvent event = new VEvent(false);
    event.add(new Uid(uid));
    event.add(new DtStamp(stamp));
    event.add(new LastModified(stamp));
    event.add(new Sequence(Math.max(0, (int) brief.asOf().toEpochDay())));
    event.add(new DtStart<>(start));
    if (end != null) {
      event.add(new DtEnd<>(end));
    }
    event.add(new Summary(shortened(summary)));
    event.add(new Description(String.join("\n", text)));
    event.add(start instanceof LocalDate ? ImmutableTransp.TRANSPARENT : ImmutableTransp.OPAQUE);
    event.add(ImmutableClazz.PRIVATE);
    calendar.add(event);
  }

  private static String shortened(String text) {
    return text.codePointCount(0, text.length()) <= LONGEST_SUMMARY
        ? text
        : text.substring(0, text.offsetByCodePoints(0, LONGEST_SUMMARY - 1)) + "…";
  }
}
