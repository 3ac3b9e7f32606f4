package peakproof.intake;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** GPX files made up from a seed: ways that wind over an ellipsoid, with and without pauses. */
final class Tracks {
  static final Instant START = Instant.parse("2027-05-30T05:12:00Z");

  private Tracks() {}

  /** A point as written: degrees, metres, seconds from the start. */
  record Written(double latitude, double longitude, double elevation, long second) {}

  /** A file with one track. */
  static byte[] file(String type, List<List<Written>> segments) {
    StringBuilder gpx =
        new StringBuilder(
            "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<gpx version=\"1.1\" creator=\"test\""
                + " xmlns=\"http://www.topografix.com/GPX/1/1\">\n<trk><type>"
                + type
                + "</type>\n");
    for (List<Written> segment : segments) {
      gpx.append("<trkseg>\n");
      for (Written point : segment) {
        gpx.append(point(point, ""));
      }
      gpx.append("</trkseg>\n");
    }
    return gpx.append("</trk>\n</gpx>\n").toString().getBytes(StandardCharsets.UTF_8);
  }

  static String point(Written point, String more) {
    return String.format(
        Locale.ROOT,
        "<trkpt lat=\"%.7f\" lon=\"%.7f\"><ele>%.1f</ele><time>%s</time>%s</trkpt>%n",
        point.latitude(),
        point.longitude(),
        point.elevation(),
        START.plusSeconds(point.second()),
        more);
  }

  /** Segments that move 20 to 60 m between points, and now and then stay for minutes. */
  static List<List<Written>> random(Random random) {
    double latitude = -75 + 150 * random.nextDouble();
    double longitude = -180 + 360 * random.nextDouble();
    double elevation = random.nextInt(500);
    long second = 0;
    List<List<Written>> segments = new ArrayList<>();
    for (int s = 0; s <= random.nextInt(3); s++) {
      List<Written> segment = new ArrayList<>();
      double course = random.nextDouble() * 2 * Math.PI;
      for (int i = 0; i < 50 + random.nextInt(300); i++) {
        segment.add(new Written(latitude, longitude, elevation, second));
        boolean stays = random.nextInt(40) == 0;
        double metres = stays ? 0 : 20 + 40 * random.nextDouble();
        course += random.nextDouble() - 0.5;
        latitude += Math.cos(course) * metres / 111_200;
        longitude += Math.sin(course) * metres / (111_300 * Math.cos(Math.toRadians(latitude)));
        longitude -= longitude > 180 ? 360 : longitude < -180 ? -360 : 0;
        elevation += random.nextInt(7) - 3;
        second += stays ? 31 + random.nextInt(300) : 5 + random.nextInt(8);
      }
      segments.add(segment);
      second += 600;
    }
    return segments;
  }
}
