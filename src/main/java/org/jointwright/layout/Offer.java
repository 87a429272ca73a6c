package org.jointwright.layout;

import org.jointwright.joint.Layout;
import org.jointwright.plan.Preference;

/**
 * A layout that may be chosen for a slab.
 *
 * @param preference what it is best at, as the plan keeps it
 * @param layout the plan with its joints, the choice in it
 */
public record Offer(Preference preference, Layout layout) {}
