package peakproof.document;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Asks reader and schema about the same documents and keeps where they part. */
final class SchemaAgreement {
  /** All but the mapping of a table, which is no document of a club. */
  static final Set<DocumentKind> KINDS = EnumSet.complementOf(EnumSet.of(DocumentKind.MAPPING));

  private static final Map<DocumentKind, Schema> SCHEMAS = new EnumMap<>(DocumentKind.class);

  static {
    SchemaRegistry registry = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7);
    for (DocumentKind kind : KINDS) {
      SCHEMAS.put(kind, registry.getSchema(DocumentSchemas.of(kind)));
    }
  }

  private final List<String> parted = new ArrayList<>();
  private final Set<SchemaDifference> met = EnumSet.noneOf(SchemaDifference.class);
  private int sound;
  private int refused;

  /** One plan with what belongs to it, as trees. */
  record Trees(
      @Nullable Tree plan, @Nullable Tree event, @Nullable Tree log, @Nullable Tree house) {
    @Nullable Tree of(DocumentKind kind) {
      return switch (kind) {
        case PLAN -> plan;
        case EVENT -> event;
        case LOG -> log;
        case HOUSE -> house;
        case MAPPING -> throw new IllegalArgumentException("a mapping has no schema");
      };
    }

    Trees with(DocumentKind kind, Tree tree) {
      return new Trees(
          kind == DocumentKind.PLAN ? tree : plan,
          kind == DocumentKind.EVENT ? tree : event,
          kind == DocumentKind.LOG ? tree : log,
          kind == DocumentKind.HOUSE ? tree : house);
    }
  }

  static String file(DocumentKind kind) {
    return kind.key() + ".yaml";
  }

  /** What the reader says of one of the documents. */
  static List<Fault> faults(DocumentKind kind, Trees trees) {
    Tree plan = Objects.requireNonNull(trees.plan());
    return Documents.read(file(DocumentKind.PLAN), plan, trees.event(), trees.log(), trees.house())
        .faults()
        .stream()
        .filter(fault -> fault.place().file().equals(file(kind)))
        .toList();
  }

  static List<Error> errors(DocumentKind kind, JsonNode json) {
    return Objects.requireNonNull(SCHEMAS.get(kind)).validate(json);
  }

  /**
   * Compares the two.
   *
   * @param at the way to the value that was changed; null when any may be to blame
   * @param name what to call the document where they part
   */
  void compare(
      DocumentKind kind, List<Fault> faults, JsonNode json, @Nullable String at, String name) {
    List<Error> errors = errors(kind, json);
    if (faults.isEmpty()) {
      sound++;
    } else {
      refused++;
    }
    if (faults.isEmpty() && !errors.isEmpty()) {
      parted.add(name + ": only the schema: " + errors);
    } else if (!faults.isEmpty() && errors.isEmpty()) {
      for (Fault fault : faults) {
        SchemaDifference difference = SchemaDifference.of(fault, at);
        if (difference == null) {
          parted.add(name + ": only the reader: " + fault);
        } else {
          met.add(difference);
        }
      }
    }
  }

  List<String> parted() {
    return parted;
  }

  Set<SchemaDifference> met() {
    return met;
  }

  int sound() {
    return sound;
  }

  int refused() {
    return refused;
  }
}
