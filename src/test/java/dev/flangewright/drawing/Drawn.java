package dev.flangewright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** A drawing read back by an XML parser; what every drawing must keep to is checked on the way. */
public final class Drawn {

  private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d{1,2})?");
  private static final Pattern COORDINATES = Pattern.compile("[MLHVZ \\d.-]*");

  private final List<Element> elements = new ArrayList<>();

  private Drawn(Element root) {
    elements.add(root);
    NodeList all = root.getElementsByTagName("*");
    for (int i = 0; i < all.getLength(); i++) {
      elements.add((Element) all.item(i));
    }
  }

  public static Drawn of(String svg) {
    try {
      var builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
      var document = builder.parse(new InputSource(new StringReader(svg)));
      Drawn drawn = new Drawn(document.getDocumentElement());
      drawn.check();
      return drawn;
    } catch (Exception e) {
      throw new AssertionError("Not well-formed: " + svg, e);
    }
  }

  private void check() {
    assertThat(root().getTagName()).isEqualTo("svg");
    assertThat(root().hasAttribute("viewBox")).isTrue();
    assertThat(root().hasAttribute("width")).as("fixed width").isFalse();
    List<String> ids =
        elements.stream().map(e -> e.getAttribute("id")).filter(s -> !s.isEmpty()).toList();
    assertThat(ids).doesNotHaveDuplicates();
    assertThat(ids).contains(root().getAttribute("aria-labelledby"));
    assertThat(ids).contains(root().getAttribute("aria-describedby"));
    assertThat(named("script")).isEmpty();
    elements.forEach(Drawn::checkAttributes);
  }

  private static void checkAttributes(Element element) {
    NamedNodeMap attributes = element.getAttributes();
    for (int i = 0; i < attributes.getLength(); i++) {
      String name = attributes.item(i).getNodeName();
      String value = attributes.item(i).getNodeValue();
      assertThat(name).isNotEqualTo("style").doesNotStartWith("on");
      if (name.equals("d")) {
        assertThat(value).matches(COORDINATES);
      }
      if (List.of("x", "y", "cx", "cy", "r", "width", "height").contains(name)) {
        assertThat(value).matches(NUMBER);
      }
    }
  }

  public Element root() {
    return elements.get(0);
  }

  public List<Element> named(String tag) {
    return elements.stream().filter(e -> e.getTagName().equals(tag)).toList();
  }

  public List<Element> withClass(String cssClass) {
    return elements.stream()
        .filter(e -> List.of(e.getAttribute("class").split(" ")).contains(cssClass))
        .toList();
  }

  /** All lettering, titles and the description. */
  public List<String> words() {
    return elements.stream()
        .filter(e -> List.of("text", "title", "desc").contains(e.getTagName()))
        .map(Element::getTextContent)
        .toList();
  }

  /** The spots of a path made of straight lines. */
  public static List<Spot> spots(Element path) {
    List<Double> numbers =
        NUMBER
            .matcher(path.getAttribute("d"))
            .results()
            .map(MatchResult::group)
            .map(Double::valueOf)
            .toList();
    List<Spot> spots = new ArrayList<>();
    for (int i = 0; i + 1 < numbers.size(); i += 2) {
      spots.add(new Spot(numbers.get(i), numbers.get(i + 1)));
    }
    return spots;
  }

  public static double number(Element element, String attribute) {
    return Double.parseDouble(element.getAttribute(attribute));
  }
}
