package dev.flangewright.records;

import org.jspecify.annotations.Nullable;

/**
 * An entry as it is found, in the database or in a file.
 *
 * @param line what was hashed
 * @param hash as it is kept beside the line; null in a file, where the next line has it
 * @param misfit what beside the line contradicts it, in words; null if nothing does
 */
public record Link(String line, @Nullable String hash, @Nullable String misfit) {

  /** A line of an exported file. */
  public static Link inFile(String line) {
    return new Link(line, null, null);
  }
}
