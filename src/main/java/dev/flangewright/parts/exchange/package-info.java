/**
 * Import and export of the register as two CSV files, {@code register.csv} and {@code
 * contours.csv}; the columns and rules are in {@code docs/csv.md}.
 */
@NamedInterface("exchange")
@NullMarked
package dev.flangewright.parts.exchange;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
