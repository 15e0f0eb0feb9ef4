package trestle.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** How many are worked on at a time, by how long they took. */
class PaceTest {
    private final AtomicLong nowNs = new AtomicLong();
    private final Pace pace = new Pace(nowNs::get);

    private void work(int count, long msEach) {
        pace.paced(count, i -> nowNs.addAndGet(msEach * 1_000_000));
    }

    @Test
    void resultsKeepTheirOrder() {
        assertThat(pace.paced(1000, i -> 3 * i))
                .isEqualTo(IntStream.range(0, 1000).mapToObj(i -> 3 * i).toList());
    }

    @Test
    void quickWorkIsTakenInEverLargerParts() {
        int first = pace.atOnce();
        work(first, 1);
        assertThat(pace.atOnce()).isEqualTo(2 * first);
        for (int i = 0; i < 20; i++) {
            work(pace.atOnce(), 0);
        }
        assertThat(pace.atOnce()).isEqualTo(512);
    }

    @Test
    void slowWorkIsTakenInSmallerParts() {
        for (int i = 0; i < 20; i++) {
            work(pace.atOnce(), 0);
        }
        work(512, 1);
        assertThat(pace.atOnce()).isEqualTo(256);
        for (int i = 0; i < 20; i++) {
            work(4, 1000);
        }
        assertThat(pace.atOnce()).isEqualTo(4);
    }

    @Test
    void aPartThatWasNotFullSaysNothingOfTheNext() {
        work(2, 0);
        assertThat(pace.atOnce()).isEqualTo(4);
    }
}
