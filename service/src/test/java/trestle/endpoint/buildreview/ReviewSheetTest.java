package trestle.endpoint.buildreview;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;
import trestle.api.model.ApiBuildReviewAnswer;
import trestle.api.model.ApiBuildReviewRequest;
import trestle.api.model.ApiCheck;
import trestle.api.model.ApiOutcome;
import trestle.api.model.ApiSeverity;
import trestle.figure.Numbers;
import trestle.finding.Caution;
import trestle.sheet.KeyNumber;

class ReviewSheetTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final BuildReviewEndpoint REVIEW = new BuildReviewEndpoint();
    private static final Path CHROMIUM = Path.of("/usr/bin/chromium");
    private static final Pattern PAGE = Pattern.compile("/Type\\s*/Page\\b");

    /** Ends an element, begins one, and turns the writing round. */
    private static final String HOSTILE = "</td><script>alert('&1')</script>\u202e\"";

    private static final String HARMLESS = "</td><script>alert('&1')</script>\"";

    private static ObjectNode example() throws IOException {
        Path file = Path.of("..", "api-spec", "examples", "build-review", "salt-marsh-sampler.request.json");
        return (ObjectNode) MAPPER.readTree(Files.readString(file)).get("value");
    }

    private static ApiBuildReviewRequest request(JsonNode document) throws IOException {
        return MAPPER.treeToValue(document, ApiBuildReviewRequest.class);
    }

    private static Document read(String html) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setAttribute(XMLConstants.ACCESS_EXTERNAL_DTD, "");
            factory.setAttribute(XMLConstants.ACCESS_EXTERNAL_SCHEMA, "");
            factory.setExpandEntityReferences(false);
            DocumentBuilder builder = factory.newDocumentBuilder();
            builder.setErrorHandler(null);
            return builder.parse(new ByteArrayInputStream(html.getBytes(StandardCharsets.UTF_8)));
        } catch (ParserConfigurationException | SAXException | IOException malformed) {
            throw new AssertionError(malformed + "\n" + html, malformed);
        }
    }

    private static String text(String html) {
        return read(html).getDocumentElement().getTextContent();
    }

    private static int count(Document page, String element) {
        return page.getElementsByTagName(element).getLength();
    }

    @Test
    void theSheetOfTheExampleHoldsSixFiguresAndThreeTables() throws IOException {
        String html = sheet(request(example()));
        Document page = read(html);
        assertThat(html).startsWith("<!DOCTYPE html>\n").doesNotContain("NaN", "Infinity", "null");
        assertThat(count(page, "svg")).isEqualTo(6);
        assertThat(count(page, "table")).isEqualTo(3);
        assertThat(page.getElementsByTagName("h1").item(0).getTextContent())
                .isEqualTo(example().path("name").asText());
    }

    @Test
    void everythingThatTheAnswerSaysStandsOnIt() throws IOException {
        ApiBuildReviewRequest request = request(example());
        ApiBuildReviewAnswer answer = REVIEW.answer(REVIEW.done(request));
        String text = text(sheet(request));
        assertThat(answer.findings())
                .isNotEmpty()
                .allSatisfy(f -> assertThat(text).contains(f.message(), f.at()));
        assertThat(answer.assumptions())
                .isNotEmpty()
                .allSatisfy(a -> assertThat(text).contains(a.assumed(), a.because(), a.at()));
        assertThat(text)
                .contains(answer.cautions())
                .contains(answer.computedBy().models())
                .contains("Trestle " + answer.computedBy().version())
                .contains("Date", "Place", "Signature");
        assertThat(answer.wireSizing()).allSatisfy(run -> assertThat(text).contains(run.name()));
    }

    /** As many as the contract has, all present in the example. */
    @Test
    void everyKeyFigureStandsOnItWithItsUnit() throws IOException {
        ApiBuildReviewRequest request = request(example());
        ApiBuildReviewAnswer answer = REVIEW.answer(REVIEW.done(request));
        List<KeyNumber> numbers = ReviewKeyNumbers.of(answer.keyFigures(), answer.bands());
        assertThat(numbers).hasSize(answer.keyFigures().getClass().getRecordComponents().length);
        String text = text(sheet(request));
        assertThat(numbers).allSatisfy(n -> assertThat(text).contains(n.label() + n.value() + " " + n.unit()));
    }

    @Test
    void namesOfAUserStayText() throws IOException {
        ObjectNode document = example();
        document.remove("compass"); // It names a run that is renamed here.
        document.put("name", HOSTILE);
        ((ObjectNode) document.at("/wiring/0")).put("name", HOSTILE);
        ((ObjectNode) document.at("/items/0")).put("name", HOSTILE);
        ((ObjectNode) document.at("/packs/0")).put("name", HOSTILE);
        String html = sheet(request(document));
        Document page = read(html);
        assertThat(count(page, "script")).isZero();
        assertThat(html).doesNotContain("<script", "\u202e");
        assertThat(page.getElementsByTagName("h1").item(0).getTextContent()).isEqualTo(HARMLESS);
    }

    @Test
    void nothingIsFetched() throws IOException {
        assertThat(sheet(request(example()))).doesNotContain("src=", "href", "url(", "@import", "<script", "<link");
    }

    @Test
    void anAircraftWithoutNameLegsWiresDriveAndLaunchHasASheetToo() throws IOException {
        ObjectNode document = example();
        document.remove(List.of("name", "wiring", "compass", "rails"));
        ((ObjectNode) document.get("flight")).remove(List.of("legs", "launch"));
        document.set(
                "propulsion",
                MAPPER.readTree("{\"efficiency\":{\"propeller\":0.66,\"motor\":0.84," + "\"controller\":0.95}}"));
        String html = sheet(request(document));
        Document page = read(html);
        assertThat(html).doesNotContain("NaN", "null");
        assertThat(count(page, "table")).as("that of the checks").isEqualTo(1);
        assertThat(count(page, "svg")).isEqualTo(3);
        assertThat(text(html)).contains("Unnamed aircraft");
    }

    @Test
    void everyCheckThatWasJudgedStandsOnItWithItsOutcome() throws IOException {
        ApiBuildReviewRequest request = request(example());
        ApiBuildReviewAnswer answer = REVIEW.answer(REVIEW.done(request));
        String html = sheet(request);
        Map<Boolean, List<ApiCheck>> checks =
                answer.checks().stream().collect(Collectors.partitioningBy(ReviewSheetTest::passedWithoutNumber));
        List<ApiCheck> measured = checks.get(false).stream()
                .filter(check -> check.outcome() != ApiOutcome.NOT_JUDGED)
                .toList();
        NodeList rows = rowsOfChecks(read(html));
        assertThat(rows.getLength()).isEqualTo(1 + measured.size());
        for (int i = 0; i < measured.size(); i++) {
            ApiCheck check = measured.get(i);
            assertThat(rows.item(i + 1).getTextContent())
                    .startsWith(check.about())
                    .endsWith(outcome(check));
        }
        assertThat(text(html))
                .contains(checks.get(true).stream()
                        .map(ApiCheck::about)
                        .collect(Collectors.joining("; ", "Passed too, with nothing to measure: ", ".")));
    }

    private static boolean passedWithoutNumber(ApiCheck check) {
        return check.outcome() == ApiOutcome.PASSED && check.value() == null && check.limit() == null;
    }

    @Test
    void computedAgainFromWhatItPrintsItSaysTheSame() throws IOException {
        ApiBuildReviewRequest request = request(example());
        String html = sheet(request);
        String printed = read(html).getElementsByTagName("pre").item(0).getTextContent();
        ApiBuildReviewRequest typed = request((ObjectNode) MAPPER.readTree(printed));
        assertThat(REVIEW.answer(REVIEW.done(typed))).isEqualTo(REVIEW.answer(REVIEW.done(request)));
        assertThat(sheet(typed)).isEqualTo(html);
    }

    @Test
    void whatWasNotJudgedIsNamedWithWhatToGiveAndNeverTicked() throws IOException {
        ObjectNode document = example();
        ((ObjectNode) document.at("/airframe")).remove("limits");
        ApiBuildReviewRequest request = request(document);
        ApiBuildReviewAnswer answer = REVIEW.answer(REVIEW.done(request));
        List<ApiCheck> notJudged = answer.checks().stream()
                .filter(check -> check.outcome() == ApiOutcome.NOT_JUDGED)
                .toList();
        String text = text(sheet(request));
        assertThat(notJudged)
                .isNotEmpty()
                .allSatisfy(check -> assertThat(text).contains(check.about()).contains(check.give()));
        assertThat(text).contains(notJudged.size() + " not judged").doesNotContain("no margin is thin");
    }

    @Test
    void thatItIsNoApprovalIsSaidBeforeTheFindingsAndWhereItIsSigned() throws IOException {
        String text = text(sheet(request(example())));
        assertThat(text.indexOf(Caution.AID)).isBetween(0, text.indexOf("Findings"));
        assertThat(text.lastIndexOf(Caution.AID)).isGreaterThan(text.indexOf("Key figures"));
    }

    /** A check that passed says by how much, where that is a number above 0. */
    private static String outcome(ApiCheck check) {
        return check.outcome() == ApiOutcome.PASSED && check.marginPercent() != null && check.marginPercent() >= 0
                ? Numbers.significant(check.marginPercent(), 3) + " %"
                : check.outcome().name().toLowerCase(Locale.ROOT);
    }

    /** The last table is theirs. */
    private static NodeList rowsOfChecks(Document page) {
        NodeList tables = page.getElementsByTagName("table");
        return ((Element) tables.item(tables.getLength() - 1)).getElementsByTagName("tr");
    }

    @Test
    void findingsAreCounted() throws IOException {
        ApiBuildReviewRequest request = request(example());
        long notes = REVIEW.answer(REVIEW.done(request)).findings().stream()
                .filter(finding -> finding.severity() == ApiSeverity.NOTE)
                .count();
        assertThat(notes).isPositive();
        assertThat(text(sheet(request))).contains(notes + (notes == 1 ? " note" : " notes"));
    }

    @Test
    void theExamplePrintsOnFivePagesAtMost(@TempDir Path folder) throws Exception {
        assumeTrue(Files.isExecutable(CHROMIUM), "needs Chromium");
        Path html = Files.writeString(folder.resolve("sheet.html"), sheet(request(example())));
        Path pdf = folder.resolve("sheet.pdf");
        Process printing = new ProcessBuilder(
                        CHROMIUM.toString(),
                        "--headless=new",
                        "--no-sandbox",
                        "--disable-gpu",
                        "--no-first-run",
                        "--disable-background-networking",
                        "--user-data-dir=" + folder.resolve("profile"),
                        "--no-pdf-header-footer",
                        "--print-to-pdf=" + pdf,
                        html.toUri().toString())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("log").toFile())
                .start();
        assertThat(printing.waitFor(60, TimeUnit.SECONDS)).isTrue();
        String printed = Files.readString(pdf, StandardCharsets.ISO_8859_1);
        assertThat(PAGE.matcher(printed).results().count()).isBetween(3L, 5L);
    }

    private static String sheet(ApiBuildReviewRequest request) {
        return REVIEW.sheet()
                .orElseThrow()
                .apply(REVIEW.done(request), MAPPER.valueToTree(request).toString());
    }
}
