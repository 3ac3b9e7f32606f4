package peakproof.fact;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.document.Athlete;

/**
 * What the plan says of a para-athlete's class and device.
 *
 * @param missing what it does not say, in words; empty when both are written
 */
public record ParaFile(String pointer, String missing) implements Fact {

  /** Null for an athlete who is not marked para. */
  static @Nullable ParaFile of(Athlete athlete) {
    Athlete.Para para = athlete.para();
    if (!marked(athlete)) {
      return null;
    }
    List<String> missing = new ArrayList<>();
    if (para == null || para.classification() == null || para.classification().equals("none")) {
      missing.add("class");
    }
    if (para == null || para.device() == null) {
      missing.add("device");
    }
    return new ParaFile(athlete.at(), String.join(" and ", missing));
  }

  /** True for an athlete of category para, with a para class, with a device, or with a guide. */
  public static boolean marked(Athlete athlete) {
    Athlete.Para para = athlete.para();
    return "para".equals(athlete.category())
        || para != null
            && (para.classification() != null && !para.classification().equals("none")
                || para.device() != null && !para.device().equals("none")
                || Boolean.TRUE.equals(para.guide()));
  }

  /** True when something is not said. */
  public boolean open() {
    return !missing.isEmpty();
  }

  @Override
  public List<Where> where() {
    return List.of(new Where(pointer, null, null));
  }
}
