package trestle.magnetics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * The one published value of the compass; see reference/openstax-college-physics/README.md. The field of a pair of
 * leads at a distance, which the calculation is about, has closed forms only: {@link CompassClosedFormTest}.
 */
class CompassClearanceReferenceTest {

    /** 100 µT at 5.0 cm is the field of 25 A. */
    @Test
    void currentOfAFieldIsReproduced() {
        assertThat(Conductor.fieldT(25, 0.05)).isCloseTo(1.0e-4, within(5e-7));
    }
}
