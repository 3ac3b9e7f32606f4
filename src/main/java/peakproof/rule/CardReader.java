package peakproof.rule;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
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
  static final Set<String> REQUIRED =
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
  private static final Map<String, Boolean> FLAGS =
      Map.of("yes", true, "no", false, "true", true, "false", false);
  static final Map<String, Severity> SEVERITIES = words(Severity.values(), Enum::name);
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
    Map<String, Card.Setting> settings = CardSettings.read(entries);
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
      named.entries().forEach((name, entry) -> places.put(CardSettings.PLACE + name, entry.key()));
    }
    return places;
  }

  private Card card(CardEntries entries, Card.Applies applies, Map<String, Card.Setting> settings) {
    return new Card(
        slug,
        theme,
        Objects.requireNonNullElse(entries.text("title"), ""),
        or(entries.word("severity", SEVERITIES), Severity.NOTE),
        CardSteps.read(entries),
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
      if (!CardSettings.NAME.matcher(name).matches()) {
        entries.fault(
            entries.place("was"),
            "'" + name + "' is no name of a rule",
            "small letters, digits and hyphens",
            "take it out");
      }
    }
    return names;
  }

  static <T> T or(@Nullable T value, T otherwise) {
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
    Settings.Value value = text == null ? null : CardSettings.value(entries, "from-day", text);
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

  static @Nullable Severity severity(@Nullable Tree tree) {
    return tree instanceof Tree.Scalar scalar ? SEVERITIES.get(scalar.text()) : null;
  }

  private static <E> Map<String, E> words(E[] values, Function<E, String> word) {
    return Arrays.stream(values)
        .collect(
            Collectors.toMap(word, Function.identity(), (first, second) -> first, TreeMap::new));
  }
}
