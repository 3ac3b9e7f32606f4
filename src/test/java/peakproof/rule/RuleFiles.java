package peakproof.rule;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import peakproof.document.Fault;

/** A folder of rules for a test to break: the shipped measures and base, and one sound rule. */
public final class RuleFiles {
  /** The sound rule's name; it lies in the theme {@code swim}. */
  public static final String SOUND = "boat-swims";

  private static final Map<String, String> TEXTS =
      Map.of(
          ".drl",
          """
          // A week with more swims than the club's boat can follow.
          // Silent in weeks that are not known whole.
          package peakproof.rules.swim
          import peakproof.fact.*

          rule "boat-swims"
          when
              $set  : Settings( rule == "boat-swims" )
              $week : Week( changeable, known, $swims : swims,
                            swims > $set.count("most") )
          then
              findings.report($set, $week, $swims);
          end
          """,
          ".yaml",
          """
          rule: boat-swims
          title: More swims than the boat can follow
          severity: ASK
          steps: [{from: 5, severity: FIX}]
          hold: none
          grade: common-practice
          sources: []
          applies: {race-water: open, distance: [full, half]}
          needs: [race.water, weeks.phase]
          judges-absence: no
          default: on
          settings:
            most: {value: 4, unit: swims, from: 0, to: 7, meaning: swims the boat can follow}
          why: "Swims in {week.label}: {value}; the boat follows {most}."
          do: Turn one of them into a pool session.
          care: none
          not-for: none
          was: []
          """,
          ".cases.yaml",
          """
          wrong:
            - case: the boat is away
              change:
                plan/settings/boat-swims: {most: 1, because: the boat is away}
              finds: {boat-swims: ASK}
          fine:
            - case: the plan as it is
          """);

  private final Path root;

  private RuleFiles(Path root) {
    this.root = root;
  }

  /** An empty folder with what every run takes from the shipped one. */
  public static RuleFiles in(Path root) {
    RuleFiles files = new RuleFiles(root);
    Path shipped = Path.of("rules");
    for (String name : List.of("measures.yaml", "water-temperature.yaml", "cautions.yaml")) {
      files.put(name, read(shipped.resolve(name)));
    }
    files.put("presets.yaml", "{}\n");
    for (String kind : List.of("plan", "event", "log")) {
      String name = "base/" + kind + ".yaml";
      files.put(name, read(shipped.resolve(name)));
    }
    return files;
  }

  /** The same rule for weeks in which an illness is noted. */
  static Map<String, String> ofHealth() {
    Map<String, String> texts = sound();
    texts.computeIfPresent(
        ".drl", (ending, text) -> text.replace("\nthen", "\n    exists Illness( )\nthen"));
    return texts;
  }

  /** The three texts of the sound rule by their endings, to be changed. */
  public static Map<String, String> sound() {
    return new TreeMap<>(TEXTS);
  }

  /** Writes the sound rule, or what a test made of it. */
  public RuleFiles with(Map<String, String> texts) {
    return named(SOUND, texts);
  }

  /** Writes the three files under another name, which takes the place of the first in them. */
  public RuleFiles named(String slug, Map<String, String> texts) {
    texts.forEach((ending, text) -> put("swim/" + slug + ending, text.replace(SOUND, slug)));
    return this;
  }

  /** Writes one file. */
  public RuleFiles put(String name, String text) {
    Path file = root.resolve(name);
    try {
      Files.createDirectories(file.getParent());
      Files.writeString(file, text, StandardCharsets.UTF_8);
    } catch (IOException unexpected) {
      throw new UncheckedIOException(unexpected);
    }
    return this;
  }

  public Path root() {
    return root;
  }

  Ruleset load(Path... others) {
    return RuleFolder.load(Stream.concat(Stream.of(root), Stream.of(others)).toList());
  }

  /** What loading says is wrong, files named from the folder on. */
  List<String> faults() {
    return faults(load());
  }

  List<String> faults(Ruleset loaded) {
    return loaded.faults().stream().map(Fault::toString).map(this::named).toList();
  }

  private String named(String fault) {
    return fault.replace(root.toString().replace('\\', '/') + "/", "");
  }

  private static String read(Path file) {
    try {
      return Files.readString(file, StandardCharsets.UTF_8);
    } catch (IOException unexpected) {
      throw new UncheckedIOException(unexpected);
    }
  }
}
