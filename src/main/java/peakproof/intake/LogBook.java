package peakproof.intake;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import peakproof.document.Sport;
import peakproof.document.YamlValue;

/** Writes sessions into what a log says. */
public final class LogBook {
  private static final String DAYS = "days";
  private static final String SESSIONS = "sessions";

  /** What a day on one line can say of a session, in its order. */
  private static final List<String> ON_ONE_LINE = List.of("distance", "rpe", "heart-rate", "power");

  private YamlValue.Keys content;

  private LogBook(YamlValue.Keys content) {
    this.content = content;
  }

  /** A log that is yet to be begun. */
  public static LogBook begun() {
    return new LogBook(YamlValue.Keys.NONE.with("log", YamlValue.Keys.NONE.with("format", "1")));
  }

  /** A log that was read without fault. */
  public static LogBook of(YamlValue content) {
    return new LogBook((YamlValue.Keys) content);
  }

  /** What the log says with all that was added. */
  public YamlValue.Keys content() {
    return content;
  }

  /** Adds a session to its day, behind those the day has. */
  public Decision add(Decision decision) {
    Incoming session = decision.session();
    YamlValue.Keys log = keys(content.get("log"));
    YamlValue.Keys days = keys(log.get(DAYS));
    String date = session.date().toString();
    String left = "";
    YamlValue day = days.get(date);
    YamlValue more;
    if (day instanceof YamlValue.Text line) {
      more = new YamlValue.Text(line.text() + "; " + line(session));
      left = left(session);
    } else {
      YamlValue.Keys its = keys(day);
      YamlValue sessions = its.get(SESSIONS);
      more =
          its.with(
              SESSIONS,
              sessions instanceof YamlValue.Items items
                  ? items.with(items.items().size(), session.keys())
                  : YamlValue.items(List.of(session.keys())));
    }
    content =
        content.with("log", log.with(DAYS, days.inOrder(date, more, Comparator.naturalOrder())));
    return new Decision(session, null, left);
  }

  private static YamlValue.Keys keys(@Nullable YamlValue value) {
    return value instanceof YamlValue.Keys keys ? keys : YamlValue.Keys.NONE;
  }

  /** Free words end what a line can say of another sport, so they come last. */
  private static String line(Incoming session) {
    List<String> words = new ArrayList<>();
    for (String key : onOneLine(session)) {
      String text = session.text(key);
      if (!text.isEmpty()) {
        words.add(key.equals("rpe") ? "rpe" + text : text.replace(" ", ""));
      }
    }
    words.add(session.sport() == Sport.OTHER ? words.size() : 0, session.amount());
    return session.sport().word() + " " + String.join(" ", words);
  }

  private static List<String> onOneLine(Incoming session) {
    return session.sport().racing() ? ON_ONE_LINE : ON_ONE_LINE.subList(1, ON_ONE_LINE.size());
  }

  private static String left(Incoming session) {
    Map<String, YamlValue> keys = new LinkedHashMap<>(session.keys().entries());
    keys.remove(session.sport().word());
    onOneLine(session).forEach(keys::remove);
    return String.join(", ", keys.keySet());
  }
}
