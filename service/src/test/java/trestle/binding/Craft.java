package trestle.binding;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonValue;
import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.util.List;

/** A request as the contract's models are made, with a field of every kind and every constraint. */
record Craft(
        @JsonProperty("name") @NotNull @Size(min = 1, max = 8)
        String name,

        @JsonProperty("mass_g") @NotNull @DecimalMin(value = "0", inclusive = false) @DecimalMax("25000")
        Double massG,

        @JsonProperty("span_mm") @DecimalMin("200") @DecimalMax(value = "9000", inclusive = false)
        Double spanMm,

        @JsonProperty("motor_count") @Min(1) @Max(8) Integer motorCount,
        @JsonProperty("tailless") Boolean tailless,
        @JsonProperty("covering") Covering covering,
        @JsonProperty("mark") @Pattern(regexp = "[A-Z]+") String mark,
        @JsonProperty("wing") @Valid Wing wing,
        @JsonProperty("spars") @Size(min = 1, max = 3) List<@NotNull @Valid Spar> spars,
        @JsonProperty("stations_mm") @Size(min = 2) List<@DecimalMin("0") Double> stationsMm) {

    static final String LEAST = "\"name\":\"Heron\",\"mass_g\":1200";

    /** A part with a part of its own kind, as models may hold each other. */
    record Wing(
            @JsonProperty("area_dm2") @NotNull @DecimalMin("1")
            Double areaDm2,

            @JsonProperty("winglet") @Valid Wing winglet) {}

    /** An entry of a list. */
    record Spar(
            @JsonProperty("length_mm") @NotNull @DecimalMin("1")
            Double lengthMm) {}

    /** Some words. */
    enum Covering {
        FILM("film"),
        GLASS_CLOTH("glass_cloth");

        private final String value;

        Covering(String value) {
            this.value = value;
        }

        @JsonValue
        public String value() {
            return value;
        }
    }
}
