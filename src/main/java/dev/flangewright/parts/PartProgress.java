package dev.flangewright.parts;

import java.util.Map;

/** How far the parts of a build have come. The module that keeps the pieces answers. */
public interface PartProgress {

  /**
   * The progress of a build's parts by the part's id, in a number of statements that does not grow
   * with the build. A part that has no entry is not begun.
   */
  Map<Long, Progress> ofBuild(long buildId);

  /**
   * The progress of one part.
   *
   * @param done stages finished, of {@code total}, on the furthest piece
   * @param scrapped pieces of this part that were scrapped
   * @param words the state in a few words: {@code "in work: first flange, begun"}
   */
  record Progress(PartState state, int done, int total, int scrapped, String words) {

    /** Of a part that no piece has been begun of. */
    public static final Progress NOT_BEGUN =
        new Progress(PartState.NOT_BEGUN, 0, 0, 0, PartState.NOT_BEGUN.word());
  }
}
