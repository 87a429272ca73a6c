/**
 * Judges layouts, whoever laid them: one class for each rule.
 *
 * <p>In: the panels that the joints of a plan cut, joints as wrong as they like ({@link
 * org.jointwright.joint.Layouts#of}). Out: findings as data, without words, in a fixed order: slab
 * by slab, rule by rule. Each says which rule, how much it weighs, what it is about, where, what
 * was measured against what limit, the key and arguments of its message, and the source of the
 * limit.
 *
 * <p>Here is what a rule and a finding are. The rules stand by what they look at, in {@code panel},
 * {@code line}, {@code hold} and {@code wish}; the list of them all, and the judging, in {@code
 * judge}: start at {@link org.jointwright.check.judge.Checks}. What they look at is worked out
 * once, in {@code evidence}, from {@code face} and {@code along}. To add a rule: one class that
 * implements {@link org.jointwright.check.Check}, a line in {@code Checks.ALL}, its texts in {@code
 * check.properties}, and the tests that {@code EveryRuleTest} asks for.
 *
 * <p>Tolerances always favour the layout: 1/2 in on lengths, 1 degree on angles, 0.01 on aspect.
 * The limits come from {@code practice} and the measures from {@code joint} and {@code shape}, as
 * the engine's do; judgement is shared with nobody.
 */
@NullMarked
package org.jointwright.check;

import org.jspecify.annotations.NullMarked;
