/**
 * The order of work: tasks of all planned changes in one sequence, the lathe making its own parts
 * before it is stripped, with least downtime, least wasted work and the benefit soonest.
 */
@NullMarked
package fettle.planning.order;

import org.jspecify.annotations.NullMarked;
