package peakproof.report;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.TemplateOutput;
import gg.jte.output.StringOutput;
import java.util.stream.Collectors;

/**
 * The one way to a page in HTML: a template of {@code src/main/jte}, compiled into the program, and
 * the record it shows. Whatever comes from a document is escaped where the template puts it.
 */
final class Html {
  private static final TemplateEngine TEMPLATES =
      TemplateEngine.createPrecompiled(null, ContentType.Html, null, "peakproof.report");

  private Html() {}

  /**
   * The whole page, without characters that could turn round what stands beside them.
   *
   * @param template its file's name without ending
   * @param shown what the template takes
   */
  static String of(String template, Record shown) {
    TemplateOutput page = new StringOutput();
    TEMPLATES.render(template + ".jte", shown, page);
    return page.toString()
        .stripTrailing()
        .lines()
        .map(Printable::of)
        .collect(Collectors.joining("\n", "", "\n"));
  }
}
