package dev.flangewright.bench;

import java.util.Collection;
import java.util.List;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** What finding reads. {@code builds} are those that are looked through. */
interface FindLines extends Repository<Piece, Long> {

  /** A part, by which key it is found: {@link Sought#partKey}. */
  record PartFound(long id, String partNumber, long buildId, String buildName, String key) {}

  /** A piece of a part. */
  record PieceFound(long id, long partId, int number, PieceState state) {}

  String PARTS =
      """
      select new dev.flangewright.bench.FindLines$PartFound(p.id, p.partNumber, b.id, b.name,
          replace(replace(replace(replace(upper(p.partNumber), ' ', ''), '-', ''), '.', ''), '/', ''))
      from Part p join p.build b
      where b.id in :builds
          and replace(replace(replace(replace(upper(p.partNumber), ' ', ''), '-', ''), '.', ''), '/', '')
      """;

  @Query(PARTS + " in :keys order by p.partNumber, b.name")
  List<PartFound> partsOf(Collection<Long> builds, Collection<String> keys);

  @Query(PARTS + " like concat('%', :key, '%') escape '!' order by p.partNumber, b.name")
  List<PartFound> partsLike(Collection<Long> builds, String key, Limit most);

  @Query(
      """
      select new dev.flangewright.bench.FindLines$PieceFound(p.id, p.part.id, p.number, p.state)
      from Piece p where p.part.id in :parts order by p.number
      """)
  List<PieceFound> piecesOf(Collection<Long> parts);
}
