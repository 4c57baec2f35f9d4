/** What makes an entry safe to send again: a key of its own, and a receipt once it is stored. */
@ApplicationModule(allowedDependencies = "people")
@NullMarked
package dev.flangewright.receipts;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
