/**
 * What holds parts together for good: bolts with preload, stiffness, separation and slip; keys,
 * pins and set-screws; shafts in torsion. Threads come as diameter and pitch of the ISO profile;
 * their tolerances are another room's.
 */
@NullMarked
package fettle.mechanics.joints;

import org.jspecify.annotations.NullMarked;
