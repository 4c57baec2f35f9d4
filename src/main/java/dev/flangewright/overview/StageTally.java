package dev.flangewright.overview;

/**
 * What has come through a stage; scrapped pieces do not count.
 *
 * @param done parts that are past it
 * @param begun pieces that are being worked on at it
 * @param held pieces that are held at it
 */
record StageTally(String code, long done, long begun, long held) {

  static StageTally none(String code) {
    return new StageTally(code, 0, 0, 0);
  }
}
