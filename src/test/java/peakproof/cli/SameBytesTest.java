package peakproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import peakproof.report.AuditFormat;

/** Whoever runs the same audit gets the same bytes, wherever they live. */
class SameBytesTest {
  @Test
  void writesTheSameInEveryLocaleTimeZoneAndTerminal(@TempDir Path home) throws IOException {
    FewRules rules = FewRules.in(home);
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    for (AuditFormat format : AuditFormat.values()) {
      String here = audit(rules, format, Map.of());
      try {
        Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
        TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
        assertThat(audit(rules, format, Map.of("COLUMNS", "44", "TERM", "dumb"))).isEqualTo(here);
        Locale.setDefault(Locale.forLanguageTag("tr-TR"));
        assertThat(audit(rules, format, Map.of("LINES", "5"))).isEqualTo(here);
      } finally {
        Locale.setDefault(locale);
        TimeZone.setDefault(zone);
      }
    }
  }

  private static String audit(FewRules rules, AuditFormat format, Map<String, String> more) {
    Map<String, String> environment = new HashMap<>(more);
    environment.put("XDG_CACHE_HOME", rules.home().toString());
    Surroundings there = new Surroundings(rules.home(), Run.CLOCK, false, false, environment);
    List<String> arguments = new ArrayList<>(List.of("audit", "plans/noor"));
    if (format != AuditFormat.HTML) {
      arguments.add("plans/tove");
    }
    arguments.addAll(List.of("--all", "--format", format.name()));
    Run run = Run.in(there, arguments.toArray(String[]::new));
    assertThat(run.code()).isEqualTo(1);
    return run.out();
  }
}
