package dev.flangewright.quality;

/**
 * What one cause has cost a build.
 *
 * @param pieces pieces scrapped for it
 * @param hours hours that had been logged on them
 */
public record ScrapTally(String causeCode, String causeName, long pieces, double hours) {}
