package dev.flangewright.photos;

import dev.flangewright.people.Refused;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.concurrent.Semaphore;
import org.springframework.stereotype.Component;
import org.springframework.web.multipart.MultipartFile;

/**
 * Takes a photo in: looks whether it is one, turns it upright, makes the two sizes and writes each
 * anew, so that of the file that came in nothing is left but the picture. At most two at once,
 * which bounds the memory; more wait.
 */
@Component
public class TakePhoto {

  private static final int AT_ONCE = 2;

  private final Semaphore room = new Semaphore(AT_ONCE, true);

  /**
   * @throws Refused if nothing was sent, or it is no photo that can be taken in
   */
  public TakenPhoto of(MultipartFile upload) {
    PhotoLimits.refuseUnlessFits(upload.getSize());
    room.acquireUninterruptibly();
    try {
      return of(upload.getBytes());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      room.release();
    }
  }

  /**
   * The same from a file at hand.
   *
   * @throws Refused if it is no photo that can be taken in
   */
  public static TakenPhoto of(byte[] file) {
    PhotoLimits.refuseUnlessFits(file.length);
    BufferedImage decoded = DecodePhoto.of(file, PhotoSize.FULL.longSidePx());
    BufferedImage shrunk = Shrunk.to(PhotoSize.FULL.longSidePx(), decoded);
    BufferedImage full = Upright.of(shrunk, ExifOrientation.of(file));
    BufferedImage small = Shrunk.to(PhotoSize.SMALL.longSidePx(), full);
    return new TakenPhoto(
        WriteJpeg.of(full), WriteJpeg.of(small), full.getWidth(), full.getHeight(), sha256(file));
  }

  private static String sha256(byte[] file) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(file));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e); // every Java platform has it
    }
  }
}
