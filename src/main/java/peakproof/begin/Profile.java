package peakproof.begin;

import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** For whom a skeleton is made. All numbers: common practice, no source. */
enum Profile {
  FIRST_TIMER(1.05, 1.12, 1.0, 3, 2),
  EXPERIENCED(1.08, 1.15, 1.1, 3, 2),
  MASTERS(1.05, 1.12, 1.0, 3, 2);

  /** How much longer a week is than the best of the three before, at most. */
  final double weekGrowth;

  /** The same for the long ride. */
  final double rideGrowth;

  /** How far the longest sessions go, of what is usual for the distance. */
  final double reach;

  final int peakWeeks;
  final int taperWeeks;

  Profile(double weekGrowth, double rideGrowth, double reach, int peakWeeks, int taperWeeks) {
    this.weekGrowth = weekGrowth;
    this.rideGrowth = rideGrowth;
    this.reach = reach;
    this.peakWeeks = peakWeeks;
    this.taperWeeks = taperWeeks;
  }

  /** The one of a preset's word; null when it is none of these. */
  static @Nullable Profile of(@Nullable String word) {
    return Stream.of(values()).filter(each -> each.word().equals(word)).findFirst().orElse(null);
  }

  String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** A first-timer's midweek ride stays below the severe domain. */
  boolean ridesHard() {
    return this != FIRST_TIMER;
  }
}
