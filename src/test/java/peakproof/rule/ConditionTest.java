package peakproof.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.kie.api.runtime.KieSession;
import peakproof.fact.Fact;
import peakproof.fact.Findings;
import peakproof.fact.Meet;
import peakproof.fact.Outing;
import peakproof.fact.Phase;
import peakproof.fact.Settings;
import peakproof.measure.DistanceClass;

/** What conditions mean once the engine runs them, above all where something is unknown. */
class ConditionTest {
  private static final LocalDate DAY = LocalDate.of(2027, 5, 1);
  private static final Meet MEET = new Meet(DAY.plusDays(30), DistanceClass.FULL, true);

  /** Knows next to nothing of itself. */
  private static final Outing A =
      new Outing(DAY, 1, null, Phase.PEAK, false, null, null, Set.of("wetsuit"), null);

  private static final Outing B =
      new Outing(DAY, 2, 3.0, Phase.BUILD, false, true, "pool", Set.of(), MEET);
  private static final Outing C =
      new Outing(DAY, 3, 2.0, Phase.TAPER, true, false, "lake", Set.of("wetsuit"), MEET);

  private static final Map<String, Settings.Value> VALUES =
      Map.of(
          "most", new Settings.Value(Settings.Kind.SHARE, 2.5, 2.5),
          "whole", new Settings.Value(Settings.Kind.SHARE, 1, 1),
          "long-full", new Settings.Value(Settings.Kind.DURATION, 2.5, 2.5),
          "long-half", new Settings.Value(Settings.Kind.DURATION, 0, 0),
          "long-standard", new Settings.Value(Settings.Kind.DURATION, 0, 0),
          "long-sprint", new Settings.Value(Settings.Kind.DURATION, 0, 0));

  private static final String TABLE =
      """
      $o : Outing( effort < $set.share("most") )                                | C
      $o : Outing( effort >= $set.share("most") )                               | B
      $o : Outing( minutes < effort )                                           | B
      $o : Outing( effort != null )                                             | B C
      $o : Outing( effort == null )                                             | A
      $o : Outing( guided == true )                                             | B
      $o : Outing( guided == false )                                            | C
      $o : Outing( guided != null, guided != true )                             | C
      $o : Outing( guided != null && guided )                                   | B
      $o : Outing( phase in (Phase.PEAK, Phase.TAPER) )                         | A C
      $o : Outing( phase not in (Phase.PEAK, Phase.TAPER) )                     | B
      $o : Outing( kit contains "wetsuit" )                                     | A C
      $o : Outing( kit not contains "wetsuit" )                                 | B
      $o : Outing( place == "pool" )                                            | B
      $o : Outing( place != null, place != "pool" )                             | C
      $o : Outing( place == "pool" || place == "lake" )                         | B C
      $o : Outing( wet )                                                        | C
      $o : Outing( !wet )                                                       | A B
      $o : Outing( !(wet || minutes > $set.share("whole")) )                    | A
      $o : Outing( wet || minutes < effort )                                    | B C
      $o : Outing( minutes > effort && wet || !wet && (minutes < effort) )      | B C
      $o : Outing( effort != null, $e : effort, minutes < $e * $set.share("whole") ) | B
      $o : Outing( $e : effort, $e != null, minutes < $e * $set.share("most") ) | B C
      $o : Outing( effort != null, minutes - effort > $set.share("whole") )     |
      $o : Outing( effort != null, minutes / effort > $set.share("whole") )     | C
      $o : Outing( towards == null )                                            | A
      $o : Outing( towards != null, towards.openWater )                         | B C
      $o : Outing( towards != null && towards.distance == DistanceClass.HALF )  |
      Meet( $d : date ) $o : Outing( date < $d )                                | A B C
      Meet( $d : distance ) $o : Outing( minutes > $set.minutes("long", $d) )   | C
      $m : Meet( ) $o : Outing( towards == $m )                                 | B C
      $o : Outing( ) not Outing( minutes > $o.minutes )                         | C
      $o : Outing( $e : effort, $e != null ) not Outing( this != $o, effort > $e ) | B
      $o : Outing( ) exists Outing( this != $o, phase == Phase.PEAK )           | B C
      """;

  @Test
  void meanWhatTheySay() {
    Map<String, String> expected = new LinkedHashMap<>();
    for (String line : TABLE.lines().toList()) {
      String[] row = line.split("\\s+\\|(?=\\s|$)", -1);
      String slug = "row-" + (expected.size() + 1);
      expected.put(slug, row[0] + " -> " + row[row.length - 1].strip());
    }
    PlainRules rules = rules();
    RuleCompiler.Compiled compiled = rules.compile(FactTypes.of(List.of(Outing.class, Meet.class)));
    assertThat(compiled.faults()).isEmpty();

    Map<String, Set<String>> found = run(compiled, expected.keySet());
    Map<String, String> told = new LinkedHashMap<>();
    expected.forEach(
        (slug, row) ->
            told.put(
                slug,
                row.substring(0, row.indexOf(" -> ") + 4)
                    + String.join(" ", found.getOrDefault(slug, Set.of()))));
    assertThat(told).isEqualTo(expected);
  }

  /** The rules of the table, named by their rows. */
  static PlainRules rules() {
    PlainRules rules = new PlainRules(VALUES);
    for (String line : TABLE.lines().toList()) {
      String condition = line.split("\\s+\\|(?=\\s|$)", -1)[0];
      rules.add("row-" + (rules.sources().size() + 1), condition, "$set, $o");
    }
    return rules;
  }

  private static Map<String, Set<String>> run(RuleCompiler.Compiled compiled, Set<String> slugs) {
    Map<Outing, String> names = Map.of(A, "A", B, "B", C, "C");
    Map<String, Set<String>> found = new TreeMap<>();
    KieSession session = Engine.load(compiled.classes()).newKieSession();
    try {
      session.setGlobal(
          "findings",
          (PlainFindings)
              (settings, fact) ->
                  found
                      .computeIfAbsent(settings.rule(), slug -> new TreeSet<>())
                      .add(String.valueOf(names.get((Outing) fact))));
      slugs.forEach(slug -> session.insert(new Settings(slug, VALUES)));
      List.of(MEET, A, B, C).forEach(session::insert);
      session.fireAllRules();
    } finally {
      session.dispose();
    }
    return found;
  }

  /** Takes reports of a fact alone. */
  private interface PlainFindings extends Findings {
    @Override
    default void report(Settings settings, Fact fact, Fact because) {
      throw new AssertionError(because);
    }

    @Override
    default void report(Settings settings, Fact fact, double value) {
      throw new AssertionError(value);
    }

    @Override
    default void report(Settings settings, Fact fact, Fact because, double value) {
      throw new AssertionError(because);
    }
  }
}
