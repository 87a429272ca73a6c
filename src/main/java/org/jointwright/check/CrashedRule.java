package org.jointwright.check;

/**
 * A rule that could not be judged on a slab: a fault of ours, not of the plan. The other rules were
 * judged all the same.
 *
 * @param rule the rule's short name
 * @param slab the id of the slab
 * @param fault what went wrong, for the fault report
 */
public record CrashedRule(String rule, String slab, RuntimeException fault) {}
