package dev.flangewright.blocks;

/**
 * What a block is and where it lies.
 *
 * @param formingStage from 1 for a form block; 0 for a kind that serves every stage
 * @param material of the block, as the shop calls it; may be empty
 * @param place where it lies, if not with its set; may be empty
 */
public record BlockFacts(BlockKind kind, int formingStage, String material, String place) {}
