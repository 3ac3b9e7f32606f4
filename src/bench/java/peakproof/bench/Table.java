package peakproof.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** A table of Markdown that grows row by row. */
final class Table {
  private final List<List<String>> rows = new ArrayList<>();

  static Table of(String... columns) {
    return new Table().row(columns);
  }

  static String number(String form, double value) {
    return String.format(Locale.ROOT, form, value);
  }

  Table column(String... names) {
    rows.get(0).addAll(Arrays.asList(names));
    return this;
  }

  Table row(String... cells) {
    rows.add(new ArrayList<>(Arrays.asList(cells)));
    return this;
  }

  Table cells(String... cells) {
    rows.get(rows.size() - 1).addAll(Arrays.asList(cells));
    return this;
  }

  List<String> lines() {
    List<String> lines = new ArrayList<>();
    rows.forEach(row -> lines.add("| " + String.join(" | ", row) + " |"));
    lines.add(1, "|" + "---|".repeat(rows.get(0).size()));
    return lines;
  }
}
