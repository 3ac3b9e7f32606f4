package peakproof.document;

import java.util.LinkedHashMap;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads a table of water temperatures. */
final class WaterTableReader {

  private final Desk desk;

  private WaterTableReader(Desk desk) {
    this.desk = desk;
  }

  static WaterTable.Read read(YamlTree.Parsed parsed) {
    Faults faults = new Faults();
    faults.addAll(parsed.faults());
    Tree tree = parsed.tree();
    List<WaterTable.Edition> editions = List.of();
    if (tree != null) {
      Desk desk = Desk.plain(faults, new LinkedHashMap<>());
      editions = new WaterTableReader(desk).editions(new Node("", tree.place(), tree));
    }
    List<Fault> sorted = faults.sorted();
    return new WaterTable.Read(sorted.isEmpty() ? new WaterTable(editions) : null, sorted);
  }

  private List<WaterTable.Edition> editions(Node node) {
    Fields fields = desk.fields(node, "the table");
    if (fields == null) {
      return List.of();
    }
    fields.demand("editions", "[]");
    List<WaterTable.Edition> editions = desk.each(fields.list("editions"), this::edition);
    fields.finish();
    return editions;
  }

  private WaterTable.@Nullable Edition edition(Node node) {
    Fields fields = desk.fields(node, "an edition");
    if (fields == null) {
      return null;
    }
    var name = fields.require("edition", "later", Quantity.Of::new);
    var authority = fields.require("authority", "a federation", Quantity.Of::new);
    var source = fields.require("source", "where it was read", Quantity.Of::new);
    fields.demand("rows", "[]");
    List<WaterTable.Row> rows = desk.each(fields.list("rows"), this::row);
    List<WaterTable.Shortened> shortened = desk.each(fields.list("shortened"), this::shortened);
    fields.finish();
    return name == null || authority == null || source == null
        ? null
        : new WaterTable.Edition(name, authority, source, rows, shortened);
  }

  private WaterTable.@Nullable Row row(Node node) {
    Fields fields = desk.fields(node, "a row");
    if (fields == null) {
      return null;
    }
    var category = fields.require("category", "age-group", Vocabulary.CATEGORY::read);
    var upTo = fields.require("up-to", "1500m", Quantity::distance);
    var above = fields.require("forbidden-above", "22C", Quantity::temperature);
    var below = fields.require("mandatory-below", "15.9C", Quantity::temperature);
    var limit = fields.read("limit", Quantity::duration);
    fields.finish();
    return category == null || upTo == null || above == null || below == null
        ? null
        : new WaterTable.Row(category, upTo, above, below, limit);
  }

  private WaterTable.@Nullable Shortened shortened(Node node) {
    Fields fields = desk.fields(node, "a shortened swim");
    if (fields == null) {
      return null;
    }
    var from = fields.require("from", "14C", Quantity::temperature);
    var below = fields.require("below", "15C", Quantity::temperature);
    var longest = fields.read("longest", Quantity::length);
    fields.finish();
    return from == null || below == null ? null : new WaterTable.Shortened(from, below, longest);
  }
}
