package peakproof.report;

import java.util.Set;

/** Words of the format as one says them to an athlete. */
final class PlainWords {
  private PlainWords() {}

  /** {@code wetsuit and race clothing}. */
  static String listed(Set<String> words) {
    return Figures.listed(words.stream().map(PlainWords::of).toList());
  }

  /** {@code race clothing}; words of a club's own come as they are. */
  static String of(String word) {
    return switch (word) {
      case "pull-buoy" -> "pull buoy";
      case "both-sides" -> "breathing to both sides";
      case "contact" -> "swimming in contact";
      case "buoy-turns" -> "turns around buoys";
      case "transition" -> "transition";
      case "warm-up" -> "your race warm-up";
      case "wetsuit-strip" -> "getting out of the wetsuit";
      case "underwater" -> "calm under water";
      case "legs" -> "leg strength";
      case "upper-body" -> "upper body";
      default -> Printable.of(word.replace('-', ' '));
    };
  }
}
