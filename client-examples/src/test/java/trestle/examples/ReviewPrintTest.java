package trestle.examples;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import jakarta.validation.ConstraintViolation;
import jakarta.validation.MessageInterpolator;
import jakarta.validation.Validation;
import jakarta.validation.ValidatorFactory;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trestle.api.model.ApiBuildReviewAnswer;

/**
 * What {@code review.py} prints of findings, wires and legs that are known, and what it makes of
 * answers that a healthy service does not give. The numbers are made up; their form is held to the
 * contract.
 */
class ReviewPrintTest {
    private static final String JSON = "application/json";
    private static final String PROBLEM = "application/problem+json";

    @Test
    void thePartsFitTheContract() throws IOException {
        ApiBuildReviewAnswer answer =
                new ObjectMapper().treeToValue(answerWithKnownParts(), ApiBuildReviewAnswer.class);

        assertThat(violations(answer)).isEmpty();
    }

    @Test
    void findingsAreWrappedAndPlaced() throws IOException {
        assertThat(print(answerWithKnownParts()).out()).contains("""
                        Verdict: STOP
                        An aid, not an approval: local rules, makers' data and licensed practice come first.

                        Findings
                          stop       The legs take 385.9 Wh and the pack gives 313.5 Wh above the reserve of 79.2 Wh:
                                     shorten the second leg, or fly it at the airspeed of best range of 13.4 m/s.
                                     at /flight/legs/1
                          attention  The lead is 620 mm long.
                                     at /wiring/0/length_mm
                          note       The mass of 6020 g is 980 g below the limit of 7000 g.
                                     at the document as a whole
                        """);
    }

    @Test
    void checksStandByOutcomeWithTheirMargins() throws IOException {
        assertThat(print(answerWithKnownParts()).out()).contains("""
                        Checks: 2 passed, 1 not passed, 2 not judged
                          Not passed
                            energy for all legs  385.9 Wh  limit 313.5 Wh    (this calculation)
                          Not judged
                            mass on the scales against the list; CG on the scales against the list
                              give /weighing
                          Passed by less than 15 % of the limit
                            take-off mass  6020 g  limit 7000 g  margin 14.0 %  (the request)
                          1 more passed: --checks prints them too
                        """);
    }

    @Test
    void keyFiguresStandWithTheirUnits() throws IOException {
        assertThat(print(answerWithKnownParts()).out()).contains("""
                        Key figures
                          take-off mass          6020  g
                          CG, aft of the datum  538.2  mm
                          wing loading           76.8  g/dm²
                          usable energy         396.0  Wh
                          stall speed            9.87  m/s
                          cruise current         6.60  A
                          best endurance         2.31  h
                        """);
    }

    @Test
    void aRunThatNoGaugeSuitsStandsAmongTheWires() throws IOException {
        assertThat(print(answerWithKnownParts()).out()).contains("""
                        Wires
                          run           gauge     A  peak A  drop %    °C  peak °C  loss W  mass g  fails
                          main lead        14  28.0    42.0    1.80  97.3    126.8    10.7    33.6
                          thin feed  no gauge  30.0       -       -     -        -       -       -
                        """);
    }

    @Test
    void aLegThatThePackDoesNotLastForIsMarked() throws IOException {
        assertThat(print(answerWithKnownParts()).out()).contains("""
                        Legs
                          leg     from min   min   m/s      W     Wh    km  lowest V
                          climb       0.00  1.00  14.0  351.9   5.87  0.59      23.4
                          cruise      1.00  53.0  15.0  145.9  380.0  35.0      23.0  NOT COMPLETED
                          390.3 Wh available, 78.1 Wh kept as reserve, 385.9 Wh for the legs, 72.4 Wh MISSING to keep the reserve
                        """);
    }

    @ParameterizedTest
    @CsvSource({"fit, 0", "attention, 1", "stop, 2"})
    void theExitCodeIsTheVerdict(String verdict, int exitCode) throws IOException {
        assertThat(print(answerWithKnownParts().put("verdict", verdict)).exitCode())
                .isEqualTo(exitCode);
    }

    @Test
    void anAircraftWithoutFindingsWiresAndLegsIsPrintedToo() throws IOException {
        ObjectNode answer = answerWithKnownParts();
        answer.putArray("findings");
        answer.putArray("wire_sizing");
        ((ObjectNode) answer.at("/endurance/energy")).putArray("legs");

        Command.Outcome outcome = print(answer);

        assertThat(outcome.err()).isEmpty();
        assertThat(outcome.out()).contains("Findings\n  none\n", "Wires\n  none\n", "Legs\n  none asked\n");
    }

    @Test
    void aBusyServiceIsNotTheFaultOfTheDocument() {
        String busy = "{\"type\":\"/problems/busy\",\"title\":\"Too much work\",\"status\":503}";

        Command.Outcome outcome = ask(503, PROBLEM, busy);

        assertThat(outcome.exitCode()).isEqualTo(4);
        assertThat(outcome.err()).startsWith("Too much work (503, http://127.0.0.1:");
    }

    @ParameterizedTest
    @CsvSource({"404, <html>not here</html>", "200, <html>hello</html>", "200, []", "200, '{}'"})
    void anotherServerIsNotTakenForTrestle(int status, String body) {
        Command.Outcome outcome = ask(status, "text/html", body);

        assertThat(outcome.exitCode()).isEqualTo(4);
        assertThat(outcome.err().lines()).singleElement().asString().contains("is not Trestle");
    }

    @Test
    void aWrongOptionIsNotMistakenForAStop() {
        Command.Outcome outcome = Python.run("http://127.0.0.1:1", "review.py", "--colour");

        assertThat(outcome.exitCode()).isEqualTo(64);
        assertThat(outcome.err()).contains("--colour");
    }

    private static Command.Outcome print(ObjectNode answer) {
        return ask(200, JSON, answer.toString());
    }

    private static Command.Outcome ask(int status, String mediaType, String body) {
        try (CannedService service = CannedService.answering(status, mediaType, body)) {
            return Python.run(service.url(), "review.py");
        }
    }

    /** A true answer in which what the tests look at is replaced by what they know. */
    private static ObjectNode answerWithKnownParts() throws IOException {
        ObjectNode answer = LiveService.answer("build-review", LiveService.example("build-review"));
        ObjectNode parts;
        try (InputStream in = ReviewPrintTest.class.getResourceAsStream("/review-parts.json")) {
            parts = (ObjectNode) new ObjectMapper().readTree(in);
        }
        ((ObjectNode) answer.path("endurance")).setAll((ObjectNode) parts.remove("endurance"));
        // Known figures rest on given numbers alone.
        answer.remove(List.of("estimates", "bands", "risks"));
        return answer.setAll(parts);
    }

    /** The rules of the contract that the answer breaks; the service's own texts are not needed. */
    private static Set<ConstraintViolation<ApiBuildReviewAnswer>> violations(ApiBuildReviewAnswer answer) {
        try (ValidatorFactory factory = Validation.byDefaultProvider()
                .configure()
                .ignoreXmlConfiguration()
                .messageInterpolator(new PlainMessages())
                .buildValidatorFactory()) {
            return factory.getValidator().validate(answer);
        }
    }

    /** Templates as they are: the default would need an expression language. */
    private static final class PlainMessages implements MessageInterpolator {
        @Override
        public String interpolate(String template, Context context) {
            return template;
        }

        @Override
        public String interpolate(String template, Context context, Locale locale) {
            return template;
        }
    }
}
