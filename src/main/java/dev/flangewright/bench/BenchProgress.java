package dev.flangewright.bench;

import dev.flangewright.parts.PartProgress;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Tells the register how far each part has come, from the build's pieces in one statement. */
@Service
class BenchProgress implements PartProgress {

  private final BenchLines lines;

  BenchProgress(BenchLines lines) {
    this.lines = lines;
  }

  @Override
  @Transactional(readOnly = true)
  public Map<Long, Progress> ofBuild(long buildId) {
    return Attempts.byPart(lines.piecesOf(buildId)).entrySet().stream()
        .collect(Collectors.toMap(Map.Entry::getKey, entry -> entry.getValue().progress()));
  }
}
