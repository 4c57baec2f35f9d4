package dev.flangewright.bench;

import dev.flangewright.parts.Part;
import dev.flangewright.people.Refused;
import jakarta.persistence.CascadeType;
import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.OneToMany;
import jakarta.persistence.OrderBy;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;

/**
 * One physical attempt at a part. Every change goes through a verb here, which refuses what the
 * route forbids and writes one line of the log; the version makes two people's entries take turns.
 */
@Entity
public class Piece {

  private static final double MOST_HOURS = 1000;

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE)
  private @Nullable Long id;

  @Version private long version;

  @ManyToOne(fetch = FetchType.LAZY, optional = false)
  private Part part;

  private long buildId;
  private int number;

  @Enumerated(EnumType.STRING)
  @JdbcTypeCode(SqlTypes.VARCHAR)
  private PieceState state;

  @Embedded private Standing standing = new Standing();
  private Instant createdAt;
  private String createdBy;

  @OneToMany(mappedBy = "piece", cascade = CascadeType.ALL)
  @OrderBy("seq")
  private List<PieceStage> stages = new ArrayList<>();

  @OneToMany(mappedBy = "piece", cascade = CascadeType.ALL)
  @OrderBy("ordinal")
  private List<StageEntry> log = new ArrayList<>();

  protected Piece() {}

  /** Begins piece {@code number} of a part on a copy of the route's stages that apply to it. */
  Piece(Part part, int number, List<RouteStage> route, String who, Instant now) {
    this.part = part;
    this.buildId = part.build().id();
    this.number = number;
    this.state = PieceState.IN_WORK;
    this.createdBy = who;
    this.createdAt = now;
    int flanges = part.flanges().size();
    route.stream()
        .filter(planned -> planned.appliesTo(flanges))
        .forEach(planned -> stages.add(new PieceStage(this, planned, stages.size() + 1)));
    takeStock();
  }

  /** Starts a stage; every stage before it must be finished. */
  public void start(String code, Signature by) {
    PieceStage stage = openStage(code);
    if (stage.kind() == StageKind.ACCEPT) {
      throw StageRefusal.needsInspection(stage);
    }
    if (stage.isStarted()) {
      throw StageRefusal.alreadyStarted(stage);
    }
    stage.start(by);
    write(stage, EntryAction.START, null, by);
  }

  /** Records that the check of a hold point has been done. */
  public void check(String code, Signature by) {
    PieceStage stage = openStage(code);
    if (!stage.isHoldPoint()) {
      throw StageRefusal.noHoldPoint(stage);
    }
    if (!stage.isStarted()) {
      throw StageRefusal.notStarted(stage);
    }
    if (!stage.waitsForCheck()) {
      throw StageRefusal.alreadyChecked(stage);
    }
    stage.check(by);
    write(stage, EntryAction.CHECK, null, by);
  }

  /**
   * Finishes a stage.
   *
   * @param hours hours spent, 0 to 1000; null if not known
   */
  public void finish(String code, @Nullable Double hours, Signature by) {
    PieceStage stage = openStage(code);
    if (stage.kind().byInspection()) {
      throw StageRefusal.needsInspection(stage);
    }
    if (!stage.isStarted()) {
      throw StageRefusal.notStarted(stage);
    }
    if (stage.waitsForCheck()) {
      throw StageRefusal.holdNotChecked(stage);
    }
    stage.finish(by, checkedHours(hours));
    write(stage, EntryAction.FINISH, hours, by);
  }

  /** Takes the last entry back; the reason is the signature's note. */
  public void undo(Signature by) {
    refuseIfDone();
    StageEntry last = lastStanding().orElseThrow(() -> StageRefusal.nothingToUndo(null));
    if (!last.canBeUndone()) {
      throw StageRefusal.nothingToUndo(last);
    }
    if (by.note().isEmpty()) {
      throw Refused.unacceptable("reason is missing: say why the entry is taken back.");
    }
    PieceStage stage = stage(last.stageCode());
    stage.undo(last.action());
    last.isUndone();
    write(stage, EntryAction.UNDO, null, by);
  }

  /** Passes the piece; with a concession if it deviates from the drawing. */
  public void pass(boolean withConcession, Signature by) {
    refuseIfDone();
    PieceStage inspect =
        order().inspection().orElseThrow(() -> StageRefusal.noSuchStage(this, "inspect"));
    Optional<PieceStage> open = order().openBefore(inspect);
    if (open.isPresent()) {
      throw StageRefusal.inspectionTooEarly(open.get());
    }
    stages.stream().filter(stage -> !stage.isFinished()).forEach(stage -> stage.pass(by));
    state = withConcession ? PieceState.CONCESSION : PieceState.ACCEPTED;
    write(inspect, withConcession ? EntryAction.CONCEDE : EntryAction.ACCEPT, null, by);
  }

  /** Sends the piece back to a finished stage; it and all later ones are to be done again. */
  public PieceStage rework(String code, Signature by) {
    refuseIfDone();
    PieceStage from = stage(code);
    if (!from.isFinished()) {
      throw StageRefusal.nothingToRework(from);
    }
    order().from(from).forEach(PieceStage::redo);
    write(from, EntryAction.REWORK, null, by);
    return from;
  }

  /**
   * Ends the piece. The log may lag behind the work, so any stage of the piece can be named.
   *
   * @param code the stage at which it was lost
   */
  public PieceStage scrap(String code, Signature by) {
    refuseIfDone();
    PieceStage at = stage(code);
    state = PieceState.SCRAPPED;
    write(at, EntryAction.SCRAP, null, by);
    return at;
  }

  /**
   * Refuses an entry made on a page that is no longer true.
   *
   * @param seenVersion the version the person saw; null if the caller does not say
   */
  public void refuseIfStale(@Nullable Long seenVersion) {
    if (seenVersion != null && seenVersion != version) {
      throw StageRefusal.seenStale(this, since(seenVersion));
    }
  }

  /** The log's lines since a version; each change of a piece writes exactly one. */
  private List<StageEntry> since(long seenVersion) {
    long fresh = Math.min(log.size(), Math.max(0, version - seenVersion));
    return log.subList(log.size() - (int) fresh, log.size());
  }

  private PieceStage openStage(String code) {
    refuseIfDone();
    PieceStage wanted = stage(code);
    if (wanted.isFinished()) {
      throw StageRefusal.alreadyFinished(wanted);
    }
    Optional<PieceStage> earlier = order().openBefore(wanted);
    if (earlier.isPresent()) {
      throw StageRefusal.earlierStageOpen(wanted, earlier.get());
    }
    return wanted;
  }

  private void refuseIfDone() {
    if (state != PieceState.IN_WORK) {
      throw StageRefusal.pieceIsDone(this);
    }
  }

  private static @Nullable Double checkedHours(@Nullable Double hours) {
    if (hours != null && !(hours >= 0 && hours <= MOST_HOURS)) {
      throw Refused.unacceptable("hours is " + hours + "; it must be from 0 to 1000.");
    }
    return hours;
  }

  private void write(PieceStage stage, EntryAction action, @Nullable Double hours, Signature by) {
    log.add(new StageEntry(this, log.size() + 1, stage, action, hours, by));
    takeStock();
  }

  private void takeStock() {
    standing = Standing.of(order(), state == PieceState.IN_WORK);
  }

  private StageOrder order() {
    return new StageOrder(stages);
  }

  private Optional<StageEntry> lastStanding() {
    return log.stream().filter(StageEntry::stands).reduce((first, second) -> second);
  }

  /** The entry that {@link #undo} would take back; empty if there is none. */
  public Optional<StageEntry> undoable() {
    return state == PieceState.IN_WORK
        ? lastStanding().filter(StageEntry::canBeUndone)
        : Optional.empty();
  }

  /** The first stage that is not finished; empty once the piece is passed. */
  public Optional<PieceStage> current() {
    return order().current();
  }

  /**
   * @throws StageRefusal if the piece has no stage of that code
   */
  public PieceStage stage(String code) {
    return order().withCode(code).orElseThrow(() -> StageRefusal.noSuchStage(this, code));
  }

  /** Hours logged on it, those before a rework included, those taken back left out. */
  public double hoursSpent() {
    return log.stream()
        .filter(StageEntry::stands)
        .map(StageEntry::hours)
        .filter(Objects::nonNull)
        .mapToDouble(Double::doubleValue)
        .sum();
  }

  /** Part number and piece number, as people say it. */
  public String label() {
    return part.partNumber() + " piece " + number;
  }

  public Long id() {
    return Objects.requireNonNull(id);
  }

  public long version() {
    return version;
  }

  public Part part() {
    return part;
  }

  public long buildId() {
    return buildId;
  }

  public int number() {
    return number;
  }

  public PieceState state() {
    return state;
  }

  public int stagesDone() {
    return standing.stagesDone();
  }

  public int stagesTotal() {
    return standing.stagesTotal();
  }

  public @Nullable String currentStageCode() {
    return standing.currentStageCode();
  }

  public @Nullable String currentStageName() {
    return standing.currentStageName();
  }

  /** True while the current stage has been started and not finished. */
  public boolean currentStageBegun() {
    return standing.currentStageBegun();
  }

  /** True while it stands at a hold point that waits for its check. */
  public boolean held() {
    return standing.held();
  }

  public Instant createdAt() {
    return createdAt;
  }

  public String createdBy() {
    return createdBy;
  }

  public List<PieceStage> stages() {
    return Collections.unmodifiableList(stages);
  }

  public List<StageEntry> log() {
    return Collections.unmodifiableList(log);
  }
}
