package dev.flangewright.photos;

/**
 * Something that is photographed.
 *
 * @param label as people say it: {@code "TW-F07-S3L piece 1"}
 * @param address of the page that shows it
 */
public record PhotoSubject(long buildId, String buildName, String label, String address) {}
