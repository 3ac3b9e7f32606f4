package peakproof.measure;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/** The line that least squares of y on x put through some points. */
record StraightLine(double slope, double intercept) {

  /** A point. */
  record Point(double x, double y) {}

  /** Null of points that do not lie apart in x, and of numbers beyond all bounds. */
  static @Nullable StraightLine through(List<Point> points) {
    double meanX = mean(points, Point::x);
    double meanY = mean(points, Point::y);
    double together = 0;
    double spread = 0;
    for (Point point : points) {
      together += (point.x - meanX) * (point.y - meanY);
      spread += (point.x - meanX) * (point.x - meanX);
    }
    double slope = together / spread;
    double intercept = meanY - slope * meanX;
    boolean found = Double.isFinite(slope) && Double.isFinite(intercept);
    return found ? new StraightLine(slope, intercept) : null;
  }

  private static double mean(List<Point> points, ToDoubleFunction<Point> of) {
    return points.stream().mapToDouble(of).average().orElse(Double.NaN);
  }
}
