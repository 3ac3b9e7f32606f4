package peakproof.document;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Mistakes in events, logs and houses, and in how documents begin. */
class WrongDocumentsTest {
  private static final String PLAN = Texts.PLAN + "  weeks: []\n";

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{date: 2027-07-04, legs: {swim: 3.8km}} | 1:1: the event has no 'name'; expected 'name:' among its keys; write 'name: Saltmarsh Long Course'",
        "{name: Saltmarsh, date: 2027-07-04} | 1:1: the event has no 'legs'; expected 'legs:' among its keys; write 'legs: {swim: 3.8km, bike: 180km, run: 42.2km}'",
        "{name: Saltmarsh, date: 4 July 2027, legs: {swim: 3.8km}} | 1:32: '4 July 2027' is no date; expected a date such as 2027-06-12; write year-month-day",
        "{name: Saltmarsh, date: 2027-02-30, legs: {swim: 3.8km}} | 1:32: '2027-02-30' is no date; expected a date such as 2027-06-12; check month and day in the calendar",
        "{name: Saltmarsh, date: 2027-07-04, legs: {swim: 3800}} | 1:57: '3800' is no distance; expected a distance such as 400m, 3.8km, 13.1mi or half-marathon; write 3800m",
        "{name: Saltmarsh, date: 2027-07-04, legs: {run: 10m}} | 1:56: '10m' is very short for a run; expected 100m or more, or a duration; did you mean 10min?",
        "{name: Saltmarsh, date: 2027-07-04, legs: {swim: 3.8km}, distance: long} | 1:75: 'long' is not a distance class; expected full, half, standard or sprint; write one of these",
        "{name: Saltmarsh, date: 2027-07-04, legs: {swim: 3.8km}, swim: {water: lac}} | 1:79: 'lac' is not a kind of water; expected lake, sea, river or pool; write one of these",
        "{name: Saltmarsh, date: 2027-07-04, legs: {swim: 3.8km}, swim: {temperature: 17.5°C}} | 1:85: '17.5°C' is not a temperature; expected a temperature such as 17.5C or 64F; write 17.5C",
        "{name: Saltmarsh, date: 2027-07-04, legs: {swim: 3.8km}, bike: {climb: 1250}} | 1:79: '1250' has no unit; expected a length such as 1250m or 4100ft; write 1250m",
        "{name: Saltmarsh, date: 2027-07-04, legs: {swim: 3.8km}, weather: {humidity: 160%}} | 1:85: '160%' is not a share; expected a share such as 60%; write a share of up to 100%",
        "{name: Saltmarsh, date: 2027-07-04, legs: {swim: 3.8km}, cut-offs: {swim: 2:20}} | 1:82: '2:20' is no duration here: hours or minutes?; expected a duration such as 45s, 12min, 1h30 or 1:10:00; write 2h20 or 2min20s",
        "{name: Saltmarsh, date: 2027-07-04, legs: {swim: 3.8km}, rule-book: {name: own}} | 1:65: an own rule book has no thresholds; expected 'forbidden-above', 'required-below' or both; write {name: own, forbidden-above: 24.6C, required-below: 15.9C}",
        "{name: Saltmarsh, date: 2027-07-04, legs: {swim: 3.8km}, start: 0630} | 1:72: '0630' is no time of day; expected a time such as 06:30; write 06:30",
      })
  void tellsAWrongEvent(String event, String fault) {
    assertThat(Texts.faults(PLAN, "event: " + event + "\n", null, null))
        .containsExactly("event.yaml:" + fault);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "run 1h31 15.9km rpe44 | 4:33: 'rpe44' is no rating; expected duration, distance, rpe4, 138bpm or 148W, with spaces between them; write digits, with a point for decimals",
        "run 1h31 15.9km rpe4, sleep 7h15 | 4:33: 'rpe4,' is no rating; expected duration, distance, rpe4, 138bpm or 148W, with spaces between them; write ';' instead of ',' before the next part, and nothing inside this one",
        "run 1h31; slep 7h15 | 4:27: 'slep' begins no part of a day; expected swim, bike, run, strength, other, rest, missed, sleep, fatigue, soreness, mood, stress or resting-heart-rate; did you mean 'sleep'?",
        "run; sleep 7h15 | 4:17: 'run' needs a duration or distance; expected it after a space; write it such as 'run 45min'",
        "rest; run 40min | 4:17: this day is a rest day and has sessions; expected one of the two; leave 'rest' or the sessions out",
        "rest tired | 4:22: 'tired' follows rest; expected ';' after it; write the day with keys of its own: 'sessions:', 'morning:' …",
        "bike 4h + swim 400 | 4:27: 'swim' cannot follow straight after; expected run; write ';' instead of '+' when it is a session of its own",
        "bike 4h + | 4:25: nothing follows '+'; expected the session that followed straight after; write it, or leave '+' out",
        "bike 4h 3h | 4:25: '3h' is a second duration; expected one; leave one of the two out",
        "swim 8x50 drill | 4:22: '8x50' is neither distance nor duration; expected duration, distance, rpe4, 138bpm or 148W, with spaces between them; write sets with keys of their own: 'sessions:' and '- swim: …'",
        "missed wrk | 4:24: 'wrk' is not a reason to miss a session; expected illness, work, travel, closed or other; did you mean 'work'?",
        "missed work twice | 4:29: 'twice' is one word too many; expected ';' or the end of the day after 'missed work'; write ';' before it, or leave it out",
        "sleep 7h15 8h | 4:28: '8h' is one word too many; expected ';' or the end of the day after 'sleep 7h15'; write ';' before it, or leave it out",
        "sleep | 4:17: 'sleep' needs a value; expected it after a space; write it such as 'sleep 7h15'",
        "fatigue 4; fatigue 5 | 4:28: 'fatigue' is written twice; expected it once; leave one of the two out",
        "{} | 4:5: this day says nothing; expected sessions, rest, missed, morning, pain, ill or medicine; write 'rest', or leave the day out when nothing is known",
        "{rest: yes, sessions: [{run: 40min}]} | 4:18: this day is a rest day and has sessions; expected one of the two; leave 'rest' or 'sessions' out",
        "{sessions: [{run: 40min, time: 41min}]} | 4:42: the session says its duration twice; expected it once; leave 'time' out",
        "{sessions: [{run: 40min, rpe: 12}]} | 4:47: '12' is no rating; expected a number from 0 to 10, halves allowed; write digits, with a point for decimals",
        "{sessions: [{run: 40min, held: 4:55}]} | 4:48: '4:55' is no pace; expected a pace such as 1:50/100m, 1:41/100yd, 4:55/km or 8:00/mi; write 4:55/100m or 4:55/km",
        "{morning: {sleep: 7}} | 4:35: '7' is no duration; expected a duration such as 45s, 12min, 1h30 or 1:10:00; write 7min or 7h",
        "{morning: {moood: 7}} | 4:28: 'moood' is not a key of 'morning'; expected sleep, fatigue, soreness, mood, stress or resting-heart-rate; did you mean 'mood'?",
        "{pain: [{level: 4}]} | 4:25: a pain entry has no 'site'; expected 'site:' among its keys; write 'site: left achilles'",
        "{pain: [{site: knee, when: walking}]} | 4:44: 'walking' is not a time of pain; expected running, cycling, swimming, rest or night; write one of these",
        "{pain: {site: knee}} | 4:24: 'pain' is a list; expected [ ] or lines that begin with '- '; write '- ' before each item",
        "{ill: {signs: [coughing]}} | 4:32: 'coughing' is not a sign of illness; expected sore-throat, runny-nose, cough, chest, aches, vomiting, palpitations, froth, tight-chest or breathless-in-water; did you mean 'cough'?",
        "{ill: yes} | 4:18: 'ill' needs keys of its own; expected 'key: value' lines below it, or { }; write them one a line, indented",
        "{missed: work} | 4:18: 'missed' needs keys of its own; expected 'key: value' lines below it, or { }; write them one a line, indented",
      })
  void tellsAWrongDayOfALog(String day, String fault) {
    String log =
        """
        log:
          format: 1
          days:
            2027-05-30: DAY
        """;
    assertThat(Texts.faults(PLAN, Texts.EVENT, log.replace("DAY", day), null))
        .containsExactly("log.yaml:" + fault);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{days: {}} | 1:1: the log has no 'format'; expected 'format:' among its keys; write 'format: 1'",
        "{format: 1, days: {30-05-2027: rest}} | 1:25: '30-05-2027' is no date; expected a date such as 2027-06-12; write year-month-day",
        "{format: 1, complete-since: today} | 1:34: 'today' is no date; expected a date such as 2027-06-12; write year-month-day",
        "{format: 1, weeks: {2027-05-11: lighter}} | 1:26: '2027-05-11' is a Tuesday; expected the Monday of a week; write 2027-05-10",
        "{format: 1, weeks: {2027-05-10: easy}} | 1:38: 'easy' is not a focus of a week; expected build, peak, taper, lighter or camp; write one of these",
      })
  void tellsAWrongLog(String log, String fault) {
    assertThat(Texts.faults(PLAN, Texts.EVENT, "log: " + log + "\n", null))
        .containsExactly("log.yaml:" + fault);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{name: Tidemill Tri} | 1:1: the house has no 'format'; expected 'format:' among its keys; write 'format: 1'",
        "{format: 1, severity: {strength-none: WARN}} | 1:46: 'WARN' is not a severity; expected HOLD, FIX, ASK or NOTE; write one of these",
        "{format: 1, silenced: [{rule: swim-bilateral}]} | 1:31: a silenced rule has no 'because'; expected 'because:' among its keys; write 'because: we teach it in winter'",
        "{format: 1, silenced: [swim-bilateral]} | 1:31: a silenced rule needs keys of its own; expected 'key: value' lines below it, or { }; write them one a line, indented",
        "{format: 1, settings: [a]} | 1:20: 'settings' holds a list; expected keys with values; leave the '- ' or the [ ] out",
        "{format: 1, lists: {skills: [a]}} | 1:28: 'skills' is not a key of 'lists'; expected kit or practise; write one of these, or leave the line out",
        "{format: 1, words: {swim-bilateral: {fix: a}}} | 1:45: 'fix' is not a key of 'words' for 'swim-bilateral'; expected title, why, do, care or not-for; write one of these, or leave the line out",
      })
  void tellsAWrongHouse(String house, String fault) {
    assertThat(Texts.faults(PLAN, Texts.EVENT, null, "house: " + house + "\n"))
        .containsExactly("house.yaml:" + fault);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "paln: {format: 1} | 1:1: 'paln' begins no document; expected 'plan:' as its first key; did you mean 'plan'?",
        "training: {format: 1} | 1:1: 'training' begins no document; expected 'plan:' as its first key; write 'plan:' first and everything else indented below it",
        "log: {format: 1} | 1:1: this is a file of kind 'log'; expected 'plan:' as its first key; name the file that begins with 'plan:'",
        "- a | 1:1: this is not a plan; expected a document that begins with 'plan:'; write 'plan:' first and everything else indented below it",
        "hello | 1:1: this is not a plan; expected a document that begins with 'plan:'; write 'plan:' first and everything else indented below it",
        "plan: hello | 1:1: the plan needs keys of its own; expected 'key: value' lines below it, or { }; write them one a line, indented",
        "plan: {format: 1, athlete: {name: T}, event: event.yaml, weeks: []}⏎goal: {swim: 1h10} | 2:1: 'goal' stands beside 'plan', not under it; expected every key indented below 'plan:'; indent it and the lines after it by two spaces",
        "plan: {format: 1, athlete: {name: T}, event: event.yaml, weeks: []}⏎log: {format: 1} | 2:1: 'log' stands beside 'plan', not under it; expected one document in a file; put it in a file of its own",
        "plan: {format: 1, athlete: {name: T}, event: [a], weeks: []} | 1:39: the event holds a list; expected keys with values; leave the '- ' or the [ ] out",
        "plan: {format: 1, athlete: {name: T}, event: event.yaml} | 1:1: the plan has no 'weeks'; expected 'weeks:' among its keys; write 'weeks: [{starts: 2027-05-31}]'",
      })
  void tellsADocumentThatBeginsWrong(String plan, String fault) {
    assertThat(Texts.faults(plan.replace('⏎', '\n') + "\n")).containsExactly("plan.yaml:" + fault);
  }

  @Test
  void tellsAllFaultsOfAllFilesInOrder() {
    String plan = Texts.PLAN + "  weeks: []\n  gaol: {}\n  aims: [a, b]\n";
    assertThat(Texts.faults(plan, "event: {}\n", "log: {format: 2}\n", "house: {fromat: 1}\n"))
        .extracting(fault -> fault.substring(0, fault.indexOf(';')))
        .containsExactly(
            "event.yaml:1:1: the event has no 'date'",
            "event.yaml:1:1: the event has no 'legs'",
            "event.yaml:1:1: the event has no 'name'",
            "house.yaml:1:9: 'fromat' is not a key of the house",
            "log.yaml:1:15: '2' is a format this version does not know",
            "plan.yaml:6:3: 'gaol' is not a key of the plan",
            "plan.yaml:7:10: 'a' is not an aim",
            "plan.yaml:7:13: 'b' is not an aim");
  }
}
