package dev.flangewright.parts;

import dev.flangewright.forming.FormingModel;
import java.util.List;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.core.task.TaskExecutor;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * After start-up, sums up again what an older forming model summed up, in the background: lists
 * would otherwise show figures that the part sheet no longer agrees with.
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
