package peakproof.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import peakproof.document.Effort;
import peakproof.document.SetLine;
import peakproof.document.Target;

/** Set lines of every shape, from a seeded source. */
final class RandomLines {
  private RandomLines() {}

  static SetLine line(Random random) {
    return new SetLine("", parts(random, 2));
  }

  private static List<SetLine.Part> parts(Random random, int depth) {
    List<SetLine.Part> parts = new ArrayList<>();
    int count = 1 + random.nextInt(4);
    for (int i = 0; i < count; i++) {
      parts.add(
          new SetLine.Part(
              1 + random.nextInt(6),
              work(random, depth),
              random.nextBoolean() ? Effort.values()[random.nextInt(7)] : null,
              random.nextInt(3) == 0 ? target(random) : null,
              Set.of(),
              rest(random)));
    }
    return parts;
  }

  private static SetLine.Work work(Random random, int depth) {
    return switch (random.nextInt(depth > 0 ? 3 : 2)) {
      case 0 -> new SetLine.Distance(25 * (1 + random.nextInt(160)));
      case 1 -> new SetLine.Time(10 * (1 + random.nextInt(1000)));
      default -> new SetLine.Group(parts(random, depth - 1));
    };
  }

  private static SetLine.Rest rest(Random random) {
    return switch (random.nextInt(3)) {
      case 0 -> new SetLine.After(random.nextInt(60));
      case 1 -> new SetLine.SendOff(10 + random.nextInt(600));
      default -> null;
    };
  }

  private static Target target(Random random) {
    double share = 0.4 + 0.8 * random.nextDouble();
    return switch (random.nextInt(7)) {
      case 0 -> new Target.Pace(share * 2);
      case 1 -> new Target.HeartRate(share * 180);
      case 2 -> new Target.ShareOfMaximum(share);
      case 3 -> new Target.ShareOfReserve(share);
      case 4 -> new Target.Power(share * 300);
      case 5 -> new Target.ShareOfCriticalPower(share);
      default -> new Target.Rating(share * 8);
    };
  }
}
