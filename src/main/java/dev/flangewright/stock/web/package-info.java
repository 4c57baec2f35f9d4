/** Pages and HTTP API of the metal in stock. */
@NullMarked
package dev.flangewright.stock.web;

import org.jspecify.annotations.NullMarked;
