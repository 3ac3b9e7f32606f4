package peakproof.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * The shape of a rule is judged by itself, as if the look at its characters had let everything
 * pass: either of the two is enough.
 */
class VettingTest {
  private static final String RULE =
      """
      package peakproof.rules.swim
      import peakproof.fact.*
      HEAD
      rule "boat-swims" MORE
      when
          $set : Settings( rule == "boat-swims" )
          $week : Week( known ) AFTER
      then
          findings.report($set, $week);
      end
      """;

  @TestFactory
  Stream<DynamicTest> refusesWhatIsNotOnItsList() {
    return """
        HEAD  | function void f() { }                         | a 'function'
        HEAD  | import function java.lang.Math.abs            | an imported function
        HEAD  | import static java.lang.Math.abs              | an imported function
        HEAD  | import accumulate java.lang.Math abs          | an imported accumulate function
        HEAD  | global Runtime r                              | a 'global'
        HEAD  | declare A a : int end                         | a declared type
        HEAD  | declare enum A B(1); c : int end              | a declared enum
        HEAD  | declare entry-point "e" end                   | a declared entry point
        HEAD  | declare window W Week() over window:length(2) end | a declared window
        HEAD  | dialect "mvel"                                | an attribute
        HEAD  | query "q" Week() end                          | a 'query'
        MORE  | extends "other"                               | 'extends'
        MORE  | @id( 1 )                                      | an annotation
        MORE  | salience 10                                   | the attribute 'salience'
        MORE  | timer (int: 1s)                               | the attribute 'timer'
        MORE  | dialect "mvel"                                | the attribute 'dialect'
        MORE  | no-loop                                       | the attribute 'no-loop'
        MORE  | lock-on-active                                | the attribute 'lock-on-active'
        MORE  | enabled false                                 | the attribute 'enabled'
        MORE  | calendars "weekday"                           | the attribute 'calendars'
        AFTER | from entry-point "e"                          | 'from' or 'accumulate'
        AFTER | from $set.values()                            | 'from' or 'accumulate'
        AFTER | from collect( Week() )                        | 'from' or 'accumulate'
        AFTER | over window:length( 5 )                       | a window over facts
        AFTER | @watch( * )                                   | an annotation
        AFTER | eval( true )                                  | 'eval' between facts
        AFTER | forall( Week() )                              | 'forall' between facts
        AFTER | ( Week() or Race() )                          | 'or' between facts
        AFTER | not( not( Week() ) )                          | 'not' inside brackets
        AFTER | exists( Week() or Race() )                    | 'or' inside brackets
        AFTER | accumulate( Week( $n : swims ); $s : sum( $n ) ) | 'from' or 'accumulate'
        AFTER | $other := Week( known )                       | a unification or query
        AFTER | Week( "a", "b"; )                             | a field by its position
        AFTER | $path : /weeks[ known ]                       | a path through objects between facts
        AFTER | do[ other ]                                   | a second consequence between facts
        AFTER | if ( known ) break[ other ]                   | a second consequence between facts
        """
        .lines()
        .map(line -> line.split("\\s+\\|\\s+"))
        .map(row -> dynamicTest(row[1], () -> assertThat(told(row[0], row[1])).contains(row[2])));
  }

  private static List<String> told(String place, String trick) {
    String rule =
        RULE.replace(place, trick).replace("HEAD", "").replace("MORE", "").replace("AFTER", "");
    RuleText text = new RuleText("boat-swims.drl", rule);
    RuleFaults faults = new RuleFaults(text);
    try {
      Vetting.check(text, "boat-swims", "swim", Engine.parse(rule).shape(), faults);
    } catch (Engine.Unreadable notEvenReadable) {
      throw new AssertionError(notEvenReadable);
    }
    return faults.all().stream()
        .map(fault -> fault.what().replace(" has no place in a rule", ""))
        .toList();
  }
}
