/** What lets a browser keep pages for where there is no network: knows no module's pages. */
@ApplicationModule(allowedDependencies = {})
@NullMarked
package dev.flangewright.offline;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
