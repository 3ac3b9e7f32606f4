package peakproof.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.jenetics.jpx.GPX;
import io.jenetics.jpx.Length;
import io.jenetics.jpx.TrackSegment;
import io.jenetics.jpx.WayPoint;
import io.jenetics.jpx.geom.Geoid;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/**
 * Tracks against a second reader, the library jpx, whose distances are geodesics (Vincenty 1975),
 * and against sums by hand.
 */
class TrackTest {
  private static Track track(byte[] file) {
    GpxReader.Outcome outcome = GpxReader.read("x.gpx", file);
    assertThat(outcome.fault()).isNull();
    return Track.of(outcome.recordings().get(0).segments());
  }

  @Test
  void comesToWhatASecondReaderSays() throws IOException {
    for (int seed = 0; seed < 60; seed++) {
      byte[] file = Tracks.file("running", Tracks.random(new Random(seed)));
      Track mine = track(file);
      GPX its = GPX.Reader.DEFAULT.read(new ByteArrayInputStream(file));
      double metres = 0;
      double seconds = 0;
      for (TrackSegment segment : its.tracks().findFirst().orElseThrow().getSegments()) {
        List<WayPoint> points = segment.points().collect(Collectors.toList());
        for (int i = 1; i < points.size(); i++) {
          Length way = Geoid.WGS84.distance(points.get(i - 1), points.get(i));
          metres += way.doubleValue();
          // a stay in these tracks is at one point, so a pause is a way of no length
          Duration time =
              Duration.between(
                  points.get(i - 1).getTime().orElseThrow(), points.get(i).getTime().orElseThrow());
          seconds += way.doubleValue() < Track.PAUSE_METRES ? 0 : time.toSeconds();
        }
      }
      assertThat(mine.metres())
          .as("seed %d", seed)
          .isCloseTo(metres, Percentage.withPercentage(0.01));
      assertThat(mine.movingSeconds()).as("seed %d", seed).isEqualTo(seconds);
    }
  }

  private static List<Tracks.Written> line(int from, int count, double step, int every) {
    List<Tracks.Written> line = new ArrayList<>();
    for (int i = from; i < from + count; i++) {
      line.add(new Tracks.Written(60 + i * step, 5, 10, (long) i * every));
    }
    return line;
  }

  @Test
  void takesAStayOfHalfAMinuteForRest() {
    List<Tracks.Written> points = new ArrayList<>(line(0, 100, 0.0001, 5));
    Tracks.Written last = points.get(99);
    for (int second : new int[] {10, 20, 30}) {
      points.add(new Tracks.Written(last.latitude(), 5.00002, 10, last.second() + second));
    }
    assertThat(track(Tracks.file("run", List.of(points))).movingSeconds()).isEqualTo(525);
    points.add(new Tracks.Written(last.latitude(), 5, 10, last.second() + 31));
    assertThat(track(Tracks.file("run", List.of(points))).movingSeconds()).isEqualTo(495);
  }

  @Test
  void takesSlowSwimmingForMoving() {
    // half a metre a second, a point each second, seven decimals
    List<Tracks.Written> points = line(0, 1_201, 0.5 / 111_400, 1);
    assertThat(track(Tracks.file("swim", List.of(points))).movingSeconds()).isEqualTo(1_200);
  }

  @Test
  void leavesOutWhatLiesBetweenSegments() {
    Track whole = track(Tracks.file("run", List.of(line(0, 21, 0.001, 60))));
    Track split =
        track(Tracks.file("run", List.of(line(0, 11, 0.001, 60), line(11, 10, 0.001, 60))));
    assertThat(whole.movingSeconds()).isEqualTo(1_200);
    assertThat(split.movingSeconds()).isEqualTo(1_140);
    assertThat(split.metres()).isCloseTo(whole.metres() * 19 / 20, within(0.1));
  }

  @Test
  void climbsInStepsThatNoReceiverWaversBy() {
    double[] elevations = {100, 104, 100, 104, 105, 109, 110, 106, 104, 108, 109};
    List<Tracks.Written> points = new ArrayList<>();
    for (int i = 0; i < elevations.length; i++) {
      points.add(new Tracks.Written(60 + i * 0.001, 5, elevations[i], i * 60L));
    }
    // by hand: 100 up to 105 (5), up to 110 (5), down to 104, up to 109 (5)
    assertThat(track(Tracks.file("run", List.of(points))).climb()).isEqualTo(15);
  }

  @Test
  void meansHeartRateOverTimeNotOverPoints() {
    StringBuilder points = new StringBuilder();
    int[][] readings = {{0, 120}, {10, 120}, {20, 120}, {30, 120}, {60, 160}};
    for (int[] reading : readings) {
      points.append(
          Tracks.point(
              new Tracks.Written(60 + reading[0] * 0.0001, 5, 10, reading[0]),
              "<extensions><a xmlns=\"urn:any\"><hr>" + reading[1] + "</hr></a></extensions>"));
    }
    String file =
        "<gpx version=\"1.1\" creator=\"t\" xmlns=\"http://www.topografix.com/GPX/1/1\"><trk><trkseg>"
            + points
            + "</trkseg></trk></gpx>";
    // 30 s at 120 and 30 s that rise evenly to 160, so at 140
    assertThat(track(file.getBytes(java.nio.charset.StandardCharsets.UTF_8)).heartRate())
        .isEqualTo(130);
  }
}
