package dev.flangewright.overview.demo;

import dev.flangewright.bench.Piece;
import dev.flangewright.bench.Pieces;
import dev.flangewright.blocks.Block;
import dev.flangewright.blocks.BlockSets;
import dev.flangewright.parts.Part;
import dev.flangewright.parts.Parts;
import dev.flangewright.people.Role;
import dev.flangewright.people.ShopClock;
import dev.flangewright.people.SignedIn;
import dev.flangewright.photos.KeepPhotos;
import dev.flangewright.photos.Photo;
import dev.flangewright.photos.SubjectKind;
import dev.flangewright.photos.TakePhoto;
import java.awt.Color;
import java.time.Instant;
import java.util.List;
import org.springframework.stereotype.Component;

/** Two drawn stand-ins for photos: of a block that needs repair, and of a piece in work. */
@Component
class DemoPhotos {

  private static final String BLOCK_SET = "TW-B03-S3";
  private static final String PART = "TW-F08-S4";
  private static final Color BEECH = new Color(0xc9a26b);
  private static final Color SHEET = new Color(0x9aa7ad);

  private final Parts parts;
  private final Pieces pieces;
  private final BlockSets sets;
  private final KeepPhotos photos;
  private final ShopClock clock;

  DemoPhotos(Parts parts, Pieces pieces, BlockSets sets, KeepPhotos photos, ShopClock clock) {
    this.parts = parts;
    this.pieces = pieces;
    this.sets = sets;
    this.photos = photos;
    this.clock = clock;
  }

  /** Takes them at the time of the last entry. */
  void take(long buildId, Instant then) {
    clock.at(then, () -> SignedIn.as(Role.FITTER.word(), Role.FITTER, () -> takeBoth(buildId)));
  }

  private void takeBoth(long buildId) {
    Block block = sets.findByBuildIdAndCode(buildId, BLOCK_SET).orElseThrow().blocks().get(0);
    add(SubjectKind.BLOCK, block.id(), BEECH, 0.7, "Invented: edge crushed at station 10");
    Part part = parts.findByBuildIdAndPartNumber(buildId, PART).orElseThrow();
    List<Piece> ofPart = pieces.findByPartIdOrderByNumber(part.id());
    long latest = ofPart.get(ofPart.size() - 1).id();
    add(SubjectKind.PIECE, latest, SHEET, 0.4, "Invented: scribe line at station 6, outside");
  }

  private void add(SubjectKind kind, long id, Color metal, double markAt, String caption) {
    Photo unused = photos.add(kind, id, TakePhoto.of(InventedPicture.of(metal, markAt)), caption);
  }
}
