/** What is done from the command line of the host, without the web server. */
@NullMarked
package dev.flangewright.records.command;

import org.jspecify.annotations.NullMarked;
