package dev.flangewright.bench;

import dev.flangewright.parts.Part;
import dev.flangewright.people.Refused;
import dev.flangewright.stock.Batch;
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

  @ManyToOne(fetch = FetchType.LAZY)
  private @Nullable Route route;

  @ManyToOne(fetch = FetchType.LAZY)
  private @Nullable Piece twin;

  @ManyToOne(fetch = FetchType.LAZY)
  private @Nullable Batch batch;

  @OneToMany(mappedBy = "piece", cascade = CascadeType.ALL)
  @OrderBy("seq")
  private List<PieceStage> stages = new ArrayList<>();

  @OneToMany(mappedBy = "piece", cascade = CascadeType.ALL)
  @OrderBy("ordinal")
  private List<StageEntry> log = new ArrayList<>();

  protected Piece() {}

  /** Begins piece {@code number} of a part on a copy of the route's stages that apply to it. */
  Piece(Part part, int number, Route route, String who, Instant now) {
    this.part = part;
    this.buildId = part.build().id();
    this.number = number;
    this.state = PieceState.IN_WORK;
    this.createdBy = who;
    this.createdAt = now;
    this.route = route;
    route
        .stagesFor(part.flanges().size())
        .forEach(planned -> stages.add(new PieceStage(this, planned, stages.size() + 1)));
    takeStock();
  }

  /** Notes that this piece and that one of the other hand were begun together. */
  void isTwinOf(Piece other) {
    this.twin = other;
    other.twin = this;
  }

  /** Starts a stage; every stage that has to come before it must be finished. */
  public void start(String code, Signature by) {
    PieceStage stage = openStage(code);
    stage.start(by);
    write(stage, EntryAction.START, null, by);
  }

  /** Records that the check of a hold point has been done. */
  public void check(String code, Signature by) {
    PieceStage stage = openStage(code);
    stage.check(by);
    write(stage, EntryAction.CHECK, null, by);
  }

  /** Answers one of the checks of a stage; an answer given before is replaced, the log keeps it. */
  public void answer(String code, String checkCode, Answer answer, Signature by) {
    PieceStage stage = openStage(code);
    PieceCheck check = stage.answer(checkCode, answer, by);
    write(stage, EntryAction.ANSWER, null, by).about(check);
  }

  /** Lets a check pass that was not met; the signature's note says why. */
  public void letPass(String code, String checkCode, Signature by) {
    PieceStage stage = openStage(code);
    PieceCheck check = stage.letPass(checkCode, by);
    write(stage, EntryAction.LET_PASS, null, by).about(check);
  }

  /**
   * Finishes a stage.
   *
   * @param hours hours spent, 0 to 1000; null if not known
   * @return the line of the log
   */
  public StageEntry finish(String code, @Nullable Double hours, Signature by) {
    PieceStage stage = openStage(code);
    stage.finish(by, Hours.checked(hours));
    return write(stage, EntryAction.FINISH, hours, by);
  }

  /** Notes which batch it was cut from; the line of the log that says so can be taken back. */
  void isCutFrom(Batch cut, StageEntry saidBy) {
    saidBy.isCutFrom(cut);
    batch = entries().batch();
  }

  /**
   * Puts down later, or anew, which batch it was cut from; also once it is passed or scrapped.
   *
   * @param by its note is the reason
   * @throws Refused if the reason is missing
   */
  public void setBatch(Batch cut, Signature by) {
    if (by.note().isEmpty()) {
      throw Refused.unacceptable("reason is missing: say how it is known.");
    }
    isCutFrom(cut, write(cutStage(), EntryAction.SET_BATCH, null, by));
  }

  /** The stage at which it is cut from the sheet; the first of all if its route has none. */
  PieceStage cutStage() {
    return stages.stream()
        .filter(stage -> stage.kind() == StageKind.CUT)
        .findFirst()
        .orElseGet(() -> stages.get(0));
  }

  /** Takes the last entry back; the reason is the signature's note. */
  public void undo(Signature by) {
    refuseIfDone();
    StageEntry last = entries().toUndo(by);
    PieceStage stage = stage(last.stageCode());
    stage.undo(last);
    last.isUndone();
    batch = entries().batch();
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

  /** When something was last logged on a stage; when the piece was begun, if nothing was. */
  public Instant lastTouched(String code) {
    return entries().lastOn(code).map(StageEntry::doneAt).orElse(createdAt);
  }

  /**
   * Refuses an entry made on a page that is no longer true.
   *
   * @param seenVersion the version the person saw; null if the caller does not say
   */
  public void refuseIfStale(@Nullable Long seenVersion) {
    if (seenVersion != null && seenVersion != version) {
      // each change of a piece writes exactly one line
      throw StageRefusal.seenStale(this, entries().last(version - seenVersion));
    }
  }

  /**
   * @throws StageRefusal if the route does not let the stage be worked on now
   */
  void refuseUnlessOpen(String code) {
    openStage(code);
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

  private StageEntry write(
      PieceStage stage, EntryAction action, @Nullable Double hours, Signature by) {
    StageEntry entry = new StageEntry(this, log.size() + 1, stage, action, hours, by);
    log.add(entry);
    takeStock();
    return entry;
  }

  private void takeStock() {
    standing = Standing.of(order(), log.size(), state == PieceState.IN_WORK);
  }

  private StageOrder order() {
    return new StageOrder(stages);
  }

  private PieceLog entries() {
    return new PieceLog(log);
  }

  /** The entry that {@link #undo} would take back; empty if there is none. */
  public Optional<StageEntry> undoable() {
    return state == PieceState.IN_WORK ? entries().undoable() : Optional.empty();
  }

  /** The last line of the log, if this person made it so lately that it is offered for undoing. */
  public Optional<StageEntry> justLoggedBy(String who, Instant now) {
    return undoable().filter(entries()::isLast).filter(entry -> entry.isJustMadeBy(who, now));
  }

  /** The stage to be looked at now; empty once the piece is passed. */
  public Optional<PieceStage> current() {
    return order().current();
  }

  /** The stage that an inspection passes; empty if the route had none. */
  public Optional<PieceStage> inspection() {
    return order().inspection();
  }

  /** Every stage that may be worked on now: one, or several that go alongside each other. */
  public List<PieceStage> open() {
    return state == PieceState.IN_WORK ? order().open() : List.of();
  }

  /**
   * @throws StageRefusal if the piece has no stage of that code
   */
  public PieceStage stage(String code) {
    return order().withCode(code).orElseThrow(() -> StageRefusal.noSuchStage(this, code));
  }

  /** Hours logged on it, those before a rework included, those taken back left out. */
  public double hoursSpent() {
    return entries().hoursSpent();
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

  /** The version of the route it began on; null if it began before routes had versions. */
  public @Nullable Route route() {
    return route;
  }

  /** The piece of the other hand that was begun with it; null if it was begun alone. */
  public @Nullable Piece twin() {
    return twin;
  }

  /** The batch of sheet it was cut from; null if none is recorded. */
  public @Nullable Batch batch() {
    return batch;
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

  boolean isInWork() {
    return state == PieceState.IN_WORK;
  }

  int logLines() {
    return log.size();
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
