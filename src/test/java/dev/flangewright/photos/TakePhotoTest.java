package dev.flangewright.photos;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.flangewright.people.Refused;
import java.awt.Color;
import java.awt.Transparency;
import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What becomes of a file that is handed in as a photo. */
class TakePhotoTest {

  /** APP0 of JFIF, tables, frame, scan: what a JPEG needs (ISO/IEC 10918-1, table B.1). */
  private static final Set<Integer> NEEDED = Set.of(0xE0, 0xDB, 0xC0, 0xC4, 0xDA);

  @ParameterizedTest
  @EnumSource(PhotoSize.class)
  void nothing_but_the_picture_is_left_of_a_photo_from_a_phone(PhotoSize size) {
    byte[] sent = PhotoFiles.asFromAPhone(PhotoFiles.jpeg(600, 400), 6);
    assertThat(markers(sent)).contains(0xE1, 0xFE);
    assertThat(text(sent)).contains("Exif", "ann@bench", "made by ann", text(PhotoFiles.place()));

    byte[] kept = TakePhoto.of(sent).jpeg(size);

    assertThat(markers(kept)).isSubsetOf(NEEDED);
    assertThat(text(kept))
        .doesNotContain("Exif", "http", "ann", "GPS")
        .doesNotContain(text(PhotoFiles.place()));
  }

  /**
   * Exif 2.3 (CIPA DC-008-2012, 4.6.4 A, Orientation): at which sides of the scene row 0 and column
   * 0 lie. The red corner of the file is the first pixel of row 0, the green one its last.
   */
  @ParameterizedTest
  @CsvSource({
    "1,top left,top right", "2,top right,top left",
    "3,bottom right,bottom left", "4,bottom left,bottom right",
    "5,top left,bottom left", "6,top right,bottom right",
    "7,bottom right,top right", "8,bottom left,top left"
  })
  void a_photo_is_turned_as_its_camera_was_held(int orientation, String red, String green)
      throws IOException {
    TakenPhoto taken =
        TakePhoto.of(PhotoFiles.asFromAPhone(PhotoFiles.jpeg(600, 400), orientation));
    assertThat(taken.width()).isEqualTo(orientation < 5 ? 600 : 400);
    assertThat(taken.height()).isEqualTo(orientation < 5 ? 400 : 600);
    assertThat(corner(read(taken.jpeg(PhotoSize.SMALL)), red)).isEqualTo("red");
    assertThat(corner(read(taken.jpeg(PhotoSize.SMALL)), green)).isEqualTo("green");
  }

  @Test
  void a_wrong_orientation_leaves_the_photo_as_it_lies() {
    byte[] sent = PhotoFiles.asFromAPhone(PhotoFiles.jpeg(60, 40), 9);
    assertThat(TakePhoto.of(sent).width()).isEqualTo(60);
    assertThat(ExifOrientation.of(Arrays.copyOf(sent, 40))).isEqualTo(1);
  }

  @ParameterizedTest
  @CsvSource({
    "5000,3000,2048,1229,400,240",
    "3000,4000,1536,2048,300,400",
    "800,600,800,600,400,300",
    "300,200,300,200,300,200",
    "16000,2,2048,1,400,1",
    "1,1,1,1,1,1"
  })
  void a_photo_is_made_smaller_and_never_larger(
      int width, int height, int fullWidth, int fullHeight, int smallWidth, int smallHeight)
      throws IOException {
    TakenPhoto taken = TakePhoto.of(PhotoFiles.png(width, height));
    assertThat(taken.width()).isEqualTo(fullWidth);
    assertThat(taken.height()).isEqualTo(fullHeight);
    BufferedImage small = read(taken.jpeg(PhotoSize.SMALL));
    assertThat(small.getWidth()).isEqualTo(smallWidth);
    assertThat(small.getHeight()).isEqualTo(smallHeight);
  }

  @Test
  void no_more_pixels_are_decoded_than_are_needed() {
    BufferedImage decoded = DecodePhoto.of(PhotoFiles.jpeg(9000, 3000), 2048);
    assertThat(decoded.getWidth()).isEqualTo(2250);
  }

  @Test
  void even_pure_noise_fits_the_place_that_a_picture_has() {
    BufferedImage noise = new BufferedImage(2048, 2048, BufferedImage.TYPE_INT_RGB);
    Random random = new Random(1);
    noise.setRGB(0, 0, 2048, 2048, random.ints(2048 * 2048).toArray(), 0, 2048);
    byte[] full = TakePhoto.of(PhotoFiles.file(noise, "png")).jpeg(PhotoSize.FULL);
    assertThat(full.length).isBetween(100_000, WriteJpeg.MOST_BYTES);
  }

  @Test
  void a_transparent_picture_lies_on_white_and_a_16_bit_one_is_taken() throws IOException {
    BufferedImage clear = new BufferedImage(40, 40, BufferedImage.TYPE_INT_ARGB);
    assertThat(corner(taken(PhotoFiles.file(clear, "png")), "top left")).isEqualTo("white");
    assertThat(corner(taken(sixteenBits()), "top left")).isEqualTo("green");
  }

  @Test
  void what_follows_the_end_of_a_picture_is_not_kept() {
    byte[] html = "<html><script>alert(1)</script>".getBytes(StandardCharsets.ISO_8859_1);
    byte[] both = concat(PhotoFiles.jpeg(60, 40), html);
    byte[] kept = TakePhoto.of(both).jpeg(PhotoSize.FULL);
    assertThat(text(both)).contains("<script>");
    assertThat(text(kept)).doesNotContain("<script>", "html");
  }

  @ParameterizedTest
  @CsvSource({"50000,50000", "16001,10", "10,16001", "15000,15000"})
  void a_small_file_that_claims_a_giant_picture_is_refused_before_it_is_decoded(int w, int h) {
    assertThatThrownBy(() -> TakePhoto.of(PhotoFiles.pngThatClaims(w, h)))
        .isInstanceOf(Refused.class)
        .hasMessageContaining(w + " x " + h + " pixels");
  }

  @Test
  void what_is_no_picture_is_refused_whatever_it_is_called() {
    for (String text :
        new String[] {
          "just words",
          "<svg xmlns=\"http://www.w3.org/2000/svg\"/>",
          "GIF89a",
          "RIFF....WEBPVP8 ",
          "\0\0\0\u0018ftypheic",
          "x"
        }) {
      assertThatThrownBy(() -> TakePhoto.of(text.getBytes(StandardCharsets.ISO_8859_1)))
          .isInstanceOf(Refused.class)
          .hasMessageContaining("no JPEG and no PNG");
    }
  }

  @Test
  void a_file_that_is_cut_short_is_refused() {
    byte[] jpeg = PhotoFiles.asFromAPhone(PhotoFiles.jpeg(600, 400), 1);
    byte[] png = PhotoFiles.png(600, 400);
    for (byte[] whole : new byte[][] {jpeg, png}) {
      for (int part : new int[] {3, 20, whole.length / 2, whole.length - 60}) {
        byte[] cut = Arrays.copyOf(whole, part);
        assertThatThrownBy(() -> TakePhoto.of(cut)).isInstanceOf(Refused.class);
      }
    }
    assertThatThrownBy(() -> TakePhoto.of(Arrays.copyOf(jpeg, jpeg.length / 2)))
        .hasMessageContaining("cut short or damaged");
  }

  @Test
  void a_picture_in_colours_for_print_or_one_that_moves_is_refused() throws IOException {
    byte[] print = fourColours();
    assertThatThrownBy(() -> TakePhoto.of(print)).hasMessageContaining("CMYK");
    assertThatThrownBy(() -> TakePhoto.of(PhotoFiles.pngThatMoves()))
        .hasMessageContaining("one frame");
  }

  @Test
  void a_progressive_photo_is_taken_up_to_the_size_that_a_decoder_has_room_for()
      throws IOException {
    assertThat(TakePhoto.of(progressive(60, 40)).width()).isEqualTo(60);
    byte[] large = progressive(6000, 4001);
    assertThatThrownBy(() -> TakePhoto.of(large)).hasMessageContaining("progressive");
    assertThat(TakePhoto.of(PhotoFiles.jpeg(6000, 4001)).width()).isEqualTo(2048);
  }

  private static byte[] progressive(int width, int height) throws IOException {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ImageWriteParam param = writer.getDefaultWriteParam();
    param.setProgressiveMode(ImageWriteParam.MODE_DEFAULT);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (var output = new MemoryCacheImageOutputStream(bytes)) {
      writer.setOutput(output);
      writer.write(null, new IIOImage(PhotoFiles.fields(width, height), null, null), param);
    }
    return bytes.toByteArray();
  }

  @Test
  void nothing_and_too_much_are_refused() {
    assertThatThrownBy(() -> TakePhoto.of(new byte[0])).hasMessageContaining("photo is missing");
    assertThatThrownBy(() -> TakePhoto.of(new byte[PhotoLimits.MOST_BYTES + 1]))
        .hasMessageContaining("15 MB");
  }

  @Test
  void a_photo_is_known_by_the_bytes_that_came_in() {
    byte[] sent = PhotoFiles.jpeg(60, 40);
    assertThat(TakePhoto.of(sent).sha256())
        .isEqualTo(TakePhoto.of(sent.clone()).sha256())
        .isNotEqualTo(TakePhoto.of(PhotoFiles.jpeg(61, 40)).sha256())
        .matches("[0-9a-f]{64}");
  }

  /** Green, with 16 bits a channel. */
  private static byte[] sixteenBits() {
    var model =
        new ComponentColorModel(
            ColorSpace.getInstance(ColorSpace.CS_sRGB),
            false,
            false,
            Transparency.OPAQUE,
            DataBuffer.TYPE_USHORT);
    WritableRaster raster = model.createCompatibleWritableRaster(50, 50);
    for (int i = 0; i < 2500; i++) {
      raster.setPixel(i % 50, i / 50, new int[] {0, 65535, 0});
    }
    return PhotoFiles.file(new BufferedImage(model, raster, false, null), "png");
  }

  private static byte[] fourColours() throws IOException {
    Raster raster = Raster.createInterleavedRaster(DataBuffer.TYPE_BYTE, 40, 40, 4, null);
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (var output = new MemoryCacheImageOutputStream(bytes)) {
      writer.setOutput(output);
      writer.write(null, new IIOImage(raster, null, null), null);
    }
    return PhotoFiles.forPrint(bytes.toByteArray());
  }

  private static BufferedImage taken(byte[] sent) throws IOException {
    return read(TakePhoto.of(sent).jpeg(PhotoSize.FULL));
  }

  private static BufferedImage read(byte[] jpeg) throws IOException {
    return ImageIO.read(new ByteArrayInputStream(jpeg));
  }

  private static String corner(BufferedImage picture, String where) {
    int x = where.endsWith("left") ? 10 : picture.getWidth() - 11;
    int y = where.startsWith("top") ? 10 : picture.getHeight() - 11;
    Color seen = new Color(picture.getRGB(x, y));
    boolean red = seen.getRed() > 200;
    boolean green = seen.getGreen() > 200;
    if (red && green && seen.getBlue() > 200) {
      return "white";
    }
    return red ? "red" : green ? "green" : seen.toString();
  }

  /** The markers of all segments up to the scan. */
  private static Set<Integer> markers(byte[] jpeg) {
    Set<Integer> found = new TreeSet<>();
    int at = 2;
    while (!found.contains(0xDA)) {
      assertThat(jpeg[at] & 0xFF).isEqualTo(0xFF);
      found.add(jpeg[at + 1] & 0xFF);
      at += 2 + ((jpeg[at + 2] & 0xFF) << 8 | jpeg[at + 3] & 0xFF);
    }
    return found;
  }

  private static String text(byte[] bytes) {
    return new String(bytes, StandardCharsets.ISO_8859_1);
  }

  private static byte[] concat(byte[] one, byte[] other) {
    byte[] both = Arrays.copyOf(one, one.length + other.length);
    System.arraycopy(other, 0, both, one.length, other.length);
    return both;
  }
}
