/** Accounts, roles, sign-in and what each role may do. */
@ApplicationModule(allowedDependencies = {})
@NullMarked
package dev.flangewright.people;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
