package peakproof.begin;

import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import peakproof.document.Documents;
import peakproof.document.Fault;

/**
 * One thing to know before a file can be written: an option, and a question.
 *
 * @param name the option's name without hyphens
 * @param label what the option takes, for the help
 * @param meaning what it is, for the help
 * @param question the same, asked in plain words
 * @param example an answer
 * @param fallback what counts without an answer; null when nothing is written then
 * @param required true when there is no file without an answer
 * @param check what is wrong with an answer, in words; null when nothing is
 */
public record Item(
    String name,
    String label,
    String meaning,
    String question,
    String example,
    @Nullable String fallback,
    boolean required,
    Function<String, @Nullable String> check) {

  static Item needed(
      String name,
      String label,
      String meaning,
      String question,
      String example,
      Function<String, @Nullable String> check) {
    return new Item(name, label, meaning, question, example, null, true, check);
  }

  static Item optional(
      String name,
      String label,
      String meaning,
      String question,
      String example,
      @Nullable String fallback,
      Function<String, @Nullable String> check) {
    return new Item(name, label, meaning, question, example, fallback, false, check);
  }

  /** What a reader says of a plan with these keys of the athlete. */
  static Function<String, @Nullable String> athlete(Function<String, String> keys) {
    return answer -> ofPlan("  athlete: {name: A, " + keys.apply(answer) + "}\n", event(""));
  }

  /** What a reader says of a plan with these keys of its own. */
  static Function<String, @Nullable String> plan(Function<String, String> keys) {
    return answer -> ofPlan("  athlete: {name: A}\n  " + keys.apply(answer) + "\n", event(""));
  }

  /** What a reader says of an event with these keys besides the compulsory ones. */
  static Function<String, @Nullable String> event(Function<String, String> keys) {
    return answer -> ofPlan("  athlete: {name: A}\n", event("    " + keys.apply(answer) + "\n"));
  }

  private static String event(String keys) {
    StringBuilder event = new StringBuilder("  event:\n");
    for (String compulsory : List.of("name: B", "date: 2027-07-04", "legs: {swim: 1km}")) {
      if (!keys.contains("    " + compulsory.split(":", 2)[0] + ":")) {
        event.append("    ").append(compulsory).append('\n');
      }
    }
    return event.append(keys).toString();
  }

  private static @Nullable String ofPlan(String keys, String event) {
    String weeks = "  weeks: [{starts: 2027-05-31}]\n";
    return first(
        Documents.drafted("plan:\n  format: 1\n" + keys + event + weeks, null, null).faults());
  }

  /** The first of the faults without its place, which a coach cannot know. */
  static @Nullable String first(List<Fault> faults) {
    if (faults.isEmpty()) {
      return null;
    }
    Fault fault = faults.get(0);
    return fault.what() + "; " + fault.expected() + "; " + fault.instead();
  }
}
