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
  private static final Set<String> SETTING = Set.of("value", "unit", "from", "to", "meaning");
  private static final Map<String, Boolean> FLAGS =
      Map.of("yes", true, "no", false, "true", true, "false", false);
  private static final Map<String, Severity> SEVERITIES = words(Severity.values(), Enum::name);
  private static final Map<String, Grade> GRADES = words(Grade.values(), Grade::word);
  private static final Map<String, Hold> HOLDS = words(Hold.values(), Hold::word);
  private static final int TITLE = 60;

  private final String slug;
  private final String theme;
  private final List<Fault> faults = new ArrayList<>();

  private CardReader(String slug, String theme) {
    this.slug = slug;
    this.theme = theme;
  }

  /** A card, or null, and what is wrong with it. */
  record Read(@Nullable Card card, List<Fault> faults) {}

  /** Reads the card of the rule {@code slug} in the folder {@code theme}. */
  static Read read(String slug, String theme, Tree tree) {
    CardReader reader = new CardReader(slug, theme);
    if (!(tree instanceof Tree.Mapping mapping)) {
      Fault fault = new Fault(tree.place(), "this is no card", "keys with values", "rule: " + slug);
      return new Read(null, List.of(fault));
    }
    CardEntries entries = new CardEntries(mapping, reader.faults).keys(KEYS, REQUIRED);
    Card card = reader.card(entries);
    return new Read(reader.faults.isEmpty() ? card : null, reader.faults);
  }

  private Card card(CardEntries entries) {
    Card card =
        new Card(
            slug,
            theme,
            Objects.requireNonNullElse(entries.text("title"), ""),
            or(entries.word("severity", SEVERITIES), Severity.NOTE),
            steps(entries),
            optional(entries, "hold", HOLDS),
            or(entries.word("grade", GRADES), Grade.COMMON_PRACTICE),
            entries.texts("sources"),
            applies(entries),
            needs(entries),
            or(entries.word("judges-absence", FLAGS), false),
            fromDay(entries),
            or(entries.word("default", Map.of("on", true, "off", false)), true),
            settings(entries),
            template(entries, "why"),
            template(entries, "do"),
            none(entries, "care") ? null : template(entries, "care"),
            none(entries, "not-for") ? null : entries.text("not-for"),
            entries.texts("was"));
    check(card, entries);
    return card;
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

  private void check(Card card, CardEntries entries) {
    String named = entries.text("rule");
    if (named != null && !named.equals(slug)) {
      entries.fault(
          entries.place("rule"), "the card is of '" + named + "'", "its file's name", slug);
    }
    if (card.title().length() > TITLE) {
      entries.fault(
          entries.place("title"),
          "the title has " + card.title().length() + " characters",
          "at most " + TITLE,
          "say the problem shorter");
    }
    if (card.grade().needsSource() && card.sources().isEmpty()) {
      entries.fault(
          entries.place("grade"),
          "the grade '" + card.grade().word() + "' has no source",
          "author, year, journal under 'sources'",
          "expert-practice or common-practice, if there is none");
    }
    if (card.canHold() != (card.hold() != null)) {
      entries.fault(
          entries.place("hold"),
          card.canHold()
              ? "a rule that can HOLD must say why"
              : "a rule that cannot HOLD says none",
          "hurt, rules, cannot-be-right or none",
          card.canHold() ? "hurt" : "none");
    }
    boolean care = card.canHold() && card.hold() != Hold.CANNOT_BE_RIGHT;
    if (card.care() == null && (care || CARING.contains(theme))) {
      entries.fault(
          entries.place("care"),
          "no caution",
          "a caution for whoever stands by the athlete",
          "name the stop signs and who decides");
    }
  }

  private static final Set<String> CARING = Set.of("health", "environment", "fuelling");

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
      if ((from == null) == (when == null)) {
        step.fault(
            item.place(), "a step has one of from and when", "a value or a field", "from: 30%");
      }
      steps.add(new Card.Step(value, when, or(step.word("severity", SEVERITIES), Severity.NOTE)));
    }
    return steps;
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
    return value == null ? null : (Integer) (int) value.number();
  }

  private Map<String, Card.Setting> settings(CardEntries entries) {
    Map<String, Card.Setting> settings = new LinkedHashMap<>();
    entries
        .map("settings")
        .forEach(
            (name, tree) -> {
              Card.Setting setting = setting(name, entries.below(tree));
              if (setting != null) {
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
    if (!SettingValue.within(value, from, to)) {
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

  static @Nullable Severity severity(Tree tree) {
    return tree instanceof Tree.Scalar scalar ? SEVERITIES.get(scalar.text()) : null;
  }

  private static <E> Map<String, E> words(E[] values, Function<E, String> word) {
    return Arrays.stream(values)
        .collect(
            Collectors.toMap(word, Function.identity(), (first, second) -> first, TreeMap::new));
  }
}
