package dev.flangewright.browser;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Clip;
import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.imageio.ImageIO;

/** A picture for the documentation: part of a page, in few colours so that the file stays small. */
final class Illustration {

  private static final int COLOURS = 128;

  /** Square of the distance in red, green and blue below which two colours count as one. */
  private static final int ALIKE = 100;

  private static final int DESK_PIXELS = 1000;
  private static final int PHONE_PIXELS = 750;

  private Illustration() {}

  /** Keeps the head of the page. */
  static void head(Page page, String name) {
    keep(page, name, 0);
  }

  /** Keeps what begins at the first element that the selector finds. */
  static void from(Page page, String selector, String name) {
    keep(page, name, page.locator(selector).first().boundingBox().y - 16);
  }

  private static void keep(Page page, String name, double top) {
    // Where an entry leads to a place within the page, the page is scrolled, and boxes with it.
    double scrolled = number(page, "window.scrollY");
    double begin = Math.max(0, top + (top > 0 ? scrolled : 0));
    double width = page.viewportSize().width;
    double most = width < 500 ? PHONE_PIXELS : DESK_PIXELS;
    double rest = number(page, "document.documentElement.scrollHeight") - begin;
    var cut = new Clip(0, begin, width, Math.min(most, rest));
    byte[] png = page.screenshot(new Page.ScreenshotOptions().setFullPage(true).setClip(cut));
    write(png, folder().resolve(name + ".png"));
  }

  private static double number(Page page, String expression) {
    return ((Number) page.evaluate(expression)).doubleValue();
  }

  private static Path folder() {
    return Path.of(System.getProperty("flangewright.pictures", "target/pictures/docs"));
  }

  private static void write(byte[] png, Path file) {
    try {
      Files.createDirectories(file.toAbsolutePath().getParent());
      ImageIO.write(
          inFewColours(ImageIO.read(new ByteArrayInputStream(png))), "png", file.toFile());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static BufferedImage inFewColours(BufferedImage picture) {
    int width = picture.getWidth();
    int height = picture.getHeight();
    int[] pixels = picture.getRGB(0, 0, width, height, null, 0, width);
    int[] palette = commonest(pixels);
    var model = new IndexColorModel(8, palette.length, palette, 0, false, -1, 0);
    var few = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_INDEXED, model);
    Map<Integer, Integer> nearest = new HashMap<>();
    for (int i = 0; i < pixels.length; i++) {
      int entry = nearest.computeIfAbsent(pixels[i], colour -> nearest(palette, colour));
      few.getRaster().setSample(i % width, i / width, 0, entry);
    }
    return few;
  }

  /** The commonest colours that differ to the eye, so that a small mark of its own colour stays. */
  private static int[] commonest(int[] pixels) {
    Map<Integer, Long> counts =
        Arrays.stream(pixels)
            .boxed()
            .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
    int[] byCount =
        counts.entrySet().stream()
            .sorted(Map.Entry.<Integer, Long>comparingByValue(Comparator.reverseOrder()))
            .mapToInt(Map.Entry::getKey)
            .toArray();
    int[] palette = new int[COLOURS];
    int chosen = 0;
    for (int i = 0; i < byCount.length && chosen < COLOURS; i++) {
      int colour = byCount[i];
      if (Arrays.stream(palette, 0, chosen).allMatch(one -> distance(one, colour) >= ALIKE)) {
        palette[chosen++] = colour;
      }
    }
    return Arrays.copyOf(palette, chosen);
  }

  private static int nearest(int[] palette, int colour) {
    int best = 0;
    for (int i = 1; i < palette.length; i++) {
      best = distance(palette[i], colour) < distance(palette[best], colour) ? i : best;
    }
    return best;
  }

  private static int distance(int one, int other) {
    int red = (one >> 16 & 255) - (other >> 16 & 255);
    int green = (one >> 8 & 255) - (other >> 8 & 255);
    int blue = (one & 255) - (other & 255);
    return red * red + green * green + blue * blue;
  }
}
