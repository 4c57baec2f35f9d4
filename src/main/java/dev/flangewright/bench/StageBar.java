package dev.flangewright.bench;

/**
 * What keeps a stage from being started.
 *
 * @param missing as a sentence: {@code "The form block, stage 1 of TW-B07-S3 needs repair."}
 * @param clearedBy who can clear it: {@code "whoever keeps the blocks"}
 */
public record StageBar(String missing, String clearedBy) {}
