package dev.flangewright.parts.exchange;

import dev.flangewright.parts.Build;
import dev.flangewright.parts.Builds;
import dev.flangewright.parts.Flange;
import dev.flangewright.parts.Part;
import dev.flangewright.parts.Written;
import dev.flangewright.parts.WrittenStation;
import dev.flangewright.people.Refused;
import jakarta.persistence.EntityManager;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Writes a build's register as the two files it came from, byte for byte if nothing changed. */
@Service
public class ExportRegister {

  private static final int AT_A_TIME = 200;

  private final Builds builds;
  private final EntityManager entities;

  ExportRegister(Builds builds, EntityManager entities) {
    this.builds = builds;
    this.entities = entities;
  }

  /**
   * One row a flange; memory stays bounded.
   *
   * @throws Refused if there is no such build
   */
  @Transactional(readOnly = true)
  public void register(long buildId, OutputStream to) throws IOException {
    FileStyle style = FileStyle.of(build(buildId).registerStyle(), CsvFile.REGISTER);
    if (!style.isWhole(CsvFile.REGISTER) && anyTolerance(buildId)) {
      style = style.withAllColumns(CsvFile.REGISTER);
    }
    write(CsvFile.REGISTER, style, ids(buildId, "registerOrder", ""), to, ExportRegister::row);
  }

  /**
   * One row a station; memory stays bounded.
   *
   * @throws Refused if there is no such build
   */
  @Transactional(readOnly = true)
  public void contours(long buildId, OutputStream to) throws IOException {
    FileStyle style = FileStyle.of(build(buildId).contoursStyle(), CsvFile.CONTOURS);
    List<Long> ids = ids(buildId, "contourOrder", " and f.stations <> ''");
    if (!style.isWhole(CsvFile.CONTOURS) && anyWidth(ids)) {
      style = style.withAllColumns(CsvFile.CONTOURS);
    }
    write(CsvFile.CONTOURS, style, ids, to, ExportRegister::stations);
  }

  private Build build(long id) {
    return builds.findById(id).orElseThrow(() -> Refused.unknown("build", id));
  }

  private List<Long> ids(long buildId, String order, String only) {
    return entities
        .createQuery(
            "select f.id from Flange f where f.part.build.id = :build"
                + only
                + " order by f."
                + order
                + ", f.id",
            Long.class)
        .setParameter("build", buildId)
        .getResultList();
  }

  private boolean anyTolerance(long buildId) {
    return entities
        .createQuery(
            "select distinct f.fitToleranceMm from Flange f"
                + " where f.part.build.id = :build and f.fitToleranceMm is not null",
            Written.class)
        .setParameter("build", buildId)
        .getResultStream()
        .anyMatch(tolerance -> tolerance.value() > 0);
  }

  private boolean anyWidth(List<Long> ids) {
    for (int from = 0; from < ids.size(); from += AT_A_TIME) {
      boolean found =
          flanges(ids.subList(from, Math.min(from + AT_A_TIME, ids.size()))).stream()
              .flatMap(flange -> flange.stations().list().stream())
              .anyMatch(station -> station.widthMm() != null);
      entities.clear();
      if (found) {
        return true;
      }
    }
    return false;
  }

  private void write(
      CsvFile file,
      FileStyle style,
      List<Long> ids,
      OutputStream to,
      Function<Flange, Stream<List<String>>> rows)
      throws IOException {
    var out = new BufferedWriter(new OutputStreamWriter(to, StandardCharsets.UTF_8));
    CsvWriter csv = new CsvWriter(file, style, out);
    for (int from = 0; from < ids.size(); from += AT_A_TIME) {
      for (Flange flange : flanges(ids.subList(from, Math.min(from + AT_A_TIME, ids.size())))) {
        for (List<String> row : (Iterable<List<String>>) rows.apply(flange)::iterator) {
          csv.row(row);
        }
      }
      entities.clear();
    }
    csv.end();
  }

  private List<Flange> flanges(List<Long> ids) {
    Map<Long, Flange> found =
        entities
            .createQuery(
                "select f from Flange f join fetch f.part p join fetch p.frame where f.id in :ids",
                Flange.class)
            .setParameter("ids", ids)
            .getResultStream()
            .collect(Collectors.toMap(Flange::id, Function.identity()));
    List<Flange> inOrder = new ArrayList<>();
    ids.forEach(id -> inOrder.add(found.get(id)));
    return inOrder;
  }

  private static Stream<List<String>> row(Flange flange) {
    Part part = flange.part();
    List<String> cells = new ArrayList<>();
    cells.add(part.partNumber());
    PartFacts facts = PartFacts.of(part);
    PartFacts.FIELDS.forEach(field -> cells.add(field.text().apply(facts)));
    cells.add(2, part.frame().positionMm().text());
    cells.add(flange.name());
    PartFacts.FLANGE_FIELDS.forEach(field -> cells.add(field.text().apply(flange.drawn())));
    return Stream.of(cells);
  }

  private static Stream<List<String>> stations(Flange flange) {
    String number = flange.part().partNumber();
    return flange.stations().list().stream().map(s -> station(number, flange.name(), s));
  }

  private static List<String> station(String number, String flange, WrittenStation station) {
    return List.of(
        number,
        flange,
        Integer.toString(station.number()),
        station.xMm().text(),
        station.yMm().text(),
        station.bendAngleDeg().text(),
        text(station.widthMm()));
  }

  private static String text(@Nullable Written width) {
    return width == null ? "" : width.text();
  }
}
