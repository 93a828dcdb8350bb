/**
 * Cutting forces, power and torque, the largest cut a machine carries, surface finish, drilling
 * thrust and the chatter limit.
 */
@NullMarked
package fettle.mechanics.cutting;

import org.jspecify.annotations.NullMarked;
