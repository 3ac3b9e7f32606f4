package peakproof.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Audit;
import peakproof.audit.Baseline;
import peakproof.audit.Gone;
import peakproof.document.Place;
import peakproof.rule.Severity;

/** Reads what {@code --format json} wrote, as far as later audits are compared with it. */
public final class EarlierReport {
  private static final JsonFactory JSON = new JsonFactory();

  private final JsonParser parser;
  private final Set<String> ofHealth;

  private EarlierReport(JsonParser parser, Set<String> ofHealth) {
    this.parser = parser;
    this.ofHealth = ofHealth;
  }

  private record Earlier(String plan, Baseline.Who who, List<Gone> found)
      implements Baseline.Earlier {
    @Override
    public List<Gone> findings(@Nullable Audit now) {
      return found;
    }
  }

  /** Not what this program writes. */
  private static final class Foreign extends Exception {
    private static final long serialVersionUID = 1;
  }

  /**
   * The audits of a report; null when the file holds none of ours.
   *
   * @param ofHealth rules whose findings are for the coach only
   */
  public static @Nullable List<Baseline.Earlier> read(Path file, Set<String> ofHealth) {
    try (InputStream in = Files.newInputStream(file);
        JsonParser parser = JSON.createParser(in)) {
      return new EarlierReport(parser, ofHealth).report();
    } catch (IOException | Foreign | DateTimeParseException other) {
      return null;
    }
  }

  private List<Baseline.Earlier> report() throws IOException, Foreign {
    Map<?, ?> report = object(value(parser.nextToken()));
    if (!String.valueOf(JsonReport.FORMAT).equals(report.get("format"))) {
      throw new Foreign();
    }
    List<Baseline.Earlier> audits = new ArrayList<>();
    for (Object audit : list(report.get("audits"))) {
      audits.add(audit(object(audit)));
    }
    return audits;
  }

  private Earlier audit(Map<?, ?> audit) throws Foreign {
    List<Gone> found = new ArrayList<>();
    for (Object finding : list(audit.get("findings"))) {
      found.add(finding(object(finding)));
    }
    LocalDate race = LocalDate.parse(text(audit.get("raceDate")));
    return new Earlier(
        text(audit.get("plan")), new Baseline.Who(text(audit.get("athlete")), race), found);
  }

  private Gone finding(Map<?, ?> finding) throws Foreign {
    List<?> where = list(finding.get("where"));
    if (where.isEmpty()) {
      throw new Foreign();
    }
    Map<?, ?> first = object(where.get(0));
    return new Gone(
        text(finding.get("rule")),
        severity(text(finding.get("severity"))),
        text(finding.get("title")),
        text(finding.get("fingerprint")),
        new Place(text(first.get("file")), number(first.get("line")), number(first.get("column"))),
        ofHealth.contains(text(finding.get("rule"))));
  }

  private static Severity severity(String word) throws Foreign {
    for (Severity severity : Severity.values()) {
      if (severity.name().equals(word)) {
        return severity;
      }
    }
    throw new Foreign();
  }

  private static int number(@Nullable Object value) throws Foreign {
    try {
      return Integer.parseInt(text(value));
    } catch (NumberFormatException word) {
      throw new Foreign();
    }
  }

  private static String text(@Nullable Object value) throws Foreign {
    if (value instanceof String text) {
      return text;
    }
    throw new Foreign();
  }

  private static List<?> list(@Nullable Object value) throws Foreign {
    if (value instanceof List<?> list) {
      return list;
    }
    throw new Foreign();
  }

  private static Map<?, ?> object(@Nullable Object value) throws Foreign {
    if (value instanceof Map<?, ?> map) {
      return map;
    }
    throw new Foreign();
  }

  /** Maps, lists, and everything else as its text; depth is limited by the parser. */
  private @Nullable Object value(@Nullable JsonToken token) throws IOException {
    if (token == JsonToken.START_OBJECT) {
      Map<String, @Nullable Object> map = new HashMap<>();
      while (parser.nextToken() == JsonToken.FIELD_NAME) {
        String name = parser.currentName();
        map.put(name, value(parser.nextToken()));
      }
      return map;
    }
    if (token == JsonToken.START_ARRAY) {
      List<@Nullable Object> list = new ArrayList<>();
      for (JsonToken next = parser.nextToken();
          next != null && next != JsonToken.END_ARRAY;
          next = parser.nextToken()) {
        list.add(value(next));
      }
      return list;
    }
    return token == null || token == JsonToken.VALUE_NULL ? null : parser.getText();
  }
}
