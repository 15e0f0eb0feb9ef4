package trestle.flight;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.atmosphere.AirState;
import trestle.atmosphere.StandardAtmosphere;

/** A mapping aircraft of 3 m span to vary in tests. */
record TestAircraft(
        Airframe airframe,
        PowerSource power,
        EnergyStore store,
        AirState air,
        double headwindMPerS,
        double reserveFraction,
        OptionalDouble airspeedMPerS,
        List<Leg> legs,
        Optional<CarriedPack> pack) {

    static final double WATT_HOUR = 3600;

    /** 8 kg, 3 m, 400 Wh, drag and efficiencies as such aircraft have; headwind 0, reserve 20 %. */
    static TestAircraft mapper() {
        Airframe airframe = new Airframe(8, 0.9, 3, 1.3);
        return new TestAircraft(
                airframe,
                new PolarPower(
                        DragPolar.of(0.03, 0.8, airframe.aspectRatio()),
                        PropulsiveEfficiency.constant(0.65, 0.85, 0.95),
                        12),
                new FixedEnergy(400 * WATT_HOUR),
                StandardAtmosphere.at(0),
                0,
                0.2,
                OptionalDouble.empty(),
                List.of(),
                Optional.empty());
    }

    EnduranceResult result() {
        return Endurance.of(new EnduranceTask(
                airframe, power, store, air, headwindMPerS, reserveFraction, airspeedMPerS, legs, pack));
    }

    TestAircraft with(Airframe other) {
        return new TestAircraft(other, power, store, air, headwindMPerS, reserveFraction, airspeedMPerS, legs, pack);
    }

    TestAircraft with(PowerSource other) {
        return new TestAircraft(airframe, other, store, air, headwindMPerS, reserveFraction, airspeedMPerS, legs, pack);
    }

    TestAircraft with(EnergyStore other) {
        return new TestAircraft(airframe, power, other, air, headwindMPerS, reserveFraction, airspeedMPerS, legs, pack);
    }

    TestAircraft in(AirState other) {
        return new TestAircraft(
                airframe, power, store, other, headwindMPerS, reserveFraction, airspeedMPerS, legs, pack);
    }

    TestAircraft headwind(double other) {
        return new TestAircraft(airframe, power, store, air, other, reserveFraction, airspeedMPerS, legs, pack);
    }

    TestAircraft reserve(double other) {
        return new TestAircraft(airframe, power, store, air, headwindMPerS, other, airspeedMPerS, legs, pack);
    }

    TestAircraft at(double airspeed) {
        return new TestAircraft(
                airframe, power, store, air, headwindMPerS, reserveFraction, OptionalDouble.of(airspeed), legs, pack);
    }

    TestAircraft flying(Leg... others) {
        return new TestAircraft(
                airframe, power, store, air, headwindMPerS, reserveFraction, airspeedMPerS, List.of(others), pack);
    }

    TestAircraft with(CarriedPack other) {
        return new TestAircraft(
                airframe, power, store, air, headwindMPerS, reserveFraction, airspeedMPerS, legs, Optional.of(other));
    }
}
