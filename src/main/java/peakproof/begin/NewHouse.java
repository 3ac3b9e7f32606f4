package peakproof.begin;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import peakproof.document.Documents;
import peakproof.document.Reading;

/** A house file with the club's name, and the rest as examples behind comment signs. */
public final class NewHouse implements Beginning {
  private static final String PLAN =
      "plan: {format: 1, athlete: {name: A}, event: {name: B, date: 2027-07-04, legs: {swim: 1km}},"
          + " weeks: [{starts: 2027-05-31}]}\n";

  @Override
  public List<Item> items() {
    return List.of(
        Item.needed(
            "name",
            "NAME",
            "The club's name.",
            "What is the club called?",
            "Tidemill Tri",
            answer -> check("name: " + Scalar.of(answer))),
        Item.optional(
            "preset",
            "WORD",
            "Whose numbers count: by-athlete, default, experienced, first-timer, masters or"
                + " short-course.",
            "Whose numbers count, by each athlete or one set for all?",
            "by-athlete",
            "by-athlete",
            answer -> check("name: A\n  preset: " + Scalar.of(answer))));
  }

  private static @Nullable String check(String keys) {
    return Item.first(read("house:\n  format: 1\n  " + keys + "\n").faults());
  }

  private static Reading read(String house) {
    return Documents.drafted(PLAN, null, house);
  }

  @Override
  public Draft draft(Answers answers) {
    String text =
        template()
            .replace("PRESET", Scalar.of(answers.required("preset")))
            .replace("CLUB", Scalar.of(answers.required("name")));
    String fault = Item.first(read(text).faults());
    return fault == null
        ? new Draft.Written(
            text, List.of("It counts for every plan in its folder and the folders below."))
        : new Draft.Refused(List.of(fault));
  }

  private static String template() {
    try (InputStream in =
        Objects.requireNonNull(NewHouse.class.getResourceAsStream("house.yaml"))) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }
}
