package peakproof.rule;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import peakproof.fact.Fact;
import peakproof.fact.Settings;
import peakproof.rule.Account.Look;
import peakproof.rule.Account.Match;
import peakproof.rule.Account.Seen;
import peakproof.rule.Account.Sieve;

/**
 * Goes through a rule's conditions over the facts of a plan, to tell how it came to its verdict.
 */
public final class Inquiry {
  private static final String SETTINGS = "Settings";
  private static final String LABEL = "label";
  private static final FactTypes TYPES = FactTypes.shipped();
  private static final Pattern BY_NAME = Pattern.compile("\\s*(rule|name)\\s*==\\s*\".*");

  private final RuleShape.Rule rule;
  private final Settings settings;
  private final Collection<Fact> facts;
  private final Map<String, String> variables = new LinkedHashMap<>();
  private final ConditionWords words;
  private final IdentityHashMap<RuleShape.Pattern, Step> steps = new IdentityHashMap<>();
  private final List<Step> order = new ArrayList<>();
  private final List<Match> matches = new ArrayList<>();
  private @Nullable Miss nearest;

  /** One pattern, its conditions read, and the facts that came through each of them. */
  private static final class Step {
    private final RuleShape.Pattern pattern;
    private final boolean absent;
    private final int number;
    private final List<Expression> naming = new ArrayList<>();
    private final List<Expression> conditions = new ArrayList<>();
    private final List<Set<Fact>> through = new ArrayList<>();
    private final Set<Fact> met = identities();
    private boolean asked;

    private Step(RuleShape.Pattern pattern, boolean absent, int number) {
      this.pattern = pattern;
      this.absent = absent;
      this.number = number;
    }
  }

  /** Facts bound so far, with what each variable holds. */
  private record State(Map<String, @Nullable Object> bound, List<Seen> seen) {}

  /** A match that failed, the later the nearer; {@code gap} as a share of what was asked. */
  private record Miss(int step, int condition, double gap, List<Seen> seen) {
    boolean nearerThan(@Nullable Miss other) {
      if (other == null || step != other.step) {
        return other == null || step > other.step;
      }
      return condition != other.condition ? condition > other.condition : gap < other.gap;
    }
  }

  private Inquiry(RuleSource source, Settings settings, Collection<Fact> facts, Spoken spoken) {
    this.rule = source.logic();
    this.settings = settings;
    this.facts = facts;
    this.words = new ConditionWords(variables, settings, spoken);
    for (RuleShape.Condition condition : rule.conditions()) {
      boolean absent = condition instanceof RuleShape.Group group && group.absent();
      condition.patterns().forEach(pattern -> read(pattern, absent));
    }
  }

  /**
   * The account of one rule.
   *
   * @param facts all of the plan, with the windows of the rule
   */
  public static Account of(
      RuleSource source, Settings settings, Collection<Fact> facts, Spoken spoken) {
    Inquiry inquiry = new Inquiry(source, settings, facts, spoken);
    inquiry.go(0, new State(new HashMap<>(), List.of()));
    Miss miss = inquiry.nearest;
    boolean near = miss != null && miss.gap() < Double.MAX_VALUE;
    return new Account(
        inquiry.order.stream().filter(step -> step.asked).map(inquiry::look).toList(),
        List.copyOf(inquiry.matches),
        near ? new Match(Objects.requireNonNull(miss).seen(), null, null, null) : null);
  }

  private static Set<Fact> identities() {
    return Collections.newSetFromMap(new IdentityHashMap<>());
  }

  private void read(RuleShape.Pattern pattern, boolean absent) {
    Step step = new Step(pattern, absent, order.size());
    steps.put(pattern, step);
    String type = FactWords.plain(pattern.type());
    if (pattern.variable() != null) {
      variables.put(pattern.variable(), type);
    }
    for (RuleShape.Piece piece : pattern.constraints()) {
      Expression expression = expression(piece);
      if (BY_NAME.matcher(piece.text()).matches()) {
        step.naming.add(expression);
        continue;
      }
      step.conditions.add(expression);
      step.through.add(identities());
      if (expression instanceof Expression.Binding binding) {
        String field = FactWords.plain(String.join(" ", binding.field().path()));
        variables.put(binding.variable(), field + " of the " + type);
      }
    }
    if (!pattern.type().equals(SETTINGS)) {
      order.add(step);
    }
  }

  private static Expression expression(RuleShape.Piece piece) {
    try {
      return ExpressionParser.read(piece);
    } catch (ExpressionParser.Unreadable e) {
      throw new IllegalStateException("the rule was checked", e);
    }
  }

  private void go(int at, State state) {
    if (at == rule.conditions().size()) {
      matches.add(reported(state));
      return;
    }
    RuleShape.Condition condition = rule.conditions().get(at);
    if (condition instanceof RuleShape.Pattern pattern) {
      through(pattern, state).forEach(next -> go(at + 1, next));
      return;
    }
    RuleShape.Group group = (RuleShape.Group) condition;
    List<State> inside = List.of(state);
    for (RuleShape.Pattern pattern : group.patterns()) {
      inside = inside.stream().flatMap(each -> through(pattern, each).stream()).toList();
    }
    if (inside.isEmpty() == group.absent()) {
      go(at + 1, state);
    } else if (group.absent()) {
      silencedBy(group, inside.get(0));
    }
  }

  /** All held but for a fact that must not be there: nothing comes nearer to a report. */
  private void silencedBy(RuleShape.Group group, State inside) {
    Step last =
        Objects.requireNonNull(steps.get(group.patterns().get(group.patterns().size() - 1)));
    List<Seen> seen = new ArrayList<>(inside.seen());
    Seen there = seen.remove(seen.size() - 1);
    seen.add(
        new Seen(
            there.type(),
            there.fact(),
            there.label(),
            there.holds(),
            "it is there, so all is well"));
    Miss miss = new Miss(last.number, last.conditions.size(), 0, seen);
    if (miss.nearerThan(nearest)) {
      nearest = miss;
    }
  }

  private List<State> through(RuleShape.Pattern pattern, State state) {
    Step step = Objects.requireNonNull(steps.get(pattern));
    step.asked = true;
    List<State> passed = new ArrayList<>();
    if (pattern.type().equals(SETTINGS)) {
      Map<String, @Nullable Object> bound = new HashMap<>(state.bound());
      bound.put(String.valueOf(pattern.variable()), settings);
      return List.of(new State(bound, state.seen()));
    }
    Class<?> type = Objects.requireNonNull(TYPES.named(pattern.type())).type();
    for (Fact fact : facts) {
      if (type.isInstance(fact) && isMeant(step, fact)) {
        State next = sieve(step, fact, state);
        if (next != null) {
          passed.add(next);
        }
      }
    }
    return passed;
  }

  /** Windows are asked for by name, which is no question a reader would put. */
  private boolean isMeant(Step step, Fact fact) {
    Evaluation evaluation = new Evaluation(fact, Map.of(), TYPES);
    return step.naming.stream().allMatch(evaluation::holds);
  }

  private @Nullable State sieve(Step step, Fact fact, State state) {
    step.met.add(fact);
    Map<String, @Nullable Object> bound = new HashMap<>(state.bound());
    if (step.pattern.variable() != null) {
      bound.put(step.pattern.variable(), fact);
    }
    Evaluation evaluation = new Evaluation(fact, bound, TYPES);
    List<String> holds = new ArrayList<>();
    for (int i = 0; i < step.conditions.size(); i++) {
      Expression condition = step.conditions.get(i);
      if (condition instanceof Expression.Binding binding) {
        bound.put(binding.variable(), evaluation.value(binding.field()));
      } else if (evaluation.holds(condition)) {
        holds.add(words.found(condition, evaluation));
      } else {
        missed(step, i, fact, holds, evaluation, state);
        return null;
      }
      step.through.get(i).add(fact);
    }
    List<Seen> seen = new ArrayList<>(state.seen());
    seen.add(new Seen(step.pattern.type(), fact, label(fact), holds, null));
    return new State(bound, seen);
  }

  private @Nullable String label(Fact fact) {
    FactType type = TYPES.named(fact.getClass().getSimpleName());
    if (type == null || !type.fields().containsKey(LABEL)) {
      return null;
    }
    Expression.Field field = new Expression.Field(List.of(LABEL), 0);
    return (String) new Evaluation(fact, Map.of(), TYPES).value(field);
  }

  private void missed(
      Step step, int at, Fact fact, List<String> holds, Evaluation evaluation, State state) {
    if (step.absent) {
      return;
    }
    Expression condition = step.conditions.get(at);
    Miss miss = new Miss(step.number, at, Shortfall.of(condition, evaluation), List.of());
    if (miss.nearerThan(nearest)) {
      List<Seen> seen = new ArrayList<>(state.seen());
      String fails = words.found(condition, evaluation);
      seen.add(new Seen(step.pattern.type(), fact, label(fact), holds, fails));
      nearest = new Miss(step.number, at, miss.gap(), seen);
    }
  }

  private Match reported(State state) {
    List<String> names = Vetting.reported(rule);
    Fact fact = null;
    Fact because = null;
    Double value = null;
    for (String name : names.subList(1, names.size())) {
      Object reported = state.bound().get(name);
      if (reported instanceof Number number) {
        value = number.doubleValue();
      } else if (fact == null) {
        fact = (Fact) reported;
      } else {
        because = (Fact) reported;
      }
    }
    return new Match(state.seen(), fact, because, value);
  }

  private static void fields(Expression expression, Set<String> fields) {
    if (expression instanceof Expression.Field field) {
      fields.add(field.path().get(0));
    } else if (expression instanceof Expression.Pair pair) {
      fields(pair.left(), fields);
      fields(pair.right(), fields);
    } else if (expression instanceof Expression.Not not) {
      fields(not.inner(), fields);
    } else if (expression instanceof Expression.Among among) {
      fields(among.left(), fields);
    }
  }

  private Look look(Step step) {
    List<Sieve> sieves = new ArrayList<>();
    for (int i = 0; i < step.conditions.size(); i++) {
      if (!(step.conditions.get(i) instanceof Expression.Binding)) {
        Expression condition = step.conditions.get(i);
        Set<String> fields = new LinkedHashSet<>();
        fields(condition, fields);
        int left = step.through.get(i).size();
        sieves.add(new Sieve(words.asked(condition), left, List.copyOf(fields)));
      }
    }
    return new Look(step.pattern.type(), step.absent, step.met.size(), sieves);
  }
}
