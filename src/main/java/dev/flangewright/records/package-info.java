/**
 * What keeps the records safe: which database is opened, where it may lie, its backups, and the
 * journal of every change.
 *
 * <p>The journal is append-only and hash-chained. Its bytes are described in {@code
 * docs/records.md}.
 */
@ApplicationModule(allowedDependencies = {"parts", "people"})
@NullMarked
package dev.flangewright.records;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
