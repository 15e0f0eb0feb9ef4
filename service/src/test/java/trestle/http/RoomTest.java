package trestle.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

/** Room for requests in memory. */
class RoomTest {
    private static final long HEAP = 100 << 20;

    @Test
    void itIsTakenBySizeAndGivenBack() {
        Room room = new Room(HEAP);
        Room.Taken half = room.forRequest(HEAP / 200);
        assertThat(room.taken()).isBetween(0.45, 0.55);
        half.giveBack();
        assertThat(room.taken()).isZero();
    }

    @Test
    void whatDoesNotFitBesideOthersIsRefusedAndSmallOnesStillFit() {
        Room room = new Room(HEAP);
        room.forRequest(HEAP * 9 / 1000);
        assertThatThrownBy(() -> room.forRequest(HEAP / 200))
                .isInstanceOf(Denial.class)
                .hasMessageContaining("memory");
        room.forRequest(2_000).giveBack();
        assertThat(room.taken()).isBetween(0.85, 0.95);
    }

    /** Else a request of the size that is promised could never be answered on a small machine. */
    @Test
    void oneThatIsMoreThanAllIsAnsweredAlone() {
        Room room = new Room(HEAP);
        Room.Taken all = room.forRequest(HEAP);
        assertThat(room.taken()).isEqualTo(1);
        assertThatThrownBy(() -> room.forRequest(1)).isInstanceOf(Denial.class);
        all.giveBack();
        assertThat(room.taken()).isZero();
    }
}
