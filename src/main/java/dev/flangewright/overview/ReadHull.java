package dev.flangewright.overview;

import dev.flangewright.parts.Frame;
import dev.flangewright.parts.PartProgress;
import dev.flangewright.parts.PartProgress.Progress;
import dev.flangewright.parts.Parts;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Reads every part of a build with its contours and its progress, in three statements. */
@Service
public class ReadHull {

  private final Parts parts;
  private final Edges edges;
  private final PartProgress progress;

  ReadHull(Parts parts, Edges edges, PartProgress progress) {
    this.parts = parts;
    this.edges = edges;
    this.progress = progress;
  }

  /** The parts along the hull, by part number within a frame. */
  @Transactional(readOnly = true)
  public List<HullPart> of(long buildId) {
    return hull(buildId, edges.ofBuild(buildId)).toList();
  }

  /** The parts of one frame, with every station of their contours. */
  @Transactional(readOnly = true)
  public List<HullPart> ofFrame(long buildId, Frame frame) {
    List<EdgeLine> whole = edges.ofFrame(frame.id()).stream().map(ContourLine::asEdge).toList();
    return hull(buildId, whole).filter(part -> part.part().frame().equals(frame.code())).toList();
  }

  private Stream<HullPart> hull(long buildId, List<EdgeLine> drawn) {
    Map<Long, List<String>> sketches =
        drawn.stream()
            .collect(
                Collectors.groupingBy(
                    EdgeLine::partId, Collectors.mapping(EdgeLine::sketch, Collectors.toList())));
    Map<Long, Progress> states = progress.ofBuild(buildId);
    return parts.register(buildId).stream()
        .map(
            part ->
                new HullPart(
                    part,
                    states.getOrDefault(part.id(), Progress.NOT_BEGUN),
                    sketches.getOrDefault(part.id(), List.of())))
        .sorted(
            Comparator.comparingDouble((HullPart p) -> p.part().framePositionMm().value())
                .thenComparing(p -> p.part().frame())
                .thenComparing(p -> p.part().partNumber()));
  }
}
