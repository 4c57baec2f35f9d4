package dev.flangewright.bench.web;

import dev.flangewright.bench.Piece;
import dev.flangewright.bench.Pieces;
import dev.flangewright.bench.RouteStage;
import dev.flangewright.bench.StageCheck;
import jakarta.persistence.EntityManagerFactory;
import java.util.List;
import java.util.Objects;
import org.hibernate.Hibernate;
import org.springframework.context.ApplicationContext;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** Reads pieces with all their lines, as they are stored. */
record Reading(ApplicationContext context) {

  /** The first piece of a part. */
  Piece first(long partId) {
    var transaction = new TransactionTemplate(context.getBean(PlatformTransactionManager.class));
    return Objects.requireNonNull(
        transaction.execute(
            status -> {
              Pieces pieces = context.getBean(Pieces.class);
              Piece piece = pieces.findByPartIdOrderByNumber(partId).get(0);
              piece.log().forEach(Hibernate::initialize);
              piece.stages().forEach(Hibernate::initialize);
              return piece;
            }));
  }

  /** The checks that a route asks for at a stage. */
  List<StageCheck> checks(RouteStage stage) {
    return context
        .getBean(EntityManagerFactory.class)
        .callInTransaction(
            entities ->
                entities
                    .createQuery(
                        "select c from StageCheck c where c.stage = :stage order by c.seq",
                        StageCheck.class)
                    .setParameter("stage", stage)
                    .getResultList());
  }
}
