package peakproof.rule;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import peakproof.fact.Settings.Kind;
import peakproof.measure.DistanceClass;

/** What a rule may refer to outside its facts: its card's settings and the lists of words. */
final class References {
  private final Card card;
  private final FactTypes facts;
  private final Set<String> read = new TreeSet<>();

  References(Card card, FactTypes facts) {
    this.card = card;
    this.facts = facts;
  }

  String rule() {
    return card.rule();
  }

  /** Names of the settings read so far. */
  Set<String> read() {
    return Set.copyOf(read);
  }

  @Nullable Class<?> words(String list) {
    return facts.wordLists().get(list);
  }

  Collection<String> wordLists() {
    return facts.wordLists().keySet();
  }

  /** Checks a call such as {@code $set.minutes("longest", $distance)}. */
  void reads(Expression.Setting setting, @Nullable FieldType by, RuleFaults faults) {
    Kind kind = SettingReader.KINDS.get(setting.reader());
    if (kind == null) {
      faults.add(
          setting.at(),
          "the settings cannot be asked for '" + setting.reader() + "'",
          "a kind of setting",
          Spelling.instead(setting.reader(), SettingReader.KINDS.keySet()));
      return;
    }
    if (by != null && by.type() != DistanceClass.class) {
      faults.add(
          setting.at(),
          "'" + setting.by() + "' is " + by.kind().words() + ", not a distance class",
          "a setting may differ by the distance of the race",
          "bind it: Race( $distance : distance )");
      return;
    }
    names(setting.name(), by).forEach(name -> reads(name, kind, setting, faults));
  }

  /** Checks that a window of the name is on the card. */
  void window(String name, int at, RuleFaults faults) {
    reads(name, Kind.WINDOW, new Expression.Setting("", "", name, null, at), faults);
  }

  private Stream<String> names(String name, @Nullable FieldType by) {
    if (by == null) {
      return Stream.of(name);
    }
    return distances(card).stream().map(distance -> name + distance.suffix());
  }

  /** The distance classes a card is for. */
  static Collection<DistanceClass> distances(Card card) {
    return card.applies().distance().isEmpty()
        ? List.of(DistanceClass.values())
        : card.applies().distance();
  }

  private void reads(String name, Kind kind, Expression.Setting call, RuleFaults faults) {
    Map<String, Card.Setting> settings = card.settings();
    Card.Setting setting = settings.get(name);
    if (setting == null) {
      faults.add(
          call.at(),
          "the card has no setting '" + name + "'",
          "a setting of the card " + card.rule() + ".yaml",
          settings.isEmpty()
              ? "add it under 'settings'"
              : Spelling.instead(name, settings.keySet()));
      return;
    }
    read.add(name);
    Kind is = setting.value().kind();
    if (is != kind) {
      faults.add(
          call.at(),
          "the setting '" + name + "' is " + SettingReader.words(is) + " on the card",
          "here it is read as " + SettingReader.words(kind),
          "read it with " + SettingReader.of(is));
    }
  }
}
