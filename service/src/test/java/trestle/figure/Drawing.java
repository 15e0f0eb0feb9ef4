package trestle.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/** A figure read back: its elements, and where its texts stand by their estimated width. */
record Drawing(String svg, Element root) {
    /** A text as it is drawn. */
    record Text(String content, Box box) {}

    /** Coordinates are written to a tenth. */
    private static final double ROUNDING = 0.1;

    static Drawing read(String svg) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            DocumentBuilder builder = factory.newDocumentBuilder();
            builder.setErrorHandler(null);
            Document document = builder.parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
            return new Drawing(svg, document.getDocumentElement());
        } catch (ParserConfigurationException | SAXException | IOException malformed) {
            throw new AssertionError(malformed + "\n" + svg, malformed);
        }
    }

    List<Element> elements(String name) {
        NodeList found = root.getElementsByTagName(name);
        return IntStream.range(0, found.getLength())
                .mapToObj(i -> (Element) found.item(i))
                .toList();
    }

    List<Text> texts() {
        return elements("text").stream().map(Drawing::text).toList();
    }

    List<String> words() {
        return texts().stream().map(Text::content).toList();
    }

    private static Text text(Element element) {
        double size = Double.parseDouble(element.getAttribute("font-size"));
        boolean bold = element.hasAttribute("font-weight");
        Font font = Arrays.stream(Font.values())
                .filter(f -> f.size() == size && f.bold() == bold)
                .findFirst()
                .orElseThrow();
        Anchor anchor = Arrays.stream(Anchor.values())
                .filter(a -> a.svgName().equals(element.getAttribute("text-anchor")))
                .findFirst()
                .orElse(Anchor.START);
        String content = element.getTextContent();
        return new Text(
                content,
                new Label(
                                Double.parseDouble(element.getAttribute("x")),
                                Double.parseDouble(element.getAttribute("y")),
                                anchor,
                                font,
                                Style.INK,
                                content)
                        .box());
    }

    /** All that must hold for any figure. */
    Drawing isSound() {
        assertThat(svg).doesNotContain("NaN", "Infinity", "null");
        assertThat(root.getAttribute("role")).isEqualTo("img");
        String[] viewBox = root.getAttribute("viewBox").split(" ");
        Box page = new Box(0, 0, Double.parseDouble(viewBox[2]), Double.parseDouble(viewBox[3]));
        List<Text> texts = texts();
        for (int i = 0; i < texts.size(); i++) {
            Text text = texts.get(i);
            assertThat(page.contains(text.box()))
                    .as("%s lies on the page of %s", text, page)
                    .isTrue();
            for (Text other : texts.subList(i + 1, texts.size())) {
                assertThat(shrunk(text.box()).overlaps(other.box()))
                        .as("%s lies clear of %s", text, other)
                        .isFalse();
            }
        }
        everyPlaceLiesOn(page);
        return this;
    }

    /** No curve runs through a text. */
    void keepsCurvesClearOfTexts() {
        for (Element curve : elements("polyline")) {
            List<Point> places = places(curve);
            for (int i = 1; i < places.size(); i++) {
                for (Text text : texts()) {
                    assertThat(crosses(places.get(i - 1), places.get(i), text.box()))
                            .as("a curve at %s crosses %s", places.get(i), text)
                            .isFalse();
                }
            }
        }
    }

    private void everyPlaceLiesOn(Box page) {
        List<Point> places = new ArrayList<>();
        for (String shape : List.of("polyline", "polygon")) {
            elements(shape).forEach(element -> places.addAll(places(element)));
        }
        elements("line").forEach(line -> {
            places.add(place(line, "x1", "y1"));
            places.add(place(line, "x2", "y2"));
        });
        elements("circle").forEach(circle -> places.add(place(circle, "cx", "cy")));
        for (Point place : places) {
            assertThat(place.x() >= page.left()
                            && place.x() <= page.right()
                            && place.y() >= page.top()
                            && place.y() <= page.bottom())
                    .as("%s lies on the page", place)
                    .isTrue();
        }
    }

    private static Box shrunk(Box box) {
        return new Box(
                box.left() + ROUNDING, box.top() + ROUNDING, box.width() - 2 * ROUNDING, box.height() - 2 * ROUNDING);
    }

    private static boolean crosses(Point from, Point to, Box box) {
        int steps = 1 + (int) Math.ceil(Math.hypot(to.x() - from.x(), to.y() - from.y()));
        return IntStream.rangeClosed(0, steps)
                .mapToDouble(i -> (double) i / steps)
                .anyMatch(way -> {
                    double x = from.x() + way * (to.x() - from.x());
                    double y = from.y() + way * (to.y() - from.y());
                    return box.contains(new Box(x, y, 0, 0));
                });
    }

    private static Point place(Element element, String x, String y) {
        return new Point(Double.parseDouble(element.getAttribute(x)), Double.parseDouble(element.getAttribute(y)));
    }

    private static List<Point> places(Element curve) {
        return Arrays.stream(curve.getAttribute("points").split(" "))
                .map(pair -> pair.split(","))
                .map(pair -> new Point(Double.parseDouble(pair[0]), Double.parseDouble(pair[1])))
                .toList();
    }
}
