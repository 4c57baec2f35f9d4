/** Pages and HTTP API of the block sets. */
@NullMarked
package dev.flangewright.blocks.web;

import org.jspecify.annotations.NullMarked;
