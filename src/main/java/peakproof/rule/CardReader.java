package peakproof.rule;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import peakproof.document.Fault;
import peakproof.document.Place;
import peakproof.document.Sport;
import peakproof.document.Tree;
import peakproof.fact.Need;
import peakproof.fact.Phase;
import peakproof.fact.Settings;
import peakproof.measure.DistanceClass;

/** Reads a card. Its keys are a closed set, so that a typing mistake never goes unheard. */
final class CardReader {
  private static final Set<String> REQUIRED =
      Set.of(
          "rule",
          "title",
          "severity",
          "steps",
          "hold",
          "grade",
          "sources",
          "applies",
          "needs",
          "judges-absence",
          "default",
          "settings",
          "why",
          "do",
          "care",
          "not-for",
          "was");
  private static final Set<String> KEYS =
      Stream.concat(REQUIRED.stream(), Stream.of("from-day")).collect(Collectors.toSet());
  static final String SETTINGS = "settings/";

  private static final Set<String> SETTING = Set.of("value", "unit", "from", "to", "meaning");
  private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9-]{0,59}");
  private static final Map<String, Boolean> FLAGS =
      Map.of("yes", true, "no", false, "true", true, "false", false);
  private static final Map<String, Severity> SEVERITIES = words(Severity.values(), Enum::name);
  private static final Map<String, Grade> GRADES = words(Grade.values(), Grade::word);
  private static final Map<String, Hold> HOLDS = words(Hold.values(), Hold::word);

  private final String slug;
  private final String theme;
  private final List<Fault> faults = new ArrayList<>();

  private CardReader(String slug, String theme) {
    this.slug = slug;
    this.theme = theme;
  }

  /**
   * What came of a card.
   *
   * @param draft as far as it could be read: enough to hold the rule against it; null when its
   *     settings are not known, so that one fault does not call up others
   * @param places where each key's value stands, and each setting's name as {@code settings/NAME}
   */
  record Read(@Nullable Card draft, Map<String, Place> places, List<Fault> faults) {
    /** The card, when nothing is wrong with it. */
    @Nullable Card card() {
      return faults.isEmpty() ? draft : null;
    }
  }

  /** Reads the card of the rule {@code slug} in the folder {@code theme}. */
  static Read read(String slug, String theme, Tree tree) {
    CardReader reader = new CardReader(slug, theme);
    if (!(tree instanceof Tree.Mapping mapping)) {
      Fault fault = new Fault(tree.place(), "this is no card", "keys with values", "rule: " + slug);
      return new Read(null, Map.of(), List.of(fault));
    }
    CardEntries entries = new CardEntries(mapping, reader.faults).keys(KEYS, REQUIRED);
    int before = reader.faults.size();
    Card.Applies applies = reader.applies(entries);
    boolean distancesKnown = reader.faults.size() == before;
    Map<String, Card.Setting> settings = reader.settings(entries);
    Card card = reader.card(entries, applies, settings);
    CardCheck.check(card, entries);
    boolean known =
        distancesKnown
            && entries.tree("settings") instanceof Tree.Mapping written
            && written.entries().size() == settings.size();
    return new Read(known ? card : null, places(mapping), reader.faults);
  }

  private static Map<String, Place> places(Tree.Mapping mapping) {
    Map<String, Place> places = new TreeMap<>();
    mapping.entries().forEach((key, entry) -> places.put(key, entry.value().place()));
    Tree.Entry settings = mapping.entry("settings");
    if (settings != null && settings.value() instanceof Tree.Mapping named) {
      named.entries().forEach((name, entry) -> places.put(SETTINGS + name, entry.key()));
    }
    return places;
  }

  private Card card(CardEntries entries, Card.Applies applies, Map<String, Card.Setting> settings) {
    return new Card(
        slug,
        theme,
        Objects.requireNonNullElse(entries.text("title"), ""),
        or(entries.word("severity", SEVERITIES), Severity.NOTE),
        steps(entries),
        optional(entries, "hold", HOLDS),
        or(entries.word("grade", GRADES), Grade.COMMON_PRACTICE),
        entries.texts("sources"),
        applies,
        needs(entries),
        or(entries.word("judges-absence", FLAGS), false),
        fromDay(entries),
        or(entries.word("default", Map.of("on", true, "off", false)), true),
        settings,
        template(entries, "why"),
        template(entries, "do"),
        none(entries, "care") ? null : template(entries, "care"),
        none(entries, "not-for") ? null : entries.text("not-for"),
        former(entries));
  }

  private static List<String> former(CardEntries entries) {
    List<String> names = entries.texts("was");
    for (String name : names) {
      if (!NAME.matcher(name).matches()) {
        entries.fault(
            entries.place("was"),
            "'" + name + "' is no name of a rule",
            "small letters, digits and hyphens",
            "take it out");
      }
    }
    return names;
  }

  private static <T> T or(@Nullable T value, T otherwise) {
    return value == null ? otherwise : value;
  }

  private static boolean none(CardEntries entries, String key) {
    return "none".equals(entries.text(key));
  }

  private static Template template(CardEntries entries, String key) {
    return new Template(Objects.requireNonNullElse(entries.text(key), "").strip());
  }

  private static <T> @Nullable T optional(CardEntries entries, String key, Map<String, T> words) {
    return none(entries, key) ? null : entries.word(key, words);
  }

  private List<Card.Step> steps(CardEntries entries) {
    List<Card.Step> steps = new ArrayList<>();
    for (Tree item : entries.items(entries.tree("steps"))) {
      CardEntries step = entries.below(item);
      if (step == null) {
        continue;
      }
      step.keys(Set.of("from", "when", "severity"), Set.of("severity"));
      String from = step.text("from");
      String when = step.text("when");
      Settings.Value value = from == null ? null : value(step, "from", from);
      if (value != null) {
        rises(steps, value, step);
      }
      if ((from == null) == (when == null)) {
        step.fault(
            item.place(), "a step has one of from and when", "a value or a field", "from: 30%");
      }
      steps.add(new Card.Step(value, when, or(step.word("severity", SEVERITIES), Severity.NOTE)));
    }
    return steps;
  }

  /** The last step that applies wins, so a smaller value after a larger one would undo it. */
  private static void rises(List<Card.Step> before, Settings.Value value, CardEntries step) {
    for (Card.Step earlier : before) {
      Settings.Value least = earlier.from();
      if (least != null && least.kind() != value.kind()) {
        step.fault(
            step.place("from"),
            "'" + step.text("from") + "' is of another kind than the step before",
            SettingReader.words(least.kind()),
            "write all steps in one unit");
        return;
      }
      if (least != null && least.number() >= value.number()) {
        step.fault(
            step.place("from"),
            "'" + step.text("from") + "' is not past the step before",
            "steps from the smallest value to the largest",
            "put the steps in order");
        return;
      }
    }
  }

  private Card.Applies applies(CardEntries entries) {
    Tree tree = entries.tree("applies");
    CardEntries applies = tree == null ? null : entries.below(tree);
    if (applies == null) {
      return Card.Applies.ALL;
    }
    applies.keys(
        Set.of("race-water", "distance", "drafting", "phase", "sports", "para", "category"),
        Set.of());
    return new Card.Applies(
        applies.word("race-water", Map.of("open", "open", "pool", "pool")),
        Set.copyOf(applies.words("distance", words(DistanceClass.values(), DistanceClass::word))),
        applies.word("drafting", FLAGS),
        Set.copyOf(applies.words("phase", words(Phase.values(), Phase::word))),
        Set.copyOf(applies.words("sports", words(Sport.values(), Sport::word))),
        applies.word("para", FLAGS),
        Set.copyOf(
            applies.words(
                "category", Map.of("age-group", "age-group", "elite", "elite", "para", "para"))));
  }

  private List<Card.Need> needs(CardEntries entries) {
    List<Card.Need> needs = new ArrayList<>();
    for (Tree item : entries.items(entries.tree("needs"))) {
      List<Tree> alternatives = item instanceof Tree.Sequence any ? any.items() : List.of(item);
      List<String> keys = new ArrayList<>();
      for (Tree alternative : alternatives) {
        if (alternative instanceof Tree.Scalar scalar) {
          need(entries, scalar.place(), scalar.text());
          keys.add(scalar.text());
        } else {
          entries.fault(
              alternative.place(),
              "this is no need",
              "a word, or a list of words of which one will do",
              "[race.water]");
        }
      }
      needs.add(new Card.Need(keys));
    }
    return needs;
  }

  private static void need(CardEntries entries, Place place, String key) {
    Set<String> known = Need.keysWithWindows();
    if (!known.contains(key)) {
      entries.fault(
          place,
          "'" + key + "' is nothing a rule can need",
          "a need",
          Spelling.instead(key, known));
    }
  }

  private static @Nullable Integer fromDay(CardEntries entries) {
    String text = entries.text("from-day");
    Settings.Value value = text == null ? null : value(entries, "from-day", text);
    if (value == null) {
      return null;
    }
    if (value.kind() != Settings.Kind.DAY) {
      entries.fault(
          entries.place("from-day"),
          "'" + text + "' is no day",
          SettingReader.words(Settings.Kind.DAY),
          "D-21");
    }
    return (int) value.number();
  }

  private Map<String, Card.Setting> settings(CardEntries entries) {
    Map<String, Card.Setting> settings = new LinkedHashMap<>();
    entries
        .map("settings")
        .forEach(
            (name, tree) -> {
              Card.Setting setting = setting(name, entries.below(tree));
              if (!NAME.matcher(name).matches() || name.equals("value")) {
                entries.fault(
                    tree.place(),
                    "'" + name + "' is no name for a setting",
                    "small letters, digits and hyphens; 'value' is what the rule reports",
                    "swims-per-week");
              } else if (setting != null) {
                settings.put(name, setting);
              }
            });
    return settings;
  }

  static Card.@Nullable Setting setting(String name, @Nullable CardEntries entries) {
    if (entries == null) {
      return null;
    }
    entries.keys(
        Stream.concat(SETTING.stream(), Stream.of("source")).collect(Collectors.toSet()), SETTING);
    String text = entries.text("value");
    String least = entries.text("from");
    String most = entries.text("to");
    if (text == null || least == null || most == null) {
      return null;
    }
    Settings.Value value = value(entries, "value", text);
    Settings.Value from = value(entries, "from", least);
    Settings.Value to = value(entries, "to", most);
    if (value == null || from == null || to == null) {
      return null;
    }
    boolean fromFits = alike(entries, "from", from, value);
    boolean toFits = alike(entries, "to", to, value);
    if (fromFits && toFits && !SettingValue.within(value, from, to)) {
      entries.fault(
          entries.place("value"), text + " is out of range", least + " to " + most, least);
    }
    return new Card.Setting(
        name,
        value,
        text,
        Objects.requireNonNullElse(entries.text("unit"), ""),
        from,
        to,
        Objects.requireNonNullElse(entries.text("meaning"), ""));
  }

  private static boolean alike(
      CardEntries entries, String key, Settings.Value end, Settings.Value value) {
    boolean day = value.kind() == Settings.Kind.WINDOW && end.kind() == Settings.Kind.DAY;
    if (end.kind() != value.kind() && !day) {
      entries.fault(
          entries.place(key),
          "'" + entries.text(key) + "' is of another kind than the value",
          SettingReader.words(value.kind()),
          "write value, from and to in one unit");
      return false;
    }
    return true;
  }

  private static Settings.@Nullable Value value(CardEntries entries, String key, String text) {
    Settings.Value value = SettingValue.of(text);
    if (value == null) {
      entries.fault(
          entries.place(key),
          "'" + text + "' is no value of a setting",
          "a number, share, time, distance, rate, day or window",
          "3, 75%, 1h45, 24km, 75g/h, D-21 or D-56..D-15");
    }
    return value;
  }

  static @Nullable Severity severity(@Nullable Tree tree) {
    return tree instanceof Tree.Scalar scalar ? SEVERITIES.get(scalar.text()) : null;
  }

  private static <E> Map<String, E> words(E[] values, Function<E, String> word) {
    return Arrays.stream(values)
        .collect(
            Collectors.toMap(word, Function.identity(), (first, second) -> first, TreeMap::new));
  }
}
