package peakproof.report;

import java.util.function.Supplier;
import peakproof.rule.Ruleset;
import peakproof.rule.Severity;

/**
 * Everything a report's look depends on beside the audits.
 *
 * @param choice how many findings a reader gets
 * @param width how many columns a line of text has at most
 * @param failAt from which severity on a rule has failed
 * @param withHealth true when reports that leave the coach's desk may tell what health entries say
 * @param program name and version
 * @param rules those all plans share
 */
public record Layout(
    Choice choice,
    int width,
    Ink ink,
    Severity failAt,
    boolean withHealth,
    String program,
    Supplier<Ruleset> rules) {}
