package trestle.endpoint.reference;

import java.util.List;
import java.util.stream.Stream;
import trestle.api.model.ApiMaterialRow;
import trestle.endpoint.ReferenceTable;
import trestle.endpoint.Writing;
import trestle.structure.FoamSocket;
import trestle.structure.Material;
import trestle.structure.Materials;
import trestle.units.Pressure;

/** The table {@code materials}. */
public final class MaterialsTable implements ReferenceTable {
    @Override
    public String name() {
        return "materials";
    }

    @Override
    public String summary() {
        return "Materials of spars and foams under joiners: typical strength, each with its source, and the share that is"
                + " counted on; most from memory, a maker's data sheet goes before all of it";
    }

    @Override
    public List<ApiMaterialRow> rows() {
        return Stream.concat(
                        Materials.all().stream().map(MaterialsTable::row),
                        FoamSocket.all().stream().map(MaterialsTable::foam))
                .toList();
    }

    private static ApiMaterialRow row(Material m) {
        return ApiMaterialRow.builder()
                .name(m.name())
                .kind("spar")
                .modulusMpa(Pressure.mpaFromPa(m.modulusPa()))
                .transverseModulusMpa(Writing.in(m.transverseModulusPa(), Pressure::mpaFromPa))
                .tensionMpa(Pressure.mpaFromPa(m.tensionPa()))
                .yieldMpa(Writing.in(m.yieldPa(), Pressure::mpaFromPa))
                .compressionMpa(Pressure.mpaFromPa(m.compressionPa()))
                .shearMpa(Pressure.mpaFromPa(m.shearPa()))
                .knockdown(m.knockdown())
                .shearKnockdown(m.shearKnockdown())
                .source(m.source())
                .build();
    }

    private static ApiMaterialRow foam(FoamSocket f) {
        return ApiMaterialRow.builder()
                .name(f.name())
                .kind("foam")
                .compressionMpa(Pressure.mpaFromPa(f.crushingPa()))
                .knockdown(FoamSocket.KNOCKDOWN)
                .source(f.source())
                .build();
    }
}
