package peakproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import peakproof.document.Effort;
import peakproof.document.SetLine;
import peakproof.document.Sport;
import peakproof.document.Target;
import peakproof.measure.Calibration;
import peakproof.measure.Constants;
import peakproof.measure.Guide;
import peakproof.measure.Pace;

/**
 * A set line written out for the athlete: {@code 5 × 1 km hard at 4:20 /km, with 90 s easy
 * between}. Words after a bracket hold for the parts inside that have none of their own, as they do
 * where the session is worked out.
 */
final class SetWords {
  private static final Pattern YARDS = Pattern.compile("[0-9]\\s*yd|/100yd");
  private static final Pattern MILES = Pattern.compile("[0-9]\\s*mi(?![a-z])|/mi(?![a-z])");

  /** Below these a pace tells nobody anything: strides are run by feel. */
  private static final double SHORT_SECONDS = 60;

  private static final double SHORT_METRES = 200;

  private static final double ROUND_METRES = 1e-6;

  private final Sport sport;
  private final Calibration athlete;
  private final Constants constants;
  private final boolean imperial;

  private SetWords(SetLine line, Sport sport, Calibration athlete, Constants constants) {
    this.sport = sport;
    this.athlete = athlete;
    this.constants = constants;
    this.imperial = (sport == Sport.SWIM ? YARDS : MILES).matcher(line.text()).find();
  }

  /** What is asked of a part: its own words, or those around it. */
  private record Asked(@Nullable Effort effort, @Nullable Target target) {}

  /** The line step by step; pace and distance in yards or miles where the line is. */
  static List<Brief.Step> of(SetLine line, Sport sport, Calibration athlete, Constants constants) {
    SetWords words = new SetWords(line, sport, athlete, constants);
    List<SetLine.Part> parts = line.parts();
    List<Brief.Step> steps = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      boolean last = i == parts.size() - 1;
      boolean edge = parts.size() > 1 && (i == 0 || last);
      Asked unsaid = new Asked(edge ? Effort.EASY : Effort.STEADY, null);
      steps.addAll(words.part(parts.get(i), unsaid, !last));
    }
    return List.copyOf(steps);
  }

  private List<Brief.Step> part(SetLine.Part part, Asked around, boolean followed) {
    Asked asked =
        part.effort() == null && part.target() == null
            ? around
            : new Asked(part.effort(), part.target());
    if (part.work() instanceof SetLine.Group group) {
      return group(part, group, asked, followed);
    }
    String times = part.count() > 1 ? part.count() + " × " : "";
    String words = times + amount(part.work()) + effort(part.work(), asked) + kit(part.kit());
    return List.of(Brief.Step.of(words + rest(part, followed)));
  }

  private List<Brief.Step> group(
      SetLine.Part part, SetLine.Group group, Asked asked, boolean followed) {
    List<Brief.Step> inner = new ArrayList<>();
    List<SetLine.Part> parts = group.parts();
    for (int i = 0; i < parts.size(); i++) {
      boolean more = i < parts.size() - 1 || part.count() > 1 || followed;
      inner.addAll(part(parts.get(i), asked, more));
    }
    if (part.count() > 1) {
      String rounds = part.count() + " rounds" + kit(part.kit()) + rest(part, followed);
      return List.of(new Brief.Step(rounds + ", each of:", inner));
    }
    String once = kit(part.kit()) + rest(part, followed);
    return once.isEmpty() ? inner : List.of(new Brief.Step("In one go" + once + ":", inner));
  }

  private String amount(SetLine.Work work) {
    if (work instanceof SetLine.Time time) {
      return Figures.time(time.seconds());
    }
    double metres = ((SetLine.Distance) work).metres();
    if (imperial && Math.abs(metres - Math.rint(metres)) > ROUND_METRES) {
      double unit = sport == Sport.SWIM ? Pace.YARD : Pace.MILE;
      return Figures.number(metres / unit) + (sport == Sport.SWIM ? " yd" : " mi");
    }
    return Figures.distance(metres, sport);
  }

  private String effort(SetLine.Work work, Asked asked) {
    if (!sport.racing()) {
      return "";
    }
    Effort effort = asked.effort();
    Target target = asked.target();
    String word = effort == null ? "" : " " + word(effort);
    Guide told = target == null ? null : Guide.of(target, athlete);
    if (told != null) {
      String held = Figures.exactly(told, sport, imperial);
      boolean twice = effort == Effort.RACE || effort == Effort.THRESHOLD;
      return word + (twice ? " (" + held + ")" : " at " + held);
    }
    Guide guide =
        effort == null || tooShort(work, effort)
            ? null
            : Guide.of(effort, sport, athlete, constants);
    if (effort == null || guide == null || (sport == Sport.SWIM && effort == Effort.EASY)) {
      return word;
    }
    String held =
        effort == Effort.RACE
            ? Figures.exactly(guide, sport, imperial)
            : Figures.roughly(guide, sport, imperial);
    boolean ceiling = sport == Sport.RUN && effort == Effort.EASY;
    return word + " (" + held + (ceiling ? " or slower)" : ")");
  }

  private boolean tooShort(SetLine.Work work, Effort effort) {
    if (sport == Sport.SWIM || effort == Effort.EASY || effort == Effort.RACE) {
      return false;
    }
    return work instanceof SetLine.Time time
        ? time.seconds() < SHORT_SECONDS
        : work instanceof SetLine.Distance distance && distance.metres() < SHORT_METRES;
  }

  private String word(Effort effort) {
    return switch (effort) {
      case DRILL -> "technique drills";
      case EASY -> "easy";
      case STEADY -> "steady";
      case RACE -> sport == Sport.BIKE ? "at race effort" : "at race pace";
      case THRESHOLD -> "at threshold";
      case HARD -> "hard";
      case MAX -> "all out";
    };
  }

  private static String kit(Set<String> kit) {
    return kit.isEmpty()
        ? ""
        : " with " + Figures.listed(kit.stream().map(SetWords::kitWord).toList());
  }

  private static String kitWord(String word) {
    return word.equals("pull-buoy") ? "a pull buoy" : word;
  }

  private String rest(SetLine.Part part, boolean followed) {
    boolean repeated = part.count() > 1;
    if (part.rest() instanceof SetLine.SendOff sendOff) {
      String every = Figures.clock(sendOff.seconds());
      return repeated ? ", leaving every " + every : ", allow " + every + " for it";
    }
    if (!(part.rest() instanceof SetLine.After after) || !(repeated || followed)) {
      return "";
    }
    String pause = Figures.time(after.seconds()) + (sport == Sport.SWIM ? " rest" : " easy");
    if (!repeated) {
      return ", then " + pause;
    }
    return ", with " + pause + (followed ? " after each" : " between");
  }
}
