package peakproof.rule;

import java.util.Map;
import peakproof.document.Plan.SettingText;
import peakproof.document.Positions;

/**
 * Settings that one document puts in the place of others; a later layer wins over an earlier one.
 *
 * @param by whose word it is: {@code house}, {@code plan}
 * @param settings by rule and setting
 */
public record Layer(
    String by, Map<String, Map<String, SettingText>> settings, Positions positions) {}
