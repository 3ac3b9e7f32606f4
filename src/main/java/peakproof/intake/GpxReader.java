package peakproof.intake;

import java.io.StringReader;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import javax.xml.stream.Location;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.jspecify.annotations.Nullable;
import peakproof.document.Fault;
import peakproof.document.Place;

/**
 * Reads the recorded tracks of a GPX 1.1 file. The file may come from anyone: no document type, so
 * no entity of its own, nothing fetched, nothing read twice, and a limit to everything.
 */
final class GpxReader {
  static final String NAMESPACE = "http://www.topografix.com/GPX/1/1";
  private static final String OLDER = "http://www.topografix.com/GPX/1/0";
  private static final int POINT_LIMIT = 300_000;
  private static final int TEXT_LIMIT = 200;
  private static final int DEPTH_LIMIT = 64;
  private static final Pattern NUMBER = Pattern.compile("[+-]?[0-9]{1,5}(?:\\.[0-9]{0,20})?");
  private static final Pattern BEATS = Pattern.compile("[0-9]{2,3}(?:\\.[0-9]{1,6})?");

  /** Faster than any athlete, in metres a second. */
  private static final double IMPOSSIBLE_SPEED = 45;

  private final String file;
  private final XMLStreamReader xml;
  private final List<Recording> recordings = new ArrayList<>();
  private int points;
  private int depth;
  private @Nullable TrackPoint last;

  private GpxReader(String file, XMLStreamReader xml) {
    this.file = file;
    this.xml = xml;
  }

  /**
   * One track.
   *
   * @param type what it says it was done in; null when it does not
   */
  record Recording(Place place, @Nullable String type, List<List<TrackPoint>> segments) {}

  /** What a file holds: its tracks, or the first fault in it. */
  record Outcome(List<Recording> recordings, @Nullable Fault fault) {}

  /** A fault on its way out. */
  private static final class Wrong extends Exception {
    private static final long serialVersionUID = 1;
    private final transient Fault fault;

    Wrong(Place place, String what, String expected, String instead) {
      this.fault = new Fault(place, what, expected, instead);
    }
  }

  static Outcome read(String file, byte[] bytes) {
    PlainText text = PlainText.of(file, bytes);
    if (text.fault() != null) {
      return new Outcome(List.of(), text.fault());
    }
    try {
      XMLStreamReader xml = factory().createXMLStreamReader(new StringReader(text.text()));
      GpxReader reader = new GpxReader(file, xml);
      reader.document();
      return new Outcome(reader.recordings, null);
    } catch (Wrong wrong) {
      return new Outcome(List.of(), wrong.fault);
    } catch (XMLStreamException broken) {
      return new Outcome(
          List.of(),
          new Fault(
              place(file, broken.getLocation()),
              "this is no well-formed XML",
              "expected a whole GPX file",
              "export it again; it may have been cut off or changed by hand"));
    }
  }

  private static XMLInputFactory factory() {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_COALESCING, false);
    factory.setXMLResolver(
        (publicId, systemId, base, namespace) -> {
          throw new XMLStreamException("nothing is fetched");
        });
    return factory;
  }

  private static Place place(String file, @Nullable Location at) {
    return at == null
        ? new Place(file, 1, 1)
        : new Place(file, Math.max(1, at.getLineNumber()), Math.max(1, at.getColumnNumber()));
  }

  private Place here() {
    return place(file, xml.getLocation());
  }

  private void document() throws XMLStreamException, Wrong {
    while (xml.hasNext()) {
      if (next() == XMLStreamConstants.START_ELEMENT) {
        if (depth == 1) {
          root();
        } else if (is("trk")) {
          track();
        }
      }
    }
    if (recordings.isEmpty()) {
      throw new Wrong(
          new Place(file, 1, 1),
          "this file holds no track",
          "expected a recording, a 'trk' element",
          "export the recording itself, not a planned route");
    }
  }

  private int next() throws XMLStreamException, Wrong {
    int event = xml.next();
    if (event == XMLStreamConstants.DTD || event == XMLStreamConstants.ENTITY_REFERENCE) {
      throw new Wrong(
          here(),
          "a document type or an entity of its own",
          "expected plain GPX, which needs neither",
          "do not trust this file; export it again from where it was recorded");
    }
    if (event == XMLStreamConstants.START_ELEMENT && ++depth > DEPTH_LIMIT) {
      throw new Wrong(
          here(),
          "elements are nested more than " + DEPTH_LIMIT + " deep",
          "expected the few levels GPX has",
          "export it again");
    }
    depth -= event == XMLStreamConstants.END_ELEMENT ? 1 : 0;
    return event;
  }

  private boolean is(String name) {
    return name.equals(xml.getLocalName()) && NAMESPACE.equals(xml.getNamespaceURI());
  }

  private void root() throws Wrong {
    if (is("gpx")) {
      return;
    }
    boolean gpx = "gpx".equals(xml.getLocalName());
    boolean older = gpx && OLDER.equals(xml.getNamespaceURI());
    throw new Wrong(
        here(),
        older
            ? "this is GPX 1.0"
            : gpx ? "this 'gpx' is not in the namespace of GPX 1.1" : "this is no GPX file",
        "expected GPX 1.1, <gpx xmlns=\"" + NAMESPACE + "\">",
        older ? "export or convert it as GPX 1.1" : "choose GPX 1.1 where it is exported");
  }

  private void track() throws XMLStreamException, Wrong {
    Place place = here();
    int outside = depth;
    String type = null;
    List<List<TrackPoint>> segments = new ArrayList<>();
    last = null;
    while (next() != XMLStreamConstants.END_ELEMENT || depth >= outside) {
      if (!xml.isStartElement()) {
        continue;
      }
      if (is("type") && depth == outside + 1) {
        type = text();
      } else if (is("trkseg")) {
        segments.add(segment());
      }
    }
    if (segments.stream().mapToInt(List::size).sum() < 2) {
      throw new Wrong(
          place,
          "this track has fewer than two points",
          "expected a recorded way",
          "leave the file out, or export it again");
    }
    recordings.add(new Recording(place, type, segments));
  }

  private List<TrackPoint> segment() throws XMLStreamException, Wrong {
    List<TrackPoint> segment = new ArrayList<>();
    int outside = depth;
    while (next() != XMLStreamConstants.END_ELEMENT || depth >= outside) {
      if (xml.isStartElement() && is("trkpt")) {
        TrackPoint point = point();
        inOrder(point, !segment.isEmpty());
        segment.add(point);
        last = point;
      }
    }
    return segment;
  }

  private void inOrder(TrackPoint point, boolean sameSegment) throws Wrong {
    if (++points > POINT_LIMIT) {
      throw new Wrong(
          point.place(),
          "this file has more than 300,000 points",
          "expected the recording of a session",
          "split it by days");
    }
    TrackPoint before = last;
    if (before == null) {
      return;
    }
    if (point.time().isBefore(before.time())) {
      throw new Wrong(
          point.place(),
          "this point is earlier than the one before it, "
              + before.place().line()
              + ":"
              + before.place().column(),
          "expected the points in the order they were recorded",
          "sort them, or export the recording again");
    }
    double seconds = before.secondsTo(point);
    double metres = before.metresTo(point);
    if (sameSegment && seconds > 0 && metres > IMPOSSIBLE_SPEED * Math.max(seconds, 1)) {
      throw new Wrong(
          point.place(),
          "this point lies "
              + Amounts.distance(metres, false)
              + " from the one "
              + Amounts.duration(Math.max(1, seconds))
              + " before it",
          "expected a way that someone can travel",
          "take the stray point out");
    }
  }

  private TrackPoint point() throws XMLStreamException, Wrong {
    Place place = here();
    double latitude = coordinate("lat", 90, place);
    double longitude = coordinate("lon", 180, place);
    Instant time = null;
    Double elevation = null;
    Double heartRate = null;
    int outside = depth;
    while (next() != XMLStreamConstants.END_ELEMENT || depth >= outside) {
      if (!xml.isStartElement()) {
        continue;
      }
      boolean own = depth == outside + 1;
      if (own && is("time")) {
        time = time(text(), place);
      } else if (own && is("ele")) {
        String text = text();
        elevation = NUMBER.matcher(text).matches() ? Double.valueOf(text) : null;
      } else if (!own && "hr".equals(xml.getLocalName())) {
        String text = text();
        heartRate = BEATS.matcher(text).matches() ? Double.valueOf(text) : null;
      }
    }
    if (time == null) {
      throw new Wrong(
          place,
          "this point has no time",
          "expected a recording, a <time> in each point",
          "export the recording itself, not a planned or drawn route");
    }
    return new TrackPoint(place, latitude, longitude, time, elevation, heartRate);
  }

  private double coordinate(String name, double limit, Place place) throws Wrong {
    String text = xml.getAttributeValue(null, name);
    if (text != null && NUMBER.matcher(text.strip()).matches()) {
      double value = Double.parseDouble(text.strip());
      if (Math.abs(value) <= limit) {
        return value;
      }
    }
    throw new Wrong(
        place,
        text == null
            ? "this point has no '" + name + "'"
            : "'" + shortened(text) + "' is no '" + name + "'",
        "expected degrees from -" + Math.round(limit) + " to " + Math.round(limit),
        "export the recording again");
  }

  private static Instant time(String text, Place place) throws Wrong {
    try {
      OffsetDateTime time = OffsetDateTime.parse(text);
      if (time.getYear() >= 1980 && time.getYear() < 2100) {
        return time.toInstant();
      }
    } catch (DateTimeParseException unreadable) {
      // told below, as a year that cannot be is
    }
    throw new Wrong(
        place,
        "'" + text + "' is no time of a recording",
        "expected one with its zone such as 2027-05-30T05:12:00Z",
        "export the recording again");
  }

  /** The text of the element that begins here, up to its end. */
  private String text() throws XMLStreamException, Wrong {
    StringBuilder text = new StringBuilder();
    int outside = depth;
    while (next() != XMLStreamConstants.END_ELEMENT || depth >= outside) {
      if (xml.isCharacters() && text.length() < TEXT_LIMIT) {
        text.append(shortened(xml.getText()));
      }
    }
    return shortened(text.toString()).strip();
  }

  private static String shortened(String text) {
    return text.length() <= TEXT_LIMIT ? text : text.substring(0, TEXT_LIMIT);
  }
}
