package trestle.wiring;

import trestle.units.Temperature;

/**
 * A line of the reference table of conductors.
 *
 * @param gauge system, name, copper area, resistance of the stranded conductor at 20 °C
 * @param solidDiameterM diameter of a solid conductor of that area, m
 * @param conductorDiameterM diameter round the strands, m
 * @param solidResistancePerMOhm resistance of a solid conductor of that area at 20 °C, Ω/m
 * @param copperKgPerM mass of the copper, kg/m
 * @param fusingCurrentA current that in time melts the bare wire (Preece), A; not a rating
 * @param oneSecondFusingCurrentA current that melts it in one second from 25 °C (Onderdonk), A; not
 *     a rating
 */
public record GaugeRow(
        Gauge gauge,
        double solidDiameterM,
        double conductorDiameterM,
        double solidResistancePerMOhm,
        double copperKgPerM,
        double fusingCurrentA,
        double oneSecondFusingCurrentA) {
    private static final double ROOM_C = 25;

    static GaugeRow of(Gauge gauge) {
        return new GaugeRow(
                gauge,
                gauge.solidDiameterM(),
                gauge.conductorDiameterM(),
                Copper.resistancePerMOhm(gauge.areaM2()),
                gauge.areaM2() * Copper.DENSITY_KG_PER_M3,
                Fusing.preeceCurrentA(gauge.solidDiameterM()),
                Fusing.onderdonkCurrentA(gauge.areaM2(), ROOM_C, Temperature.cFromK(Copper.MELTING_POINT_K), 1));
    }
}
