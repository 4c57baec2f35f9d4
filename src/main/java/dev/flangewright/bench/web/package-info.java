/** Pages of the bench: what next, the piece, the route. */
@NullMarked
package dev.flangewright.bench.web;

import org.jspecify.annotations.NullMarked;
