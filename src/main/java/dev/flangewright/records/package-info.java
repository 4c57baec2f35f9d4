/** What keeps the records safe: which database is opened, where it may lie, and its backups. */
@ApplicationModule(allowedDependencies = "people")
@NullMarked
package dev.flangewright.records;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
