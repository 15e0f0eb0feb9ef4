package trestle.endpoint.reference;

import java.util.List;
import java.util.stream.DoubleStream;
import trestle.api.model.ApiAtmosphereRow;
import trestle.atmosphere.AirState;
import trestle.atmosphere.StandardAtmosphere;
import trestle.endpoint.ReferenceTable;
import trestle.units.Pressure;
import trestle.units.Temperature;

/** The table {@code standard-atmosphere}. */
public final class StandardAtmosphereTable implements ReferenceTable {
    /** Straight lines between rows stay within 0.01 % of the density. */
    private static final double STEP_M = 100;

    @Override
    public String name() {
        return "standard-atmosphere";
    }

    @Override
    public String summary() {
        return "U.S. Standard Atmosphere 1976 over geopotential altitude";
    }

    @Override
    public List<ApiAtmosphereRow> rows() {
        return DoubleStream.iterate(
                        StandardAtmosphere.LOWEST_ALTITUDE_M,
                        altitudeM -> altitudeM <= StandardAtmosphere.HIGHEST_ALTITUDE_M,
                        altitudeM -> altitudeM + STEP_M)
                .mapToObj(StandardAtmosphereTable::row)
                .toList();
    }

    private static ApiAtmosphereRow row(double altitudeM) {
        AirState air = StandardAtmosphere.at(altitudeM);
        return ApiAtmosphereRow.builder()
                .altitudeM(altitudeM)
                .temperatureC(Temperature.cFromK(air.temperatureK()))
                .pressureHpa(Pressure.hpaFromPa(air.pressurePa()))
                .airDensityKgPerM3(air.densityKgPerM3())
                .speedOfSoundMPerS(air.speedOfSoundMPerS())
                .viscosityPaS(air.viscosityPaS())
                .build();
    }
}
