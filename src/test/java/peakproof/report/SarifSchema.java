package peakproof.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.InputStream;
import java.util.List;
import java.util.Objects;

/** The schema that belongs to SARIF 2.1.0. */
public final class SarifSchema {
  private static final Schema SCHEMA = schema();

  private SarifSchema() {}

  /** The text itself, which has to be valid. */
  public static String valid(String text) {
    assertThat(faults(text)).isEmpty();
    return text;
  }

  static List<Error> faults(String text) {
    return SCHEMA.validate(text, InputFormat.JSON);
  }

  private static Schema schema() {
    InputStream file =
        Objects.requireNonNull(
            SarifSchema.class.getResourceAsStream("/schema/sarif-schema-2.1.0.json"));
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7).getSchema(file);
  }
}
