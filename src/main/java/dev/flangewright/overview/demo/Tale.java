package dev.flangewright.overview.demo;

import java.util.List;

/** What was done to one part, piece after piece. */
record Tale(String partNumber, List<Ending> pieces) {

  static Tale of(String partNumber, Ending... pieces) {
    return new Tale(partNumber, List.of(pieces));
  }
}
