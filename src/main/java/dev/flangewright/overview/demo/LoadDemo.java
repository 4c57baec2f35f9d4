package dev.flangewright.overview.demo;

import dev.flangewright.bench.PartNature;
import dev.flangewright.bench.Route;
import dev.flangewright.bench.RouteOf;
import dev.flangewright.parts.Build;
import dev.flangewright.parts.LayOutBlank;
import dev.flangewright.parts.MakeBuild;
import dev.flangewright.parts.Part;
import dev.flangewright.parts.Parts;
import dev.flangewright.parts.exchange.ImportRegister;
import dev.flangewright.parts.exchange.Progress;
import dev.flangewright.parts.exchange.RegisterFiles;
import dev.flangewright.people.MayEditRegister;
import dev.flangewright.people.ShopClock;
import java.time.Duration;
import java.util.List;
import org.springframework.core.io.ClassPathResource;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Makes the demo build: imports its invented register and tells its invented history. */
@Service
public class LoadDemo {

  /** What the build is called. */
  public static final String NAME = "Tidewing";

  private static final Duration A_WEEK = Duration.ofDays(7);

  private static final String NOTE =
      "Invented: there is no flying boat Tidewing, and nobody did this work.";

  private final MakeBuild makeBuild;
  private final ImportRegister importRegister;
  private final Parts parts;
  private final LayOutBlank layOut;
  private final RouteOf routes;
  private final DemoBlocks blocks;
  private final DemoStock stock;
  private final TellHistory history;
  private final DemoHeat heat;
  private final DemoPhotos photos;
  private final ShopClock clock;

  LoadDemo(
      MakeBuild makeBuild,
      ImportRegister importRegister,
      Parts parts,
      LayOutBlank layOut,
      RouteOf routes,
      DemoBlocks blocks,
      DemoStock stock,
      TellHistory history,
      DemoHeat heat,
      DemoPhotos photos,
      ShopClock clock) {
    this.makeBuild = makeBuild;
    this.importRegister = importRegister;
    this.parts = parts;
    this.layOut = layOut;
    this.routes = routes;
    this.blocks = blocks;
    this.stock = stock;
    this.history = history;
    this.heat = heat;
    this.photos = photos;
    this.clock = clock;
  }

  /**
   * Loads everything, or nothing.
   *
   * @return the id of the build
   * @throws dev.flangewright.people.Refused if there is a build of that name already
   */
  @MayEditRegister
  @Transactional
  public long load() {
    Build build = makeBuild.named(NAME, NOTE);
    long id = build.id();
    RegisterFiles files =
        new RegisterFiles(
            new ClassPathResource("demo/register.csv"), new ClassPathResource("demo/contours.csv"));
    importRegister.apply(id, files, Progress.UNSEEN);
    Part part = parts.findByBuildIdAndPartNumber(id, DemoLayout.PART).orElseThrow();
    layOut.redraw(part.id(), part.version(), DemoLayout.ENTRY);
    Route route = routes.usual(id, PartNature.TWO_FLANGES).orElseThrow();
    List<Act> acts = DemoHistory.acts(route.stages(), clock.instant());
    blocks.shelve(id, acts.get(0).at().minus(A_WEEK));
    stock.deliver(id, acts.get(0).at().minus(A_WEEK));
    history.of(id, acts);
    blocks.wear(id, acts.get(acts.size() - 1).at());
    stock.recall(id, acts.get(acts.size() - 1).at());
    heat.treat(id, clock.instant());
    photos.take(id, acts.get(acts.size() - 1).at());
    return id;
  }
}
