package trestle.battery;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Counting by voltage, common practice. */
class CellCountTest {
    @Test
    void aFullPackIsCountedRight() {
        assertThat(CellCount.of(50.4, 4.2)).isEqualTo(12);
        assertThat(CellCount.of(50.4, 4.4)).isEqualTo(12);
    }

    @Test
    void aHalfFullPackIsCountedTooLow() {
        assertThat(CellCount.of(12 * 3.7, 4.2)).isEqualTo(11);
    }

    @Test
    void aFullIronPhosphatePackIsCountedTooLow() {
        assertThat(CellCount.of(12 * 3.4, 4.2)).isEqualTo(10);
    }
}
