package peakproof.rule;

import java.time.LocalDate;
import java.util.*;
import org.junit.jupiter.api.Test;
import org.kie.api.runtime.KieSession;
import peakproof.fact.*;
import peakproof.measure.DistanceClass;

class ScratchTest {
  static Card card(String slug, Object... settings) {
    Map<String, Card.Setting> map = new LinkedHashMap<>();
    for (int i = 0; i < settings.length; i += 2) {
      Settings.Value v = new Settings.Value((Settings.Kind) settings[i + 1], 0.5, 0.5);
      map.put((String) settings[i], new Card.Setting((String) settings[i], v, "1", "x", v, v, "m"));
    }
    return new Card(
        slug,
        "swim",
        "t",
        Severity.FIX,
        List.of(),
        null,
        Grade.ARITHMETIC,
        List.of(),
        Card.Applies.ALL,
        List.of(),
        false,
        null,
        true,
        map,
        new Template(""),
        new Template(""),
        null,
        null,
        List.of());
  }

  @Test
  void scratch() {
    String[] conditions = {
      "$f : Outing( effort < $set.share(\"s\") )",
      "$f : Outing( effort * minutes > $set.share(\"s\") )",
      "$f : Outing( $m : minutes, effort * $m > $set.share(\"s\") )",
      "$f : Outing( effort * $set.share(\"s\") < minutes )",
      "$f : Outing( minutes < effort * $set.share(\"s\") )",
      "$f : Outing( effort != null && effort * $set.share(\"s\") < minutes )",
      "$f : Outing( effort != null, effort * $set.share(\"s\") < minutes )",
      "$f : Outing( guided )",
      "$f : Outing( !guided )",
      "$f : Outing( guided == false )",
      "$f : Outing( phase in (Phase.PEAK, Phase.TAPER) )",
      "$f : Outing( phase not in (Phase.PEAK, Phase.TAPER) )",
      "$f : Outing( kit contains \"wetsuit\" )",
      "$f : Outing( kit not contains \"wetsuit\" )",
      "$f : Outing( place == \"pool\" )",
      "$f : Outing( place != \"pool\" )",
      "Meet( $d : date )  $f : Outing( date < $d )",
      "$f : Outing( towards.openWater )",
      "$f : Outing( towards.distance == DistanceClass.FULL )",
      "Meet( $d : distance )  $f : Outing( minutes > $set.minutes(\"long\", $d) )",
      "Meet( $d : distance )  $f : Outing( minutes / effort > $set.minutes(\"long\", $d) )",
      "$f : Outing( $e : effort )  not Outing( minutes > $e * $set.share(\"s\") )",
      "$f : Outing( minutes > effort && wet || !wet && (minutes > effort) )",
      "$f : Outing( $e : effort )  $g : Outing( effort > $e )",
      "$m : Meet( )  $f : Outing( towards == $m )",
      "$f : Outing( $e : effort, minutes < $e * $set.share(\"s\") )",
      "$f : Outing( effort != null, $e : effort, minutes < $e * $set.share(\"s\") )",
      "$f : Outing( $e : effort, effort != null, minutes < $e * $set.share(\"s\") )",
      "$f : Outing( $e : effort, $e != null, minutes < $e * $set.share(\"s\") )",
      "$f : Outing( guided == true )",
      "$f : Outing( !(guided == true) )",
      "$f : Outing( !(effort > minutes) )",
      "$f : Outing( guided != true )",
      "$f : Outing( towards != null, towards.openWater )",
      "$f : Outing( towards.openWater == true )",
      "$f : Outing( towards != null && towards.openWater )",
      "$f : Outing( minutes - effort > $set.share(\"s\") )",
      "$f : Outing( minutes * minutes > minutes * effort )",
      "$f : Outing( date == $set.rule )",
      "$f : Outing( $t : towards )  not Outing( this != $f, $t.openWater, minutes < $f.minutes )",
    };
    Object[] s = {
      "s",
      Settings.Kind.SHARE,
      "long-full",
      Settings.Kind.DURATION,
      "long-half",
      Settings.Kind.DURATION,
      "long-standard",
      Settings.Kind.DURATION,
      "long-sprint",
      Settings.Kind.DURATION
    };
    FactTypes facts = FactTypes.of(List.of(Outing.class, Meet.class));
    LocalDate d = LocalDate.of(2027, 1, 1);
    Meet meet = new Meet(d.plusDays(30), DistanceClass.FULL, true);
    List<RuleCompiler.Source> sources = new ArrayList<>();
    Map<String, Card> cards = new TreeMap<>();
    for (int i = 0; i < conditions.length; i++) {
      String slug = "trial-rule-" + (i < 26 ? "" : "z") + (char) ('a' + i % 26);
      String text =
          "// what it catches, in words\n// when it stays silent\npackage peakproof.rules.swim\nimport peakproof.fact.*\nrule \""
              + slug
              + "\"\nwhen\n  $set : Settings( rule == \""
              + slug
              + "\" )\n  "
              + conditions[i]
              + "\nthen\n  findings.report($set, $f);\nend\n";
      sources.add(new RuleCompiler.Source(slug, "swim", new RuleText(slug + ".drl", text)));
      cards.put(slug, card(slug, s));
    }
    long t0 = System.nanoTime();
    for (int i = 0; i < conditions.length; i++) {
      String slug = "trial-rule-" + (i < 26 ? "" : "z") + (char) ('a' + i % 26);
      RuleCompiler.Compiled all = RuleCompiler.compile(List.of(sources.get(i)), cards, facts);
      all.faults().forEach(x -> System.out.println("FAULT " + x));
      if (!all.rules().containsKey(slug)) continue;
      KieSession session = all.knowledge().newKieSession();
      List<String> hits = new ArrayList<>();
      session.setGlobal(
          "findings",
          new Findings() {
            public void report(Settings a, Fact f) {
              hits.add(((Outing) f).minutes() + "");
            }

            public void report(Settings a, Fact f, Fact b) {
              hits.add("2");
            }

            public void report(Settings a, Fact f, double v) {
              hits.add("v" + v);
            }

            public void report(Settings a, Fact f, Fact b, double v) {
              hits.add("4");
            }
          });
      Map<String, Settings.Value> values = new TreeMap<>();
      cards.get(slug).settings().forEach((k, v) -> values.put(k, v.value()));
      try {
        session.insert(new Settings(slug, values));
        session.insert(meet);
        session.insert(
            new Outing(d, 1, null, Phase.PEAK, false, null, null, Set.of("wetsuit"), null));
        session.insert(new Outing(d, 2, 3.0, Phase.BUILD, false, true, "pool", Set.of(), meet));
        session.insert(
            new Outing(d, 3, 2.0, Phase.TAPER, true, false, "lake", Set.of("wetsuit"), meet));
        int n = session.fireAllRules(1000);
        System.out.println(i + " " + conditions[i] + " -> " + n + hits);
      } catch (Throwable e) {
        System.out.println(i + " " + conditions[i] + " !! " + e + " / " + e.getCause());
      }
      session.dispose();
    }
  }
}
