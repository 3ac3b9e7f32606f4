package peakproof.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Reads one condition. What this does not know, no rule can say: no calls but those of the
 * settings, no numbers, no Java.
 */
final class ExpressionParser {
  /** A condition that cannot be read, with its place in the file's text. */
  static final class Unreadable extends Exception {
    private static final long serialVersionUID = 1;
    final int at;
    final String expected;
    final String instead;

    Unreadable(int at, String what, String expected, String instead) {
      super(what);
      this.at = at;
      this.expected = expected;
      this.instead = instead;
    }
  }

  private record Token(String text, int at) {
    boolean isName() {
      return Character.isLetter(text.charAt(0));
    }

    boolean isVariable() {
      return text.charAt(0) == '$';
    }

    boolean isWord() {
      return text.charAt(0) == '"';
    }
  }

  private static final Pattern TOKEN =
      Pattern.compile(
          "\\$?[A-Za-z_][A-Za-z0-9_]*|\"[^\"\\n]*\"|[0-9][0-9A-Za-z_.]*"
              + "|==|!=|<=|>=|&&|\\|\\||[-+*/<>!(),.:]");
  private static final Set<String> COMPARISONS = Set.of("==", "!=", "<", "<=", ">", ">=");

  private final List<Token> tokens = new ArrayList<>();
  private final int end;
  private int next;

  private ExpressionParser(String text, int offset) throws Unreadable {
    Matcher matcher = TOKEN.matcher(text);
    int at = 0;
    while (at < text.length()) {
      if (Character.isWhitespace(text.charAt(at))) {
        at++;
      } else if (matcher.region(at, text.length()).lookingAt()) {
        tokens.add(new Token(matcher.group(), offset + at));
        at = matcher.end();
      } else {
        throw unexpected(new Token(text.substring(at, at + 1), offset + at));
      }
    }
    end = offset + text.length();
  }

  /** Reads a condition that begins at {@code offset} of the file. */
  static Expression read(RuleShape.Piece piece) throws Unreadable {
    ExpressionParser parser = new ExpressionParser(piece.text(), piece.offset());
    Expression expression = parser.condition();
    Token rest = parser.peek();
    if (rest != null) {
      throw unexpected(rest);
    }
    return expression;
  }

  private Expression condition() throws Unreadable {
    Token first = peek();
    if (first != null
        && first.isVariable()
        && next + 1 < tokens.size()
        && tokens.get(next + 1).text().equals(":")) {
      next += 2;
      Token name = take("a field to bind");
      if (!name.isName()) {
        throw unexpected(name);
      }
      return new Expression.Binding(
          first.text(), new Expression.Field(path(name.text()), name.at()), first.at());
    }
    return either();
  }

  private Expression either() throws Unreadable {
    Expression left = both();
    for (Token token = accept("||"); token != null; token = accept("||")) {
      left = new Expression.Pair(left, token.text(), both(), token.at());
    }
    return left;
  }

  private Expression both() throws Unreadable {
    Expression left = comparison();
    for (Token token = accept("&&"); token != null; token = accept("&&")) {
      left = new Expression.Pair(left, token.text(), comparison(), token.at());
    }
    return left;
  }

  private Expression comparison() throws Unreadable {
    Expression left = sum();
    Token token = peek();
    if (token == null) {
      return left;
    }
    if (COMPARISONS.contains(token.text()) || token.text().equals("contains")) {
      next++;
      return new Expression.Pair(left, token.text(), sum(), token.at());
    }
    if (token.text().equals("not")) {
      next++;
      Token what = take("'contains' or 'in'");
      if (what.text().equals("contains")) {
        return new Expression.Not(
            new Expression.Pair(left, "contains", sum(), what.at()), token.at());
      }
      if (what.text().equals("in")) {
        return new Expression.Not(among(left, what), token.at());
      }
      throw unexpected(what);
    }
    if (token.text().equals("in")) {
      next++;
      return among(left, token);
    }
    return left;
  }

  private Expression among(Expression left, Token in) throws Unreadable {
    expect("(");
    List<Expression> choices = new ArrayList<>();
    do {
      choices.add(sum());
    } while (accept(",") != null);
    expect(")");
    return new Expression.Among(left, choices, in.at());
  }

  private Expression sum() throws Unreadable {
    Expression left = product();
    for (Token token = peek();
        token != null && (token.text().equals("+") || token.text().equals("-"));
        token = peek()) {
      next++;
      left = new Expression.Pair(left, token.text(), product(), token.at());
    }
    return left;
  }

  private Expression product() throws Unreadable {
    Expression left = unary();
    for (Token token = peek();
        token != null && (token.text().equals("*") || token.text().equals("/"));
        token = peek()) {
      next++;
      left = new Expression.Pair(left, token.text(), unary(), token.at());
    }
    return left;
  }

  private Expression unary() throws Unreadable {
    Token token = take("a field, a variable or a setting");
    if (token.text().equals("!")) {
      return new Expression.Not(unary(), token.at());
    }
    if (token.text().equals("(")) {
      Expression inner = either();
      expect(")");
      return inner;
    }
    if (token.isVariable()) {
      return variable(token);
    }
    if (token.isWord()) {
      return new Expression.Word(token.text().substring(1, token.text().length() - 1), token.at());
    }
    if (token.isName()) {
      return named(token);
    }
    throw unexpected(token);
  }

  private Expression named(Token token) throws Unreadable {
    if (token.text().equals("null")) {
      return new Expression.Unknown(token.at());
    }
    if (token.text().equals("true") || token.text().equals("false")) {
      return new Expression.Truth(token.text().equals("true"), token.at());
    }
    if (Character.isUpperCase(token.text().charAt(0))) {
      expect(".");
      return new Expression.Constant(token.text(), take("a word").text(), token.at());
    }
    List<String> path = path(token.text());
    refuseCall(token, String.join(".", path));
    return new Expression.Field(path, token.at());
  }

  private Expression variable(Token token) throws Unreadable {
    List<String> path = path(null);
    Token bracket = peek();
    if (bracket == null || !bracket.text().equals("(")) {
      return new Expression.Variable(token.text(), path, token.at());
    }
    if (path.size() != 1) {
      refuseCall(token, token.text() + "." + String.join(".", path));
    }
    next++;
    Token name = take("the name of a setting");
    if (!name.isWord()) {
      throw new Unreadable(
          name.at(),
          "'" + name.text() + "' is no name of a setting",
          "a call reads a setting of the card",
          "write $set.count(\"name-of-the-setting\")");
    }
    String by = null;
    if (accept(",") != null) {
      Token distance = take("a bound variable");
      if (!distance.isVariable()) {
        throw new Unreadable(
            distance.at(),
            "'" + distance.text() + "' is not bound",
            "a setting that differs by distance is asked for with a bound variable",
            "bind it first: $distance : " + distance.text());
      }
      by = distance.text();
    }
    expect(")");
    return new Expression.Setting(
        token.text(),
        path.get(0),
        name.text().substring(1, name.text().length() - 1),
        by,
        token.at());
  }

  private void refuseCall(Token from, String name) throws Unreadable {
    Token bracket = peek();
    if (bracket != null && bracket.text().equals("(")) {
      throw new Unreadable(
          from.at(),
          "'" + name + "(…)' is a call",
          "a rule reads fields and settings, it calls nothing",
          "write the field without brackets");
    }
  }

  private List<String> path(@Nullable String first) throws Unreadable {
    List<String> path = new ArrayList<>();
    if (first != null) {
      path.add(first);
    }
    while (accept(".") != null) {
      Token name = take("a field");
      if (!name.isName()) {
        throw unexpected(name);
      }
      path.add(name.text());
    }
    return path;
  }

  private @Nullable Token peek() {
    return next < tokens.size() ? tokens.get(next) : null;
  }

  private @Nullable Token accept(String text) {
    Token token = peek();
    if (token != null && token.text().equals(text)) {
      next++;
      return token;
    }
    return null;
  }

  private void expect(String text) throws Unreadable {
    Token token = take("'" + text + "'");
    if (!token.text().equals(text)) {
      throw unexpected(token);
    }
  }

  private Token take(String expected) throws Unreadable {
    Token token = peek();
    if (token == null) {
      throw new Unreadable(
          end, "the condition ends too early", expected, "finish the condition or take it out");
    }
    next++;
    return token;
  }

  private static Unreadable unexpected(Token token) {
    if (Character.isDigit(token.text().charAt(0))) {
      return new Unreadable(
          token.at(),
          "the number " + token.text() + " stands in the rule",
          "numbers stand in the card, where a club can change them",
          "add a setting to the card and write $set.count(\"its-name\")");
    }
    return new Unreadable(
        token.at(),
        "'" + token.text() + "' cannot be read here",
        "fields, settings and bound variables, compared and joined by && and ||",
        "take it out, or make it a field of the fact");
  }
}
