/** Pages and addresses of photos. */
@NullMarked
package dev.flangewright.photos.web;

import org.jspecify.annotations.NullMarked;
