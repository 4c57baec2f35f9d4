/**
 * How long a piece stays soft after the quench: when it was quenched, how long it lay in the
 * freezer, and what the shipped table says to that.
 */
@ApplicationModule(allowedDependencies = {"materials", "people"})
@NullMarked
package dev.flangewright.heat;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
