package peakproof.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import peakproof.document.Sport;
import peakproof.document.YamlValue;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Option;

/** A session of a log as options, each named as the key it becomes. */
final class SessionOptions {
  @ArgGroup(exclusive = true, multiplicity = "1")
  private Work work = new Work();

  /** What was done: a duration, a distance or a set line. */
  static final class Work {
    @Option(
        names = "--swim",
        paramLabel = "AMOUNT",
        description = "A duration, distance or set line: 49min, 2.4km.")
    private @Nullable String swim;

    @Option(names = "--bike", paramLabel = "AMOUNT", description = "The same of a ride.")
    private @Nullable String bike;

    @Option(names = "--run", paramLabel = "AMOUNT", description = "The same of a run.")
    private @Nullable String run;

    @Option(names = "--strength", paramLabel = "DURATION", description = "Strength work: 30min.")
    private @Nullable String strength;

    @Option(
        names = "--other",
        paramLabel = "DURATION",
        description = "Anything else: \"40min walk\".")
    private @Nullable String other;

    private Sport sport() {
      return swim != null
          ? Sport.SWIM
          : bike != null
              ? Sport.BIKE
              : run != null ? Sport.RUN : strength != null ? Sport.STRENGTH : Sport.OTHER;
    }

    private String amount() {
      return Stream.of(swim, bike, run, strength, other)
          .filter(amount -> amount != null)
          .findFirst()
          .orElse("");
    }
  }

  @Option(
      names = "--time",
      paramLabel = "DURATION",
      description = "How long a set line took: 34min.")
  private @Nullable String time;

  @Option(names = "--distance", paramLabel = "DISTANCE", description = "How far: 8.9km.")
  private @Nullable String distance;

  @Option(names = "--rpe", paramLabel = "RATING", description = "How hard, 0 to 10.")
  private @Nullable String rpe;

  @Option(names = "--heart-rate", paramLabel = "RATE", description = "The mean: 142bpm.")
  private @Nullable String heartRate;

  @Option(names = "--power", paramLabel = "POWER", description = "The mean: 148W.")
  private @Nullable String power;

  @Option(names = "--held", paramLabel = "PACE", description = "What a set was held at: 1:51/100m.")
  private @Nullable String held;

  @Option(
      names = "--at",
      paramLabel = "TIME",
      description = "When it began: 06:30, am, noon or pm.")
  private @Nullable String at;

  @Option(
      names = "--where",
      paramLabel = "PLACE",
      description = "pool, open-water, road, trainer ...")
  private @Nullable String where;

  @Option(names = "--company", paramLabel = "WORD", description = "alone, group or supervised.")
  private @Nullable String company;

  @Option(names = "--climb", paramLabel = "LENGTH", description = "Metres up: 340m.")
  private @Nullable String climb;

  @Option(names = "--kit", paramLabel = "WORD", split = ",", description = "wetsuit,race-bike ...")
  private List<String> kit = List.of();

  @Option(
      names = "--practise",
      paramLabel = "WORD",
      split = ",",
      description = "Skills practised: sighting,fast-start ...")
  private List<String> practise = List.of();

  @Option(names = "--aero", paramLabel = "DURATION", description = "Time in race position: 2h10.")
  private @Nullable String aero;

  @Option(names = "--note", paramLabel = "TEXT", description = "Shown, never judged.")
  private @Nullable String note;

  Sport sport() {
    return work.sport();
  }

  /** The session's keys, the sport first. */
  YamlValue.Keys keys() {
    Map<String, @Nullable String> texts = new LinkedHashMap<>();
    texts.put(work.sport().word(), work.amount());
    texts.put("time", time);
    texts.put("distance", distance);
    texts.put("rpe", rpe);
    texts.put("heart-rate", heartRate);
    texts.put("power", power);
    texts.put("held", held);
    texts.put("at", at);
    texts.put("where", where);
    texts.put("company", company);
    texts.put("climb", climb);
    texts.put("aero", aero);
    texts.put("note", note);
    YamlValue.Keys keys = YamlValue.Keys.NONE;
    for (Map.Entry<String, @Nullable String> text : texts.entrySet()) {
      String value = text.getValue();
      keys = value == null ? keys : keys.with(text.getKey(), value.strip());
    }
    keys = kit.isEmpty() ? keys : keys.with("kit", words(kit));
    return practise.isEmpty() ? keys : keys.with("practise", words(practise));
  }

  private static YamlValue words(List<String> words) {
    return YamlValue.items(words.stream().map(String::strip).map(YamlValue.Text::new).toList());
  }
}
