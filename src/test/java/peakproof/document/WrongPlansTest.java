package peakproof.document;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each line is one mistake in a plan that is sound otherwise, and the one fault it gives. */
class WrongPlansTest {
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "swm: 400 easy | 9:13: 'swm' is not a key of a session; expected swim, bike, run, strength, other, race, where, company, water, air, climb, descent …; did you mean 'swim'?",
        "swim: 400 eesy | 9:23: 'eesy' is no word of a set line; expected an effort (drill, easy, steady, race, threshold, hard or max), '@' and a target, kit (paddles, fins or pull-buoy) or a rest; did you mean 'easy'?",
        "swim: \"400 easy, 8x50 drll r15s\" | 9:35: 'drll' is no word of a set line; expected an effort (drill, easy, steady, race, threshold, hard or max), '@' and a target, kit (paddles, fins or pull-buoy) or a rest; did you mean 'drill'?",
        "run: 5m easy | 9:18: '5m' is very short for a run; expected 100m or more, or a duration; did you mean 5min?",
        "bike: 2:05 steady | 9:19: '2:05' is no duration here: hours or minutes?; expected a duration such as 45s, 12min, 1h30 or 1:10:00; write 2h05 or 2min05s",
        "bike: 0min easy | 9:19: '0min' is no duration; expected a duration such as 45s, 12min, 1h30 or 1:10:00; write an amount above zero, or leave it out",
        "run 40min easy | 9:13: 'run 40min easy' has no ': '; expected a session such as 'run: 40min easy'; write 'run: 40min easy'",
        "easy run | 9:13: 'easy run' has no ': '; expected a session such as 'run: 40min easy'; write the sport, ': ' and then the rest",
        "{bike: 1h, then: run 20min easy} | 9:30: 'run 20min easy' has no ': '; expected a session such as 'run: 40min easy'; write 'run: 20min easy' below 'then:', indented",
        "{run: 20min easy, 4x20s hard r1min, 5min easy} | 9:31: '4x20s hard r1min' has no value: inside { } a comma ends the value before it; expected 'key: value'; put the set line in quotes or on its own line",
        "where: pool | 9:13: this session does not say its sport; expected swim, bike, run, strength, other, race or rest; write it first, such as 'run: 40min easy'",
        "{swim: 400 easy, bike: 1h easy} | 9:30: 'bike' is a second sport in one session; expected one of swim, bike, run, strength, other or race; write it as a session of its own, or under 'then:' when it follows straight after",
        "{run: 40min easy, then: {swim: 400 easy}} | 9:31: 'then' is not a key of a session; expected it after a swim or ride only; write it as a session of its own",
        "{bike: 1h easy, then: {swim: 400 easy}} | 9:29: this cannot follow straight after a ride; expected a run; write it as a session of its own",
        "{run: 40min easy, where: runway} | 9:38: 'runway' is not a place to train; expected pool, open-water, road, trainer, track, trail, treadmill, gravel, gym or home; write one of these",
        "{run: 40min easy, kit: race-shoes} | 9:36: 'kit' is a list; expected [ ] or lines that begin with '- '; write kit: [race-shoes]",
        "{run: 40min easy, kit: [race-sheos]} | 9:37: 'race-sheos' is not a kit word; expected wetsuit, race-bike, race-clothing, race-shoes, race-wheels, race-helmet, paddles, fins or pull-buoy; did you mean 'race-shoes'?",
        "{run: 40min easy, rpe: 5} | 9:31: 'rpe' is not a key of a session; expected it in a log only; write what was measured in the log, and a target in the line such as '@rpe6'",
        "{run: 40min easy, for: [core]} | 9:31: 'for' is not a key of a session; expected it in a strength session only; leave it out, or say it in 'note'",
        "{run: 40min easy, effort: hard} | 9:31: 'effort' is not a key of a session; expected it beside 'race' only; write the effort in the line",
        "{run: 40min easy, test: maybe} | 9:37: 'maybe' is neither yes nor no; expected yes or no; write yes or no",
        "{run: 40min easy, at: 7:00} | 9:35: '7:00' is no time of day; expected am, noon, pm or a time such as 06:30; write 07:00",
        "{run: 40min easy, water: 17} | 9:38: '17' has no unit; expected a temperature such as 17.5C or 64F; write 17C",
        "{strength: 3x10 squats} | 9:24: '3x10' is no duration; expected a duration such as 15min; write its minutes first, such as 'strength: 40min', and the rest in 'note'",
        "{strength: 45min heavy} | 9:30: 'heavy' follows the duration; expected the duration alone; say it in 'load', 'for' or 'note'",
        "{bike: 1h easy, then: [run: 20min easy]} | 9:29: 'then' holds a list; expected keys with values; leave the '- ' or the [ ] out",
        "yoga: 40min | 9:13: 'yoga' is not a key of a session; expected swim, bike, run, strength, other, race, where, company, water, air, climb, descent …; write one of these; any other sport as 'other: 40min …'",
        "run: 60 minutes easy | 9:18: '60 minutes' is no duration; expected a duration such as 45s, 12min, 1h30 or 1:10:00; write 60min",
        "run: 3 miles easy | 9:18: '3 miles' is neither distance nor duration; expected an amount such as 5km or 40min; write 3mi",
        "{race: Reedmere, run: 10km race} | 9:14: 'race' is a second sport in one session; expected one of swim, bike, run, strength, other or race; write it as a session of its own, or under 'then:' when it follows straight after",
        "{bike: 1h easy, fuel: {carbohydrate: 75g}} | 9:50: '75g' is not a carbohydrate rate; expected a carbohydrate rate such as 75g/h; write it in g/h",
        "warning: fog | 9:22: 'fog' is not a warning; expected lightning, gale, ice, smoke or water-quality; write one of these",
        "{rest: yes, swim: 400 easy} | 9:25: 'swim' is not a key of a rest line; expected rest or note; write one of these, or leave the line out",
      })
  void tellsAWrongSession(String session, String fault) {
    String day =
        """
          weeks:
            - starts: 2027-05-31
              days:
                mon:
                  - SESSION
        """;
    assertThat(Texts.faults(Texts.PLAN + day.replace("SESSION", session)))
        .containsExactly("plan.yaml:" + fault);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "starts: 2027-06-01 | 7:15: '2027-06-01' is a Tuesday; expected the Monday of a week; write 2027-05-31",
        "starts: 1.6.2027 | 7:15: '1.6.2027' is no date; expected a date such as 2027-06-12; write year-month-day",
        "{starts: 2027-05-31, focus: tapper} | 7:35: 'tapper' is not a focus of a week; expected build, peak, taper, lighter or camp; did you mean 'taper'?",
        "{starts: 2027-05-31, hours: 13} | 7:35: '13' is no duration; expected a duration such as 45s, 12min, 1h30 or 1:10:00; write 13min or 13h",
        "{starts: 2027-05-31, hours: [13h]} | 7:28: 'hours' holds a list; expected one value; write it on the same line: 'hours: VALUE'",
        "{starts: 2027-05-31, without: {swimming: pool closed}} | 7:38: 'swimming' is not a key of 'without'; expected swim, open-water, bike, run or strength; did you mean 'swim'?",
        "{starts: 2027-05-31, away: holiday} | 7:34: 'holiday' is not a reason to be away; expected travel, illness or work; write one of these",
        "{starts: 2027-05-31, days: {monday: rest}} | 7:35: 'monday' is not a key of 'days'; expected mon, tue, wed, thu, fri, sat or sun; did you mean 'mon'?",
        "{starts: 2027-05-31, days: {mon: {swim: 400 easy}}} | 7:35: a day is a list of sessions; expected lines that begin with '- ', or the word rest; write '- ' before each session",
        "{starts: 2027-05-31, days: {mon: run 40min easy}} | 7:35: a day is a list of sessions; expected lines that begin with '- ', or the word rest; write '- run: 40min easy' on a line below, indented",
        "{starts: 2027-05-31, days: {mon: off}} | 7:35: a day is a list of sessions; expected lines that begin with '- ', or the word rest; write '- ' before each session",
        "{starts: 2027-05-31, days: [rest]} | 7:28: 'days' holds a list; expected keys with values; leave the '- ' or the [ ] out",
        "{starts: 2027-05-31, but: {mon: rest}} | 7:28: this week has 'but' and no 'like'; expected 'but' beside 'like: DATE' only; write 'days:' instead of 'but:'",
        "{starts: 2027-05-31, like: 2027-06-07, days: {mon: rest}} | 7:46: this week has both 'like' and 'days'; expected 'like' with 'but' for the days that differ; write 'but:' instead of 'days:'",
        "{starts: 2027-05-31, like: 2027-06-14} | 7:28: there is no week that starts on 2027-06-14; expected the start of another week of this plan; write one of 2027-06-07",
        "{starts: 2027-05-31, like: 2027-05-31} | 7:28: 'like' leads back to this week, by 2027-05-31; expected a week that is written out in the end; write the days of one of them",
        "{focus: peak} | 7:7: a week has no 'starts'; expected 'starts:' among its keys; write 'starts: 2027-05-31'",
        "{strats: 2027-05-31} | 7:8: 'strats' is not a key of a week; expected starts, like, focus, hours, note, without, away, but or days; did you mean 'starts'?",
        "starts: 2027-06-07 | 7:7: a second week starts on 2027-06-07, the first at plan.yaml:6:7; expected one week for each Monday; put their days together, or check the dates",
        "rest | 7:7: a week needs keys of its own; expected 'key: value' lines below it, or { }; write them one a line, indented",
      })
  void tellsAWrongWeek(String week, String fault) {
    String weeks =
        """
          weeks:
            - starts: 2027-06-07
            - WEEK
        """;
    assertThat(Texts.faults(Texts.PLAN + weeks.replace("WEEK", week)))
        .containsExactly("plan.yaml:" + fault);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "goal: {swim: 1:10} | 6:16: '1:10' is no duration here: hours or minutes?; expected a duration such as 45s, 12min, 1h30 or 1:10:00; write 1h10 or 1min10s",
        "goal: {bike-effort: 4:55/km} | 6:23: '4:55/km' is a pace; expected a heart rate, power or rating; write it such as 70%maxhr, 205W or rpe5",
        "block: {peak-weeks: three} | 6:23: 'three' is no whole number; expected a number such as 3; write digits only",
        "race-day: {fuel: {swim: {fluid: 1l/h}}} | 6:21: 'swim' is not a key of 'fuel' of the race day; expected bike or run; write one of these, or leave the line out",
        "race-day: {wetsuit: yes} | 6:14: 'wetsuit' of the race day needs keys of its own; expected 'key: value' lines below it, or { }; write them one a line, indented",
        "race-day: {medicines: [aspirin]} | 6:26: 'aspirin' is not a kind of medicine; expected prescribed, painkiller or anti-inflammatory; write one of these",
        "travel: {arrive: 2027-07-01} | 6:20: '2027-07-01' is no date with a time; expected one such as 2027-07-02T14:00; add the time: 2027-07-01T14:00",
        "travel: {zones: six} | 6:19: 'six' is no whole number; expected a number such as 0, +6 or -6; write digits only, with '+' or '-' before them",
        "changes: [{date: 2027-05-20, what: sadle}] | 6:38: 'sadle' is not a change of equipment; expected saddle, cleats, crank, bars, position, wheels, tyres, helmet or shoes; did you mean 'saddle'?",
        "changes: [{what: saddle}] | 6:13: a change has no 'date'; expected 'date:' among its keys; write 'date: 2027-05-20'",
        "aims: [weight-los] | 6:10: 'weight-los' is not an aim; expected weight-loss; did you mean 'weight-loss'?",
        "settings: {run-longest-too-long: 3h} | 6:14: 'run-longest-too-long' needs keys of its own; expected 'key: value' lines below it, or { }; write them one a line, indented",
        "settings: {run-longest-too-long: {longest: [3h]}} | 6:37: 'longest' holds a list; expected one value; write it on the same line: 'longest: VALUE'",
        "accepted: [{rule: swim-open-water-weekly, by: MK}] | 6:14: an accepted finding has no 'because'; expected 'because:' among its keys; write 'because: the lake is closed'",
        "accepted: [{rule: r, because: b, week: 2027-06-15}] | 6:42: '2027-06-15' is a Tuesday; expected the Monday of a week; write 2027-06-14",
        "accepted: [{rule: r, because: b, week: 2027-06-14, day: 2027-06-15}] | 6:54: this names both a week and a day; expected 'week', 'day', or neither for the whole plan; leave one of the two out",
        "preset: expert | 6:11: 'expert' is not a preset; expected by-athlete, short-course, first-timer, masters, experienced or default; write one of these",
        "log: {days: {}} | 6:3: 'log' holds keys of its own; expected one value; write it on the same line: 'log: VALUE'",
        "gaol: {swim: 1h10} | 6:3: 'gaol' is not a key of the plan; expected format, preset, athlete, event, log, goal, block, weeks, race-day, travel, changes, aims …; did you mean 'goal'?",
        "format: 2 | 5:11: '2' is a format this version does not know; expected format 1; write 'format: 1'",
      })
  void tellsAWrongPlan(String line, String fault) {
    String plan = Texts.PLAN + "  weeks: []\n  " + line + "\n";
    assertThat(Texts.faults(line.startsWith("format") ? plan.replace("  format: 1\n", "") : plan))
        .containsExactly("plan.yaml:" + fault);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{born: 1988} | 3:3: the athlete has no 'name'; expected 'name:' among its keys; write 'name: Tove Lindqvist'",
        "{nmae: Tove} | 3:13: 'nmae' is not a key of the athlete; expected name, born, sex, category, mass, experience, heart-rate, swim, bike, tests, available, lately …; did you mean 'name'?",
        "{name: ~} | 3:13: 'name' needs a value; expected something after the ':'; write it, or leave the line out",
        "{name: Tove, born: 88} | 3:31: '88' is no year of birth; expected a year such as 1988, or a date; write four digits",
        "{name: Tove, mass: 62} | 3:31: '62' has no unit; expected a mass such as 62kg or 137lb; write 62kg",
        "{name: Tove, heart-rate: {max: 46bpm, resting: 182bpm}} | 3:50: the resting heart rate is not below the highest; expected resting below max; check which is which",
        "{name: Tove, heart-rate: 182bpm} | 3:25: 'heart-rate' of the athlete needs keys of its own; expected 'key: value' lines below it, or { }; write them one a line, indented",
        "{name: Tove, bike: {critical-power: 218w}} | 3:48: '218w' is not a power; expected a power such as 205W; write 218W",
        "{name: Tove, tests: [{date: 2027-05-08, swim: 400m}]} | 3:33: this test has a distance and no time; expected a distance with its time, or a duration with power or heart rate; add 'time: 6:28'",
        "{name: Tove, tests: [{date: 2027-05-08, bike: 20min}]} | 3:33: this test has a duration and nothing measured; expected a distance with its time, or a duration with power or heart rate; add 'power: 231W' or 'heart-rate: 152bpm'",
        "{name: Tove, tests: [{date: 2027-05-08, bike: 20min, time: 20:00}]} | 3:65: this test has its duration twice; expected a distance with its time, or a duration with power or heart rate; leave 'time' out, or write a distance instead of the duration",
        "{name: Tove, tests: [{date: 2027-05-08, time: 6:28}]} | 3:33: this test does not say its sport; expected one of swim, bike or run; write it such as {date: 2027-05-08, swim: 400m, time: 6:28}",
        "{name: Tove, tests: [{date: 2027-05-08, swim: 400m, time: 6.28}]} | 3:70: '6.28' is no duration; expected a time such as 45s, 12min, 6:28 or 1:41:30; write 6:28",
        "{name: Tove, available: {days-off: [friday]}} | 3:48: 'friday' is no weekday; expected mon, tue, wed, thu, fri, sat or sun; write fri",
        "{name: Tove, lately: {longest-swim: 2.5}} | 3:48: '2.5' is no distance; expected a distance such as 400m, 3.8km, 13.1mi or half-marathon; write 2.5km or 2.5m",
        "{name: Tove, health: {injuries: [{from: 2027-03-02}]}} | 3:45: an injury has no 'site'; expected 'site:' among its keys; write 'site: left achilles'",
        "{name: Tove, health: {injuries: [{site: knee, from: 2027-03-02, to: 2027-02-02}]}} | 3:76: this injury ends on 2027-02-02, before it begins; expected 'to' on or after 'from'; check the two dates",
        "{name: Tove, health: {injuries: none}} | 3:44: 'injuries' is a list; expected [ ] or lines that begin with '- '; write injuries: []",
        "{name: Tove, health: {conditions: [astma]}} | 3:47: 'astma' is not a condition listed in the format; expected asthma, beta-blocker, diabetes, heart, high-blood-pressure, pregnant, post-partum, gut or other; did you mean 'asthma'?",
        "{name: Tove, sweat-rates: [{before: 63kg, after: 62kg, duration: 2h}]} | 3:39: a weighed session has no 'drunk'; expected 'drunk:' among its keys; write 'drunk: 1.1l'",
        "{name: Tove, para: {device: hand-bike}} | 3:40: 'hand-bike' is not a device; expected wheelchair, handcycle, prosthesis or none; write one of these",
        "Tove | 3:3: the athlete needs keys of its own; expected 'key: value' lines below it, or { }; write them one a line, indented",
      })
  void tellsAWrongAthlete(String athlete, String fault) {
    String plan = Texts.PLAN.replace("{name: Tove Lindqvist}", athlete) + "  weeks: []\n";
    assertThat(Texts.faults(plan)).containsExactly("plan.yaml:" + fault);
  }
}
