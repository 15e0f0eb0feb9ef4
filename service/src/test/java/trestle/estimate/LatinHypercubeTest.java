package trestle.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class LatinHypercubeTest {
    @Test
    void eachColumnHasOnePointInEachClass() {
        int points = 64;
        double[][] shares = LatinHypercube.shares(points, 7, 3);
        for (int column = 0; column < 7; column++) {
            int j = column;
            assertThat(IntStream.range(0, points)
                            .map(point -> (int) (shares[point][j] * points))
                            .sorted()
                            .toArray())
                    .isEqualTo(IntStream.range(0, points).toArray());
        }
    }

    @Test
    void theSameSeedGivesTheSamePoints() {
        assertThat(LatinHypercube.normal(64, 5, 11)).isDeepEqualTo(LatinHypercube.normal(64, 5, 11));
        assertThat(LatinHypercube.normal(64, 5, 11)[0]).isNotEqualTo(LatinHypercube.normal(64, 5, 12)[0]);
    }

    @Test
    void theMeanOfEachNormalColumnIsNearNought() {
        double[][] z = LatinHypercube.normal(64, 12, 5);
        for (int j = 0; j < 12; j++) {
            int column = j;
            assertThat(IntStream.range(0, 64)
                            .mapToDouble(i -> z[i][column])
                            .average()
                            .orElseThrow())
                    .isCloseTo(0, within(0.05));
        }
    }
}
