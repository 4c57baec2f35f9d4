/**
 * What the tests of every module share: a database on either engine, and a browser where one is.
 */
@NullMarked
package dev.flangewright.testing;

import org.jspecify.annotations.NullMarked;
