package trestle.contract;

import static org.hamcrest.Matchers.anyOf;
import static org.hamcrest.Matchers.is;
import static org.hamcrest.Matchers.lessThan;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trestle.catalogue.Catalogue;
import trestle.endpoint.Calculation;
import trestle.http.LiveService;

/** A sample of {@link RangeSweepTest} through the front door, with its workings. */
class RangeSweepHttpTest {
    private static final int SAMPLES = 8;

    /** Far above any answer on a busy machine. */
    private static final long LONGEST_MS = 10_000;

    static List<String> calculations() {
        return Catalogue.calculations().stream().map(Calculation::name).toList();
    }

    @ParameterizedTest
    @MethodSource("calculations")
    void anEndOfARangeIsAnsweredOrRefusedForWhatStandsBesideIt(String calculation) {
        JsonNode schema = Contract.request(calculation);
        JsonNode example = Contract.example(calculation);
        List<End> ends = End.of(example, schema);
        for (int i = 0; i < SAMPLES; i++) {
            End end = ends.get(i * ends.size() / SAMPLES);
            LiveService.open()
                    .queryParam("workings", "true")
                    .queryParam("bands", "false")
                    .body(Trees.with(example, schema, end.at(), end.value()).toString())
                    .post("/v1/" + calculation)
                    .then()
                    .time(lessThan(LONGEST_MS))
                    .statusCode(anyOf(is(200), is(400), is(422)));
        }
    }
}
