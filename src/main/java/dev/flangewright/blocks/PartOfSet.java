package dev.flangewright.blocks;

import dev.flangewright.parts.Hand;

/** A part, and the code of the set that it is formed on. */
public record PartOfSet(long id, String partNumber, Hand hand, String setCode) {}
