package dev.flangewright.parts;

import dev.flangewright.forming.FormingModel;
import dev.flangewright.materials.OwnMetalsChanged;
import dev.flangewright.materials.ShopValuesChanged;
import java.util.List;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.core.task.TaskExecutor;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.stereotype.Component;
import org.springframework.transaction.event.TransactionalEventListener;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Sums up again, in the background, what an older forming model summed up or what rests on values
 * that the build has changed: lists would otherwise show figures that the part sheet no longer
 * agrees with. The mark is stored with the change itself, so that none is forgotten if the program
 * ends before the work is done.
 */
@Component
class SumUpStaleParts {

  private static final Logger LOG = LoggerFactory.getLogger(SumUpStaleParts.class);

  private final Parts parts;
  private final FigurePart figure;
  private final TransactionTemplate transaction;
  private final TaskExecutor executor;

  SumUpStaleParts(
      Parts parts, FigurePart figure, TransactionTemplate transaction, TaskExecutor executor) {
    this.parts = parts;
    this.figure = figure;
    this.transaction = transaction;
    this.executor = executor;
  }

  @EventListener
  void on(OwnMetalsChanged changed) {
    parts.figuresAreStale(changed.buildId(), changed.alloy(), changed.temper());
  }

  @EventListener
  void on(ShopValuesChanged changed) {
    parts.figuresAreStale(changed.buildId());
  }

  @TransactionalEventListener({OwnMetalsChanged.class, ShopValuesChanged.class})
  void afterwards() {
    inTheBackground();
  }

  @EventListener(ApplicationReadyEvent.class)
  void inTheBackground() {
    executor.execute(this::all);
  }

  /** A part is a transaction, so that people's changes need not wait for the last one. */
  void all() {
    long after = 0;
    List<Long> batch = stale(after);
    while (!batch.isEmpty()) {
      batch.forEach(this::one);
      after = batch.get(batch.size() - 1);
      LOG.info("Summed up {} parts by forming model {}", batch.size(), FormingModel.VERSION);
      batch = stale(after);
    }
  }

  private List<Long> stale(long after) {
    return parts.idsOfOlderFigures(FormingModel.VERSION, after);
  }

  /** Whoever changed the part in the same moment has summed it up, too. */
  private void one(long id) {
    try {
      transaction.executeWithoutResult(status -> parts.whole(id).ifPresent(figure::sumUp));
    } catch (OptimisticLockingFailureException changed) {
      LOG.info("Part {} was changed and summed up by somebody else", id);
    }
  }
}
