/** Pages of quality: recording an inspection, why pieces were scrapped, the causes. */
@NullMarked
package dev.flangewright.quality.web;

import org.jspecify.annotations.NullMarked;
