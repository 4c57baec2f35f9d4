/** Pages of import and export. */
@NullMarked
package dev.flangewright.parts.exchange.web;

import org.jspecify.annotations.NullMarked;
