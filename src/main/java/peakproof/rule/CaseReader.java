package peakproof.rule;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import peakproof.document.Fault;
import peakproof.document.Quantity;
import peakproof.document.Tree;
import peakproof.document.YamlTree;
import peakproof.rule.Case.Expectation;

/** Reads the cases beside a rule and applies their changes to the base document. */
final class CaseReader {
  /** The day the base document is judged on. */
  static final LocalDate AS_OF = LocalDate.of(2027, 5, 30);

  private static final Set<String> KEYS =
      Set.of("case", "as-of", "change", "finds", "also", "unsure");

  private final CaseBase base;

  CaseReader(CaseBase base) {
    this.base = base;
  }

  /** The cases of one file, and what is wrong with it. */
  record Read(List<Case> cases, List<Fault> faults) {}

  Read read(String rule, YamlTree.Parsed file) {
    List<Fault> faults = new ArrayList<>(file.faults());
    List<Case> cases = new ArrayList<>();
    if (file.tree() instanceof Tree.Mapping mapping && faults.isEmpty()) {
      CardEntries entries =
          new CardEntries(mapping, faults)
              .keys(Set.of("wrong", "fine", "unsure"), Set.of("wrong", "fine"));
      for (Expectation expectation : Expectation.values()) {
        String key = expectation.name().toLowerCase(Locale.ROOT);
        for (Tree item : entries.items(entries.tree(key))) {
          Case read = one(rule, expectation, entries.below(item), item);
          if (read != null) {
            cases.add(read);
          }
        }
      }
    }
    return new Read(cases, faults);
  }

  private @Nullable Case one(
      String rule, Expectation expectation, @Nullable CardEntries entries, Tree item) {
    if (entries == null) {
      return null;
    }
    entries.keys(KEYS, Set.of("case"));
    Map<String, Tree> documents = new LinkedHashMap<>();
    documents.put("plan", base.plan());
    documents.put("event", base.event());
    documents.put("log", base.log());
    entries.map("change").forEach((path, tree) -> change(documents, path, tree, entries));
    Map<String, Severity> finds = severities(entries, "finds");
    finds.putAll(severities(entries, "also"));
    List<String> unsure = entries.texts("unsure");
    if (expectation == Expectation.UNSURE && unsure.isEmpty()) {
      unsure = List.of(rule);
    }
    String asOf = entries.text("as-of");
    LocalDate date = asOf == null ? AS_OF : Quantity.date(asOf).orNull();
    if (date == null) {
      entries.fault(entries.place("as-of"), "'" + asOf + "' is no date", "a date", "2027-05-30");
      return null;
    }
    return new Case(
        rule,
        String.valueOf(entries.text("case")),
        item.place(),
        expectation,
        date,
        tree(documents, "plan"),
        tree(documents, "event"),
        documents.get("log"),
        finds,
        Set.copyOf(unsure));
  }

  private static Tree tree(Map<String, Tree> documents, String kind) {
    return Objects.requireNonNull(documents.get(kind));
  }

  private static void change(
      Map<String, Tree> documents, String path, Tree replacement, CardEntries entries) {
    List<String> steps = Arrays.asList(path.split("/"));
    Tree document = documents.get(steps.get(0));
    try {
      if (document == null) {
        throw new TreeEdit.NoSuchPath("a path begins with plan, event or log");
      }
      if (steps.size() == 1 && TreeEdit.gone(replacement) && !steps.get(0).equals("log")) {
        throw new TreeEdit.NoSuchPath("only the log can be taken away whole");
      }
      if (steps.equals(List.of("log")) && TreeEdit.gone(replacement)) {
        documents.remove("log");
      } else {
        documents.put(steps.get(0), TreeEdit.at(document, steps, replacement));
      }
    } catch (TreeEdit.NoSuchPath e) {
      entries.fault(
          replacement.place(),
          "the path '" + path + "' leads nowhere",
          String.valueOf(e.getMessage()),
          "keys, numbers of list items, weeks by their Monday");
    }
  }

  private static Map<String, Severity> severities(CardEntries entries, String key) {
    Map<String, Severity> read = new LinkedHashMap<>();
    entries
        .map(key)
        .forEach(
            (rule, tree) -> {
              Severity severity = CardReader.severity(tree);
              if (severity == null) {
                entries.fault(tree.place(), "no severity", "HOLD, FIX, ASK or NOTE", "FIX");
              } else {
                read.put(rule, severity);
              }
            });
    return read;
  }
}
