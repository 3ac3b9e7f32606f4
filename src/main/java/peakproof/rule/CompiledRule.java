package peakproof.rule;

import java.util.List;
import java.util.Map;

/**
 * A sound rule as classes.
 *
 * @param classes by name; none when they lie in the program itself
 * @param models names of those that describe the rule to the engine
 * @param ofHealth true when it finds something in health entries
 */
record CompiledRule(Map<String, byte[]> classes, List<String> models, boolean ofHealth) {}
