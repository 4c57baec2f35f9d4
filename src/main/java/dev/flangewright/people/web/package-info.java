/** Pages of people: sign-in, accounts. */
@NullMarked
package dev.flangewright.people.web;

import org.jspecify.annotations.NullMarked;
