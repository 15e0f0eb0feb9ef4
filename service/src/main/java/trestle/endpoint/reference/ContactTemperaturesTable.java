package trestle.endpoint.reference;

import java.util.Arrays;
import java.util.List;
import trestle.api.model.ApiContactMaterial;
import trestle.api.model.ApiContactSide;
import trestle.api.model.ApiContactTemperatureRow;
import trestle.endpoint.ReferenceTable;
import trestle.units.Temperature;
import trestle.wiring.ContactMaterial;

/** The table {@code contact-temperatures}. */
public final class ContactTemperaturesTable implements ReferenceTable {
    @Override
    public String name() {
        return "contact-temperatures";
    }

    @Override
    public String summary() {
        return "What a wire may touch and the temperature that it stands for years: polystyrene after ASTM C578, plastics"
                + " after tables of continuous use, skin after ISO 13732-1 (from memory), the rest from memory";
    }

    @Override
    public List<ApiContactTemperatureRow> rows() {
        return Arrays.stream(ContactMaterial.values())
                .map(ContactTemperaturesTable::row)
                .toList();
    }

    private static ApiContactTemperatureRow row(ContactMaterial material) {
        return ApiContactTemperatureRow.builder()
                .material(ApiContactMaterial.valueOf(material.name()))
                .limitC(Temperature.cFromK(material.limitK()))
                .side(ApiContactSide.valueOf(material.side().name()))
                .effect(material.effect())
                .source(material.source())
                .build();
    }
}
