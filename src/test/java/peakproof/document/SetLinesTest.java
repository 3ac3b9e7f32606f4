package peakproof.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SetLinesTest {
  private static List<SetLine.Part> parts(String text, Sport sport) {
    Quantity<SetLine> line = SetLines.read(text, sport);
    assertThat(line).isInstanceOf(Quantity.Of.class);
    return Objects.requireNonNull(line.orNull()).parts();
  }

  private static SetLine.Part part(
      int count, double metres, @Nullable Effort effort, SetLine.@Nullable Rest rest) {
    return new SetLine.Part(count, new SetLine.Distance(metres), effort, null, Set.of(), rest);
  }

  @Test
  void readsASwim() {
    assertThat(parts("400 easy, 8x50 drill r15s, 5x600 race r30s, 200 easy", Sport.SWIM))
        .containsExactly(
            part(1, 400, Effort.EASY, null),
            part(8, 50, Effort.DRILL, new SetLine.After(15)),
            part(5, 600, Effort.RACE, new SetLine.After(30)),
            part(1, 200, Effort.EASY, null));
  }

  @Test
  void readsBracketsTargetsAndSendOffs() {
    assertThat(
            parts(
                "38x100 @1:50/100m off 2:00 ; 3×( 400 race r20, 4x50 hard paddles fins r 15s ) r1min",
                Sport.SWIM))
        .containsExactly(
            new SetLine.Part(
                38,
                new SetLine.Distance(100),
                null,
                new Target.Pace(1.1),
                Set.of(),
                new SetLine.SendOff(120)),
            new SetLine.Part(
                3,
                new SetLine.Group(
                    List.of(
                        part(1, 400, Effort.RACE, new SetLine.After(20)),
                        new SetLine.Part(
                            4,
                            new SetLine.Distance(50),
                            Effort.HARD,
                            null,
                            Set.of("paddles", "fins"),
                            new SetLine.After(15)))),
                null,
                null,
                Set.of(),
                new SetLine.After(60)));
  }

  @Test
  void keepsAnEffortBesideItsTarget() {
    assertThat(parts("4h30 race @70%maxhr", Sport.BIKE))
        .containsExactly(
            new SetLine.Part(
                1,
                new SetLine.Time(16_200),
                Effort.RACE,
                new Target.ShareOfMaximum(0.7),
                Set.of(),
                null));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "20min easy\n3x(12min threshold r3min)\n15min easy\n",
        "20min easy,\n  3x(12min threshold r3min);\n15min easy",
        "20 min easy , 3 x (12 min threshold r 3 min) , 15 min easy",
        "20min easy,3x(12min threshold 3min),15min easy",
        "20min easy, 3x(12:00 threshold r3:00), 15min easy",
      })
  void readsTheSameHoweverItIsSpaced(String text) {
    assertThat(parts(text, Sport.BIKE))
        .isEqualTo(parts("20min easy, 3x(12min threshold r3min), 15min easy", Sport.BIKE));
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "SWIM | 400 eesy, 200 easy            | 4: 'eesy' is no word of a set line; expected an effort (drill, easy, steady, race, threshold, hard or max), '@' and a target, kit (paddles, fins or pull-buoy) or a rest; did you mean 'easy'?",
        "SWIM | 400 easy 8x50 drill           | 9: '8x50' stands where the part should end; expected ',' or the end of the line; write ',' before it",
        "SWIM | 8x50 r15s drill               | 10: 'drill' stands where the part should end; expected ',' or the end of the line; write effort, target and kit before the rest, and ',' between parts",
        "SWIM | 400 easy,, 200 easy           | 9: a part is missing here; expected a part such as '400 easy' or '8x50 drill r15s'; write it, or leave the ',' out",
        "SWIM | 400 easy,                     | 9: a part is missing here; expected a part such as '400 easy' or '8x50 drill r15s'; write it, or leave the ',' out",
        "SWIM | 3x(400 race r20s, 200 easy    | 2: the '(' here is not closed; expected ')' after its last part; write ')'",
        "SWIM | 400 race), 200 easy           | 8: ')' closes no bracket; expected '(' before it; leave it out, or write '3x(' where the repeated part begins",
        "SWIM | easy 400                      | 0: 'easy' is neither distance nor duration; expected an amount such as 400 or 40min; begin the part with a number",
        "SWIM | 0x50 easy                     | 0: '0' is no number of repetitions; expected 1 to 999; check the number before 'x'",
        "SWIM | 8X50 easy                     | 0: '8X' is no number of repetitions; expected 'x' after the number; write 8x",
        "SWIM | 8*50 easy                     | 0: '8*' is no number of repetitions; expected 'x' after the number; write 8x",
        "SWIM | 900x(900x100 easy)            | 5: this makes more than 9999 repetitions; expected what can be done in a session; check the numbers before 'x'",
        "SWIM | ((((((100))))))               | 4: brackets are nested more than 4 deep; expected simpler brackets; write the sets out, one after the other",
        "SWIM | 3,8km easy                    | 0: '3,8km' has a decimal comma; expected a point: a comma begins the next part; write 3.8km",
        "SWIM | 400 easy hard                 | 9: a second effort 'hard'; expected one effort a part; leave one out, or write two parts",
        "SWIM | 400 @1:50/100m @rpe6          | 15: a second target '@rpe6'; expected one target a part; leave one out",
        "SWIM | 400 @race                     | 4: '@race' is no target; expected '@' before numbers only; write race",
        "SWIM | 400 @                         | 4: '' is no target; expected a pace, heart rate, power or rating: 1:50/100m, 4:55/km, 131bpm, 70%maxhr, 65%hrr, 205W, 85%cp or rpe6; write one of these",
        "SWIM | 4x100 1:50/100m               | 6: '1:50/100m' is a target; expected '@' before it; write @1:50/100m",
        "SWIM | 4x100 hard off 120            | 11: '120' is no duration; expected an interval such as off 2:00; write 120s or 120min",
        "SWIM | 4x100 hard rest 20s           | 11: 'rest' is no word of a set line; expected an effort (drill, easy, steady, race, threshold, hard or max), '@' and a target, kit (paddles, fins or pull-buoy) or a rest; write rest as r30s",
        "RUN  | 5m easy, 10km steady          | 0: '5m' is very short for a run; expected 100m or more, or a duration; did you mean 5min?",
        "RUN  | 10min easy, 400 hard          | 12: '400' has no unit; expected a distance or duration such as 5km or 40min; write 400m",
        "BIKE | 2:05 easy                     | 0: '2:05' is no duration here: hours or minutes?; expected a duration such as 45s, 12min, 1h30 or 1:10:00; write 2h05 or 2min05s",
        "BIKE | 1h 30min easy                 | 3: '30min' after a duration can be its minutes or seconds, or a rest; expected one of the two; write them together (1h30), or the rest with 'r' (r30min)",
        "BIKE | 1h @205                       | 3: '205' is no target; expected a pace, heart rate, power or rating: 1:50/100m, 4:55/km, 131bpm, 70%maxhr, 65%hrr, 205W, 85%cp or rpe6; write its unit: 205bpm or 205W",
        "BIKE | 20min easy, 5x5min tempo r3min | 19: 'tempo' is no word of a set line; expected an effort (drill, easy, steady, race, threshold, hard or max), '@' and a target, kit (paddles, fins or pull-buoy) or a rest; write threshold or steady",
        "BIKE | 20min easy & cool             | 11: '&' is no word of a set line; expected an effort (drill, easy, steady, race, threshold, hard or max), '@' and a target, kit (paddles, fins or pull-buoy) or a rest; write one of these, or ',' and the next part",
        "BIKE | -20min easy                   | 0: '-20min' is no part; expected a part such as '400 easy' or '8x50 drill r15s'; begin the part with a number",
      })
  void namesTheColumnAndWhatWasExpected(Sport sport, String text, String problem) {
    assertThat(problems(text, sport)).containsExactly(problem);
  }

  @Test
  void tellsEveryProblemOfALineOnce() {
    assertThat(
            problems("400 eezy, 8x50 drll r15s, 3x(100 fst, 50 easy) r1min, 200 easy", Sport.SWIM))
        .hasSize(3);
  }

  private static List<String> problems(String text, Sport sport) {
    return SetLines.parse(text, sport).problems().stream()
        .map(
            p ->
                p.offset()
                    + ": "
                    + p.why().what()
                    + "; "
                    + p.why().expected()
                    + "; "
                    + p.why().instead())
        .toList();
  }

  /** Prints random lines and reads them back; the seed is fixed, so a failure can be repeated. */
  @Test
  void readsBackWhateverItsGrammarCanSay() {
    Random random = new Random(20270704);
    for (int i = 0; i < 2_000; i++) {
      Sport sport = List.of(Sport.SWIM, Sport.BIKE, Sport.RUN).get(random.nextInt(3));
      List<SetLine.Part> parts = randomParts(random, sport, 0);
      String text = print(parts, random);
      assertThat(SetLines.read(text, sport))
          .as(text)
          .isEqualTo(new Quantity.Of<>(new SetLine(text.strip(), parts)));
    }
  }

  /** Any text at all gives a line or problems whose offsets lie in it. */
  @Test
  void survivesNonsense() {
    Random random = new Random(7);
    String pieces = "0123456789xr@():,;.%/ \nabehimnorstyWkd×é-+";
    for (int i = 0; i < 8_000; i++) {
      String text =
          random
              .ints(random.nextInt(25), 0, pieces.length())
              .mapToObj(at -> pieces.substring(at, at + 1))
              .collect(Collectors.joining());
      SetLines.Outcome outcome = SetLines.parse(text, Sport.SWIM);
      assertThat(outcome.line() == null).as(text).isEqualTo(!outcome.problems().isEmpty());
      assertThat(outcome.problems()).allMatch(p -> p.offset() >= 0 && p.offset() <= text.length());
    }
  }

  private static List<SetLine.Part> randomParts(Random random, Sport sport, int depth) {
    return random
        .ints(1 + random.nextInt(4), 0, 10)
        .mapToObj(kind -> randomPart(random, sport, depth, kind))
        .toList();
  }

  private static SetLine.Part randomPart(Random random, Sport sport, int depth, int kind) {
    int count = random.nextBoolean() ? 1 : 2 + random.nextInt(8);
    SetLine.Work work =
        kind == 0 && depth < 3
            ? new SetLine.Group(randomParts(random, sport, depth + 1))
            : kind < 5
                ? new SetLine.Time(5 + random.nextInt(7_000))
                : new SetLine.Distance((sport == Sport.SWIM ? 25 : 100) + random.nextInt(20_000));
    Effort effort = random.nextBoolean() ? Effort.values()[random.nextInt(7)] : null;
    Set<String> kit = new TreeSet<>();
    if (random.nextInt(4) == 0) {
      kit.add(SetLineWords.KIT.get(random.nextInt(3)));
      kit.add(SetLineWords.KIT.get(random.nextInt(3)));
    }
    SetLine.Rest rest =
        switch (random.nextInt(3)) {
          case 0 -> new SetLine.After(1 + random.nextInt(300));
          case 1 -> new SetLine.SendOff(1 + random.nextInt(3_000));
          default -> null;
        };
    return new SetLine.Part(
        count, work, effort, random.nextInt(3) == 0 ? randomTarget(random) : null, kit, rest);
  }

  private static Target randomTarget(Random random) {
    double share = (1 + random.nextInt(100)) / 100.0;
    return switch (random.nextInt(7)) {
      case 0 -> new Target.HeartRate(100 + random.nextInt(90));
      case 1 -> new Target.ShareOfMaximum(share);
      case 2 -> new Target.ShareOfReserve(share);
      case 3 -> new Target.Power(80 + random.nextInt(300));
      case 4 -> new Target.ShareOfCriticalPower(share);
      case 5 -> new Target.Rating(random.nextInt(21) / 2.0);
      default -> new Target.Pace((60 + random.nextInt(600)) / 1000.0);
    };
  }

  private static String print(List<SetLine.Part> parts, Random random) {
    String separator = List.of(", ", ",", ";", "\n", " ;\n ").get(random.nextInt(5));
    return parts.stream().map(part -> print(part, random)).collect(Collectors.joining(separator));
  }

  private static String print(SetLine.Part part, Random random) {
    StringBuilder text = new StringBuilder();
    if (part.count() > 1 || random.nextInt(5) == 0) {
      text.append(part.count()).append(random.nextBoolean() ? "x" : " × ");
    }
    if (part.work() instanceof SetLine.Group group) {
      text.append('(').append(print(group.parts(), random)).append(')');
    } else if (part.work() instanceof SetLine.Time time) {
      text.append(duration(time.seconds(), random));
    } else {
      text.append(number(((SetLine.Distance) part.work()).metres())).append('m');
    }
    if (part.effort() != null) {
      text.append(' ').append(part.effort().name().toLowerCase(Locale.ROOT));
    }
    if (part.target() != null) {
      text.append(" @").append(print(part.target()));
    }
    part.kit().forEach(word -> text.append(' ').append(word));
    if (part.rest() instanceof SetLine.After after) {
      text.append(" r").append(duration(after.seconds(), random));
    } else if (part.rest() instanceof SetLine.SendOff off) {
      text.append(random.nextBoolean() ? " off " : " on ").append(duration(off.seconds(), random));
    }
    return text.toString();
  }

  private static String print(Target target) {
    if (target instanceof Target.Pace pace) {
      long seconds = Math.round(pace.secondsPerMetre() * 1000);
      return String.format(Locale.ROOT, "%d:%02d/km", seconds / 60, seconds % 60);
    } else if (target instanceof Target.HeartRate rate) {
      return number(rate.bpm()) + "bpm";
    } else if (target instanceof Target.ShareOfMaximum of) {
      return Math.round(of.share() * 100) + "%maxhr";
    } else if (target instanceof Target.ShareOfReserve of) {
      return Math.round(of.share() * 100) + "%hrr";
    } else if (target instanceof Target.ShareOfCriticalPower of) {
      return Math.round(of.share() * 100) + "%cp";
    } else if (target instanceof Target.Power power) {
      return number(power.watts()) + "W";
    }
    return "rpe" + number(((Target.Rating) target).rating());
  }

  private static String duration(double seconds, Random random) {
    long s = Math.round(seconds);
    if (random.nextBoolean()) {
      return String.format(Locale.ROOT, "%d:%02d:%02d", s / 3600, s / 60 % 60, s % 60);
    }
    return random.nextBoolean() ? s + "s" : s / 60 + "min" + (s % 60 == 0 ? "" : s % 60 + "s");
  }

  private static String number(double value) {
    return value == Math.rint(value) ? Long.toString(Math.round(value)) : Double.toString(value);
  }
}
