/**
 * The machine as a loop of members and joints: how stiff joints are, how compliances are moved and
 * put together from tool to work, which element gives how much, what that does to the turned part,
 * and how push tests correct what was assumed.
 */
@NullMarked
package fettle.mechanics.loop;

import org.jspecify.annotations.NullMarked;
