/** Takes down every change that Hibernate writes, and adds it to the journal before the commit. */
@NullMarked
package dev.flangewright.records.capture;

import org.jspecify.annotations.NullMarked;
