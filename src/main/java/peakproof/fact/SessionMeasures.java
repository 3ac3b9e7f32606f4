package peakproof.fact;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.measure.RunSpike;

/** The numbers of a plan session by session. */
final class SessionMeasures {
  private final Timeline timeline;
  private final List<Measured> values = new ArrayList<>();

  private SessionMeasures(Timeline timeline) {
    this.timeline = timeline;
  }

  static List<Measured> of(Timeline timeline) {
    SessionMeasures measures = new SessionMeasures(timeline);
    timeline.sessions().filter(Session::training).forEach(measures::session);
    return measures.values;
  }

  private void session(Session session) {
    Measured.Scope scope =
        Measured.Scope.PLAN.and("day", session.date()).and("session", session.label());
    String planned = session.planned() ? "a set line with efforts or paces" : "time and rating";
    add("session-minutes", scope, session.minutes(), "min", session, "its time");
    add("session-load", scope, timeline.loads().of(session), "au", session, planned);
    add("session-severe-minutes", scope, session.domains().severe(), "min", session, "its time");
    if (session instanceof Run run) {
      RunSpike spike = timeline.runs().compare(run).spike();
      String because = spike == null ? "a log of the 30 days before" : spike.because();
      Double share = spike == null ? null : spike.share();
      add("run-spike", scope, share, "share", run, because);
    }
    if (session instanceof Swim swim) {
      String set = "a set line";
      add("longest-continuous", scope, swim.continuousMetres(), "m", swim, set);
    }
  }

  private void add(
      String name,
      Measured.Scope scope,
      @Nullable Double value,
      String unit,
      Session session,
      String because) {
    List<String> from = List.of(session.written.at());
    values.add(Measured.of(name, scope, value, unit, null, from, because));
  }
}
