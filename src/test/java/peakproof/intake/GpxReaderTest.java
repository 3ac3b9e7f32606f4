package peakproof.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.nio.charset.StandardCharsets;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.TimeZone;
import org.junit.jupiter.api.Test;
import peakproof.document.Fault;
import peakproof.document.Sport;

/** Whatever a track's file holds becomes sessions or a fault with its line. */
class GpxReaderTest {
  private static final String HEAD =
      "<gpx version=\"1.1\" creator=\"t\" xmlns=\"http://www.topografix.com/GPX/1/1\">\n";
  private static final String ONE =
      "<trkpt lat=\"59\" lon=\"5\"><time>2027-05-30T05:00:00Z</time></trkpt>\n";
  private static final String TWO =
      "<trkpt lat=\"59.001\" lon=\"5\"><time>2027-05-30T05:01:00Z</time></trkpt>\n";

  private static Received read(String text) {
    return read(text.getBytes(StandardCharsets.UTF_8));
  }

  private static Received read(byte[] bytes) {
    return GpxSessions.read("x.gpx", bytes, ZoneId.of("UTC"), Sport.RUN, null);
  }

  private static String track(String points) {
    return HEAD + "<trk>\n<trkseg>\n" + points + "</trkseg>\n</trk>\n</gpx>\n";
  }

  private static String fault(String text) {
    Received received = read(text);
    assertThat(received.sessions()).isEmpty();
    assertThat(received.faults()).hasSize(1);
    return received.faults().get(0).toString();
  }

  @Test
  void readsASoundTrack() {
    assertThat(read(track(ONE + TWO)).sessions())
        .extracting(session -> session.keys().entries().toString())
        .containsExactly("{run=Text[text=1min], distance=Text[text=0.11km], at=Text[text=05:00]}");
  }

  @Test
  void namesTheLineOfWhatIsWrong() {
    assertThat(fault(track(TWO + ONE)))
        .startsWith("x.gpx:5:")
        .contains("earlier than the one before it, 4:");
    assertThat(fault(track(ONE + "<trkpt lat=\"59\" lon=\"5\"/>\n")))
        .startsWith("x.gpx:5:")
        .contains("this point has no time");
    assertThat(fault(track(ONE + TWO.replace("59.001", "96"))))
        .startsWith("x.gpx:5:")
        .contains("'96' is no 'lat'; expected degrees from -90 to 90");
    assertThat(fault(track(ONE + TWO.replace("59.001", "59,1")))).contains("'59,1' is no 'lat'");
    assertThat(fault(track(ONE + TWO.replace("59.001", "60"))))
        .startsWith("x.gpx:5:")
        .contains("this point lies 111.4km from the one 1min before it");
    assertThat(fault(track(ONE + TWO.replace("Z<", "<")))).contains("is no time of a recording");
    assertThat(fault(track(ONE))).startsWith("x.gpx:2:").contains("fewer than two points");
    assertThat(fault(HEAD + "<rte/></gpx>")).contains("this file holds no track");
    assertThat(fault(track(ONE + TWO).replace("GPX/1/1", "GPX/1/0"))).contains("this is GPX 1.0");
    assertThat(fault("<html/>")).contains("this is no GPX file");
    assertThat(fault("")).contains("no well-formed XML");
    assertThat(fault(track(ONE + TWO).substring(0, 200))).contains("no well-formed XML");
  }

  @Test
  void refusesEntitiesOfAnyKind() {
    String many =
        "<!DOCTYPE gpx [<!ENTITY a \"lol\"><!ENTITY b \"&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;\">"
            + "<!ENTITY c \"&b;&b;&b;&b;&b;&b;&b;&b;&b;&b;\">]>\n";
    String outside = "<!DOCTYPE gpx SYSTEM \"file:///etc/hostname\">\n";
    String entity = "<!DOCTYPE gpx [<!ENTITY a SYSTEM \"file:///etc/hostname\">]>\n";
    for (String type : List.of(many, outside, entity)) {
      assertThat(fault("<?xml version=\"1.0\"?>\n" + type + track(ONE + TWO)))
          .startsWith("x.gpx:2:")
          .contains("a document type or an entity of its own");
    }
    assertThat(fault(track("&c;" + ONE + TWO))).contains("x.gpx:4:");
  }

  @Test
  void limitsDepthAndPoints() {
    assertThat(fault(HEAD + "<a>".repeat(100_000))).contains("nested more than 64 deep");
    StringBuilder points = new StringBuilder();
    for (int i = 0; i < 300_001; i++) {
      points.append("<trkpt lat='1' lon='1'><time>2027-05-30T05:00:00Z</time></trkpt>");
    }
    assertThat(fault(track(points.toString()))).contains("more than 300,000 points");
  }

  /** As many points within a few metres as there may be take no more than a moment. */
  @Test
  void worksOutACrowdOfPoints() {
    StringBuilder points = new StringBuilder();
    for (int i = 0; i < 80_000; i++) {
      points
          .append("<trkpt lat='1' lon='1'><time>2027-05-30T05:00:")
          .append(String.format(Locale.ROOT, "%02d.%04d", i / 10_000, i % 10_000))
          .append("Z</time></trkpt>");
    }
    Received received = read(track(points.toString()));
    assertThat(received.faults()).isEmpty();
    assertThat(received.sessions()).hasSize(1);
  }

  @Test
  void survivesTwistedFiles() {
    byte[] sound = Tracks.file("running", Tracks.random(new Random(1)));
    String[] twists = {
      "<",
      ">",
      "&",
      "&#0;",
      "\"",
      "'",
      "<!--",
      "]]>",
      "<?x?>",
      "<![CDATA[",
      "\0",
      "é",
      "😀",
      "<trk>",
      "</trk>",
      "</trkseg>",
      "xmlns=\"",
      "--",
      "9999999999",
      "-",
      "T",
      ""
    };
    for (int seed = 0; seed < 600; seed++) {
      Random random = new Random(seed);
      StringBuilder text = new StringBuilder(new String(sound, StandardCharsets.UTF_8));
      for (int i = 0; i <= random.nextInt(4); i++) {
        int at = random.nextInt(Math.min(text.length(), 3_000));
        text.replace(
            at,
            Math.min(text.length(), at + random.nextInt(20)),
            twists[random.nextInt(twists.length)]);
      }
      survives(seed, text.toString().getBytes(StandardCharsets.UTF_8));
      byte[] bytes = sound.clone();
      for (int i = 0; i <= random.nextInt(4); i++) {
        bytes[random.nextInt(3_000)] = (byte) random.nextInt(256);
      }
      survives(seed, bytes);
    }
  }

  private static void survives(int seed, byte[] bytes) {
    assertThatCode(
            () -> {
              Received received = read(bytes);
              assertThat(received.faults().isEmpty())
                  .isEqualTo(!received.sessions().isEmpty() || !received.passed().isEmpty());
              for (Fault fault : received.faults()) {
                assertThat(fault.toString()).matches("(?s)x\\.gpx:[1-9][0-9]*:[1-9][0-9]*: .*");
              }
            })
        .as("seed %d", seed)
        .doesNotThrowAnyException();
  }

  @Test
  void takesTheDayWhereTheAthleteWas() {
    byte[] late = track(ONE + TWO).replace("T05:", "T22:").getBytes(StandardCharsets.UTF_8);
    assertThat(
            List.of("Europe/Oslo", "UTC", "America/Los_Angeles", "Pacific/Auckland").stream()
                .map(zone -> GpxSessions.read("x", late, ZoneId.of(zone), Sport.RUN, null))
                .map(received -> received.sessions().get(0))
                .map(session -> session.date() + " " + session.text("at")))
        .containsExactly(
            "2027-05-31 00:00", "2027-05-30 22:00", "2027-05-30 15:00", "2027-05-31 10:00");
  }

  @Test
  void saysTheSameUnderEveryLocaleAndZone() {
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    String broken = track(ONE + TWO).replace("</trk>", "</trj>");
    byte[] file = Tracks.file("RUNNING", Tracks.random(new Random(5)));
    String sound = sessions(file);
    String fault = fault(broken);
    try {
      for (String tag : List.of("tr-TR", "de-DE", "ar-EG-u-nu-arab", "ja-JP")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        TimeZone.setDefault(TimeZone.getTimeZone("Asia/Kathmandu"));
        assertThat(sessions(file)).isEqualTo(sound);
        assertThat(fault(broken)).isEqualTo(fault);
      }
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  private static String sessions(byte[] file) {
    return GpxSessions.read("x.gpx", file, ZoneId.of("Europe/Oslo"), null, "road")
        .sessions()
        .toString();
  }
}
