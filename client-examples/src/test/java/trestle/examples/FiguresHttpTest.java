package trestle.examples;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;
import org.xml.sax.SAXException;

/** The example {@code figures.py} against the live service. */
class FiguresHttpTest {
    private static final String SVG = "http://www.w3.org/2000/svg";

    @TempDir
    private Path folder;

    @Test
    void everyCalculationIsDrawn() throws Exception {
        Command.Outcome outcome = figures();

        assertThat(outcome.err()).isEmpty();
        assertThat(outcome.exitCode()).isZero();
        List<String> files = outcome.out().lines().toList();
        assertThat(files).hasSize(LiveService.calculations().size());
        for (String calculation : LiveService.calculations()) {
            Path file = folder.resolve(calculation + ".svg");
            assertThat(files).contains(file.toString());
            Element figure = drawing(file);
            assertThat(figure.getElementsByTagNameNS(SVG, "title").getLength()).isPositive();
            assertThat(figure.getElementsByTagNameNS(SVG, "text").getLength()).isPositive();
        }
    }

    @Test
    void anOwnRequestIsDrawnInTheColoursAskedFor() throws Exception {
        figures("wire-sizing");
        String example = Files.readString(folder.resolve("wire-sizing.svg"));
        ObjectNode request = LiveService.example("wire-sizing");
        request.put("current_a", 38).put("peak_current_a", 38);
        Path own = Files.writeString(folder.resolve("own.json"), request.toString());

        Command.Outcome outcome = figures("wire-sizing=" + own, "--theme", "dark");

        assertThat(outcome.exitCode()).as(outcome.err()).isZero();
        assertThat(drawing(folder.resolve("wire-sizing.svg")).getAttribute("class"))
                .isEqualTo("trestle-dark");
        assertThat(Files.readString(folder.resolve("wire-sizing.svg")))
                .contains("38 A")
                .isNotEqualTo(example);
    }

    @Test
    void aRequestThatIsRefusedIsToldWhereItIsWrong() throws IOException {
        Path own = Files.writeString(folder.resolve("own.json"), "{\"current_a\": -1}");

        Command.Outcome outcome = figures("wire-sizing=" + own);

        assertThat(outcome.exitCode()).isEqualTo(3);
        assertThat(outcome.err()).contains("\n  /current_a: ", "\n  /length_mm: ");
        assertThat(folder.resolve("wire-sizing.svg")).doesNotExist();
    }

    @Test
    void aCalculationWithoutAFigureIsNamed() throws IOException {
        Path own = Files.writeString(folder.resolve("own.json"), "{}");
        try (CannedService service = CannedService.answering(406, "application/problem+json", "{\"status\": 406}")) {
            Command.Outcome outcome = Python.run(service.url(), "figures.py", "wire-sizing=" + own);

            assertThat(outcome.exitCode()).isZero();
            assertThat(outcome.out()).isEqualTo("wire-sizing has no figure\n");
        }
    }

    @Test
    void aServiceThatIsNotThereIsOneClearLine() throws IOException {
        String url = LiveService.urlOfNobody();

        Command.Outcome outcome = Python.run(url, "figures.py");

        assertThat(outcome.exitCode()).isEqualTo(4);
        assertThat(outcome.err().lines()).singleElement().asString().startsWith("cannot reach Trestle at " + url);
    }

    @Test
    void anotherServerIsNotTakenForTrestle() {
        try (CannedService service = CannedService.answering(200, "text/html", "<html/>")) {
            Command.Outcome outcome = Python.run(service.url(), "figures.py");

            assertThat(outcome.exitCode()).isEqualTo(4);
            assertThat(outcome.err()).contains("is not Trestle");
        }
    }

    private Command.Outcome figures(String... arguments) {
        String[] all = new String[arguments.length + 2];
        all[0] = "--directory";
        all[1] = folder.toString();
        System.arraycopy(arguments, 0, all, 2, arguments.length);
        return Python.run(LiveService.url(), "figures.py", all);
    }

    private static Element drawing(Path file) throws IOException, ParserConfigurationException, SAXException {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        Element root = factory.newDocumentBuilder().parse(file.toFile()).getDocumentElement();
        assertThat(root.getNamespaceURI()).isEqualTo(SVG);
        assertThat(root.getLocalName()).isEqualTo("svg");
        return root;
    }
}
