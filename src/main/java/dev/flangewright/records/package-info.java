/** What keeps the records safe: which database is opened, and where it may lie. */
@ApplicationModule(allowedDependencies = "people")
@NullMarked
package dev.flangewright.records;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
