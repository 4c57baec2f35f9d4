package dev.flangewright.parts;

import dev.flangewright.parts.PartProgress.Progress;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Reads the register of a build, in a number of statements that does not grow with it. */
@Service
public class Register {

  private final Parts parts;
  private final Flanges flanges;
  private final ObjectProvider<PartProgress> progress;

  Register(Parts parts, Flanges flanges, ObjectProvider<PartProgress> progress) {
    this.parts = parts;
    this.flanges = flanges;
    this.progress = progress;
  }

  /** All lines of a build, in no order. */
  @Transactional(readOnly = true)
  public List<RegisterLine> of(long buildId) {
    Map<Long, List<RegisterFlange>> flangesOf =
        flanges.register(buildId).stream().collect(Collectors.groupingBy(RegisterFlange::partId));
    Map<Long, Progress> progressOf = new HashMap<>();
    progress.stream().forEach(module -> progressOf.putAll(module.ofBuild(buildId)));
    return parts.register(buildId).stream()
        .map(
            part ->
                new RegisterLine(
                    part,
                    flangesOf.getOrDefault(part.id(), List.of()),
                    progressOf.getOrDefault(part.id(), Progress.NOT_BEGUN)))
        .toList();
  }

  /** The lines that a filter takes, in the given order. */
  public static List<RegisterLine> sought(
      List<RegisterLine> lines, RegisterFilter filter, RegisterOrder order) {
    return lines.stream().filter(filter::takes).sorted(order.lines()).toList();
  }

  /** The codes of the frames that carry a part, along the hull. */
  public static List<String> frames(List<RegisterLine> lines) {
    return lines.stream()
        .sorted(RegisterOrder.FRAME.lines())
        .map(line -> line.part().frame())
        .distinct()
        .toList();
  }
}
