package dev.flangewright.bench;

import dev.flangewright.people.Clearance;
import dev.flangewright.people.Refused;
import jakarta.persistence.CascadeType;
import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.OneToMany;
import jakarta.persistence.OrderBy;
import jakarta.persistence.Version;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** One stage of a route, with what is checked at it. */
@Entity
public class RouteStage {

  private static final int MOST_CHECKS = 20;

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE)
  private @Nullable Long id;

  @Version private long version;

  @ManyToOne(fetch = FetchType.LAZY, optional = false)
  @SuppressWarnings("UnusedVariable") // the owning side: its column is what is read
  private Route route;

  private int seq;
  private String code;
  @Embedded private StageCard card;
  private int flangesNeeded;

  @OneToMany(mappedBy = "stage", cascade = CascadeType.ALL, orphanRemoval = true)
  @OrderBy("seq")
  private List<StageCheck> checks = new ArrayList<>();

  protected RouteStage() {}

  /**
   * @param code lower-case letters, digits and dashes; unique in the route
   */
  RouteStage(Route route, int seq, String code, StagePlan plan) {
    this.route = route;
    this.seq = seq;
    this.code = code;
    reads(plan);
  }

  final void reads(StagePlan plan) {
    this.card = plan.card();
    this.flangesNeeded = plan.flangesNeeded();
  }

  void standsAt(int newSeq) {
    this.seq = newSeq;
  }

  StageCheck ask(CheckCard check) {
    if (card.kind().byInspection()) {
      throw Refused.unacceptable("The inspection is itself the check: it asks for no others.");
    }
    if (checks.size() == MOST_CHECKS) {
      throw Refused.unacceptable("A stage has at most " + MOST_CHECKS + " checks.");
    }
    StageCheck asked =
        new StageCheck(
            this,
            checks.size() + 1,
            CodeOfName.of(check.question(), "check", this::hasCheck),
            check);
    checks.add(asked);
    return asked;
  }

  /** Takes over the checks of another version of this stage, with their codes. */
  void asksAs(RouteStage other) {
    other.checks.forEach(
        check -> checks.add(new StageCheck(this, check.seq(), check.code(), check.card())));
  }

  void changeCheck(long checkId, CheckCard newCard) {
    check(checkId).reads(newCard);
  }

  void moveCheck(long checkId, int by) {
    int from = checks.indexOf(check(checkId));
    int to = from + by;
    if (to < 0 || to >= checks.size()) {
      throw Refused.conflict("The check stands at the end of the list already.");
    }
    Collections.swap(checks, from, to);
    numberChecks();
  }

  void removeCheck(long checkId) {
    checks.remove(check(checkId));
    numberChecks();
  }

  private void numberChecks() {
    for (int i = 0; i < checks.size(); i++) {
      checks.get(i).standsAt(i + 1);
    }
  }

  private StageCheck check(long checkId) {
    return checks.stream()
        .filter(check -> check.hasId(checkId))
        .findFirst()
        .orElseThrow(() -> Refused.unknown("check", checkId));
  }

  private boolean hasCheck(String wanted) {
    return checks.stream().anyMatch(check -> check.code().equals(wanted));
  }

  boolean appliesTo(int flanges) {
    return flanges >= flangesNeeded;
  }

  public Long id() {
    return Objects.requireNonNull(id);
  }

  boolean hasId(long wanted) {
    return id != null && id == wanted;
  }

  public int seq() {
    return seq;
  }

  public String code() {
    return code;
  }

  public StageCard card() {
    return card;
  }

  public String name() {
    return card.name();
  }

  public StageKind kind() {
    return card.kind();
  }

  public @Nullable String holdCheck() {
    return card.holdCheck();
  }

  public @Nullable Clearance clearance() {
    return card.clearance();
  }

  public int flangesNeeded() {
    return flangesNeeded;
  }

  public List<StageCheck> checks() {
    return Collections.unmodifiableList(checks);
  }
}
