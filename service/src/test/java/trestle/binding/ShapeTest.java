package trestle.binding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;

import java.util.List;
import org.junit.jupiter.api.Test;

class ShapeTest {
    private final Shape shape = Shape.read(Craft.class);

    @Test
    void everyFieldHasItsKindInTheOrderOfTheContract() {
        assertThat(shape.fields())
                .containsExactly(
                        entry("name", Shape.Plain.TEXT),
                        entry("mass_g", Shape.Plain.NUMBER),
                        entry("span_mm", Shape.Plain.NUMBER),
                        entry("motor_count", Shape.Plain.INTEGER),
                        entry("tailless", Shape.Plain.BOOLEAN),
                        entry("covering", new Shape.Choice(List.of("film", "glass_cloth"))),
                        entry("mark", Shape.Plain.TEXT),
                        entry("wing", new Shape.Nested(Craft.Wing.class)),
                        entry("spars", new Shape.Listed(new Shape.Nested(Craft.Spar.class), 3)),
                        entry("stations_mm", new Shape.Listed(Shape.Plain.NUMBER, Integer.MAX_VALUE)));
    }

    @Test
    void everyNameInJavaHasItsNameOnTheWire() {
        assertThat(shape.wireNames()).hasSize(10).contains(entry("massG", "mass_g"), entry("name", "name"));
    }

    @Test
    void aShapeIsWorkedOutOnce() {
        assertThat(Shape.of(Craft.class)).isSameAs(Shape.of(Craft.class)).isEqualTo(shape);
    }
}
