package peakproof.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Auditor;
import peakproof.audit.InForce;
import peakproof.document.Documents;
import peakproof.document.Nearest;
import peakproof.rule.Ruleset;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The rules of a run as they count: for a plan, by a house, or as shipped. */
final class RulesInForce {
  /** More names than these nobody reads in a message. */
  private static final int MOST_NAMED = 5;

  private static final String BASE = "base/plan.yaml";

  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  @Mixin private RuleFolders folders = new RuleFolders();

  /** The rules of all folders; what is wrong with any of them is told. */
  Auditor load(Messages messages, Surroundings surroundings) {
    Auditor auditor = loadQuietly(surroundings);
    messages.tell(auditor.ruleFaults());
    return auditor;
  }

  /** The rules of all folders, for a command in which nothing is judged. */
  Auditor loadQuietly(Surroundings surroundings) {
    return folders.auditor(surroundings);
  }

  /** Fine, unless a rule is wrong. */
  static ExitCode code(Auditor auditor) {
    return auditor.ruleFaults().isEmpty() && auditor.houseRuleFaults().isEmpty()
        ? ExitCode.FINE
        : ExitCode.WRONG_RULE;
  }

  /**
   * Writes what is to be said of the rules as they count; nothing when a document is wrong.
   *
   * @param saying gives null when it has told faults instead
   */
  ExitCode tell(
      @Nullable Path plan,
      @Nullable Path house,
      Messages messages,
      Surroundings surroundings,
      OutputOptions output,
      Saying saying) {
    Auditor auditor = load(messages, surroundings);
    InForce inForce = of(auditor, plan, house, messages, surroundings);
    String text = inForce == null ? null : saying.of(auditor, inForce);
    ExitCode written = text == null ? ExitCode.WRONG_DOCUMENT : output.write(text, messages);
    return code(auditor).or(written);
  }

  /** Says something of the rules. */
  @FunctionalInterface
  interface Saying {
    @Nullable String of(Auditor auditor, InForce inForce);
  }

  /**
   * As they count for the plan, else by the house named, else by the nearest one above the folder
   * the user is in, else as shipped; null, with its faults told, when a document is wrong.
   */
  private @Nullable InForce of(
      Auditor auditor,
      @Nullable Path plan,
      @Nullable Path house,
      Messages messages,
      Surroundings surroundings) {
    InForce.Outcome outcome;
    if (plan != null) {
      outcome = InForce.forPlan(auditor, one(plan), house);
    } else {
      Path counts = house == null ? Documents.houseFrom(Path.of("")) : house;
      if (counts == null) {
        return InForce.shipped(auditor.rules());
      }
      Path shipped = folders.all(surroundings).get(0);
      outcome = InForce.forHouse(auditor, shipped.resolve(BASE), counts);
    }
    messages.tell(auditor.houseRuleFaults());
    if (outcome instanceof InForce.Outcome.Wrong wrong) {
      messages.tell(wrong.faults());
      return null;
    }
    return ((InForce.Outcome.Known) outcome).rules();
  }

  /** The plan at a path; a usage fault when there is none or more than one. */
  Path one(Path path) {
    List<Path> plans = Files.exists(path) ? Documents.plansUnder(path) : List.of();
    if (plans.size() != 1) {
      throw new ParameterException(
          command.commandLine(),
          plans.isEmpty()
              ? "no plan at '" + path + "'; a plan is a YAML file that begins with 'plan:'"
              : plans.size() + " plans at '" + path + "'; name one of them");
    }
    return plans.get(0);
  }

  /** The rule a user means, by its name or a former one; a usage fault when there is none. */
  String rule(String name, Ruleset rules) {
    String slug = rules.slug(name);
    if (slug != null) {
      return slug;
    }
    if (rules.origin().containsKey(name)) {
      throw new ParameterException(
          command.commandLine(),
          "the rule '" + name + "' is broken; mend what 'peakproof rules check' lists");
    }
    throw new ParameterException(
        command.commandLine(),
        "there is no rule '"
            + name
            + "'; "
            + instead(name, rules.cards().keySet())
            + "; 'peakproof rules list' names them all");
  }

  /** The nearest name, else those that share a word with what was typed. */
  private static String instead(String name, Set<String> known) {
    String near = Nearest.among(name, known);
    if (near != null) {
      return "did you mean '" + near + "'?";
    }
    List<String> words = Arrays.asList(name.toLowerCase(Locale.ROOT).split("[^a-z]+"));
    List<String> akin =
        known.stream()
            .filter(rule -> Arrays.stream(rule.split("-")).anyMatch(words::contains))
            .limit(MOST_NAMED)
            .toList();
    return akin.isEmpty()
        ? "a rule's name is like swim-bilateral"
        : "akin: " + String.join(", ", akin);
  }
}
