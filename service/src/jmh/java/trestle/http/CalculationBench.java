package trestle.http;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import trestle.api.model.ApiCalculationName;
import trestle.binding.Binder;
import trestle.binding.Json;
import trestle.catalogue.Catalogue;
import trestle.endpoint.Calculation;
import trestle.endpoint.Certainty;
import trestle.page.Documents;

/**
 * Service time of each calculation on its own example: bytes in, bound, validated, answered, bytes
 * out; without the network and without bands.
 *
 * <p>{@code mvn -q -Pbench -pl service -am verify -DskipTests -Dspotless.check.skip}
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 4, time = 2)
@Fork(1)
public class CalculationBench {
    /** Each calculation of the contract. */
    @Param
    public ApiCalculationName calculation;

    private Calculation<?, ?, ?, ?> asked;
    private byte[] example;

    /** Finds the calculation and its example. */
    @Setup
    public void setUp() {
        asked = Catalogue.named(calculation.value()).orElseThrow();
        example = Documents.onBoard().example(calculation.value()).orElseThrow();
    }

    /**
     * One request.
     *
     * @return the answer as it goes out
     */
    @Benchmark
    public byte[] answer() {
        return answer(asked);
    }

    private <Q, R, W, A> byte[] answer(Calculation<Q, R, W, A> known) {
        return Json.bytes(known.answer(known.done(Binder.bind(example, known.requestType()), Certainty.ESTIMATED)));
    }
}
