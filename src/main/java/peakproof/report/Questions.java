package peakproof.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import peakproof.document.Tree;
import peakproof.document.YamlTree;

/** What to ask for each entry that a rule may miss, in the words of {@code questions.yaml}. */
final class Questions {
  private static final String FILE = "questions.yaml";
  private static final String ANY = "…";
  private static final String OR = " or ";

  private final Map<String, Question> byEntry = new LinkedHashMap<>();

  /**
   * A question.
   *
   * @param example of an answer; null when it is for the coach
   * @param key where the answer goes
   * @param optional true when it touches health
   */
  record Question(String ask, @Nullable String example, String key, boolean optional) {
    /** True when only the coach can answer it. */
    boolean forCoach() {
      return example == null;
    }
  }

  private Questions() {}

  static Questions shipped() {
    try (InputStream in = Objects.requireNonNull(Questions.class.getResourceAsStream(FILE), FILE)) {
      YamlTree.Parsed parsed = YamlTree.read(FILE, in.readAllBytes());
      if (!(parsed.tree() instanceof Tree.Mapping all) || !parsed.faults().isEmpty()) {
        throw new IllegalStateException("cannot be read: " + parsed.faults());
      }
      Questions questions = new Questions();
      all.entries().values().forEach(entry -> questions.add(entry.value()));
      return questions;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void add(Tree tree) {
    Question question =
        new Question(
            Objects.requireNonNull(text(tree, "ask")),
            text(tree, "example"),
            Objects.requireNonNull(text(tree, "key")),
            "yes".equals(text(tree, "optional")));
    Tree.Entry entries = Objects.requireNonNull(tree.entry("entries"));
    for (Tree item : ((Tree.Sequence) entries.value()).items()) {
      String entry = ((Tree.Scalar) item).text();
      if (byEntry.put(entry, question) != null) {
        throw new IllegalStateException("asked for twice: " + entry);
      }
    }
  }

  private static @Nullable String text(Tree tree, String key) {
    Tree.Entry entry = tree.entry(key);
    return entry == null ? null : ((Tree.Scalar) entry.value()).text();
  }

  /** The entries that are asked for, as the file writes them. */
  List<String> entries() {
    return List.copyOf(byEntry.keySet());
  }

  /** The line of the file that a missing entry falls under; null when there is none. */
  @Nullable String known(String missing) {
    if (byEntry.containsKey(missing)) {
      return missing;
    }
    return byEntry.keySet().stream()
        .filter(entry -> entry.endsWith(ANY))
        .filter(entry -> missing.startsWith(entry.substring(0, entry.length() - ANY.length())))
        .findFirst()
        .orElse(null);
  }

  /**
   * What to ask for a missing entry. Where any one of several would do, the first that an athlete
   * can answer is asked for; null when nobody knows how to ask.
   */
  @Nullable Question of(String missing) {
    Question whole = one(missing);
    if (whole != null) {
      return whole;
    }
    List<Question> parts = new ArrayList<>();
    for (int or = missing.indexOf(OR); or >= 0; or = missing.indexOf(OR, or + 1)) {
      Question first = one(missing.substring(0, or));
      Question rest = first == null ? null : of(missing.substring(or + OR.length()));
      if (first != null && rest != null) {
        parts.add(first);
        parts.add(rest);
      }
    }
    return parts.stream()
        .filter(question -> !question.forCoach())
        .findFirst()
        .orElse(parts.isEmpty() ? null : parts.get(0));
  }

  private @Nullable Question one(String missing) {
    String entry = known(missing);
    return entry == null ? null : byEntry.get(entry);
  }
}
