package trestle.binding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trestle.catalogue.Catalogue;
import trestle.endpoint.Calculation;

class AnswerShapeTest {
    static List<String> calculations() {
        return Catalogue.calculations().stream().map(Calculation::name).toList();
    }

    @Test
    void aColumnStandsForEachPlainValueOutsideOfListsAndNoModelIsEnteredTwice() {
        assertThat(AnswerShape.read(Craft.class))
                .extracting(FieldPath::dotted)
                .containsExactly(
                        "name", "mass_g", "span_mm", "motor_count", "tailless", "covering", "mark", "wing.area_dm2");
        assertThat(AnswerShape.columns(Craft.class))
                .isSameAs(AnswerShape.columns(Craft.class))
                .isEqualTo(AnswerShape.read(Craft.class));
    }

    @ParameterizedTest
    @MethodSource("calculations")
    void theModelOfAnAnswerIsGenerated(String name) {
        var calculation = Catalogue.calculations().stream()
                .filter(c -> c.name().equals(name))
                .findFirst()
                .orElseThrow();
        assertThat(calculation.answerType().getPackageName()).isEqualTo("trestle.api.model");
        assertThat(calculation.answerType()).isRecord();
    }
}
