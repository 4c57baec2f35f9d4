package dev.flangewright.bench;

import dev.flangewright.photos.ReadPhotos;
import dev.flangewright.photos.SubjectKind;
import java.util.Map;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** Shows the photos of a piece on its page. */
@Component
@Order(10)
class PhotosOfPiece implements PiecePanel {

  private final ReadPhotos photos;

  PhotosOfPiece(ReadPhotos photos) {
    this.photos = photos;
  }

  @Override
  public String template() {
    return "photos/_photos :: panel";
  }

  @Override
  public Map<String, Object> model(long pieceId) {
    return Map.of("gallery", photos.gallery(SubjectKind.PIECE, pieceId));
  }
}
