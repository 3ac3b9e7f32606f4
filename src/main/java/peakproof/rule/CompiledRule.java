package peakproof.rule;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A sound rule as classes.
 *
 * @param classes by name; none when they lie in the program itself
 * @param models names of those that describe the rule to the engine
 * @param ofHealth true when it finds something in health entries; null where that is to be looked
 *     for in its texts
 */
record CompiledRule(Map<String, byte[]> classes, List<String> models, @Nullable Boolean ofHealth) {}
