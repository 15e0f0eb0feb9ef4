package trestle.wiring;

import trestle.atmosphere.AirState;
import trestle.atmosphere.StandardAtmosphere;
import trestle.finding.Chain;
import trestle.units.Length;
import trestle.units.Temperature;

/**
 * The heat balance of one conductor at its solution, term by term.
 *
 * @param chain where to write; it knows {@code d} and {@code D}
 * @param task what was asked
 * @param wire the wire
 * @param path the way of its heat
 * @param steady the solution
 */
record HeatWorkings(Chain chain, WireTask task, Wire wire, HeatPath path, SteadyState steady) {
    static final String BALANCE =
            "F. Incropera, D. DeWitt, Fundamentals of Heat and Mass Transfer: cylinder, conduction,"
                    + " radiation (from memory)";
    private static final String CONVECTION =
            "S. Churchill, H. Chu, Int. J. Heat Mass Transfer 18 (1975), 1049 (from memory)";
    private static final String AIR = "U.S. Standard Atmosphere, 1976, equations 42, 51, 53 (from memory)";

    void write() {
        resistances();
        chain.given("T_a", "air, or outside of the foam", path.sinkK(), "K");
        double riseK = steady.surfaceK() - path.sinkK();
        chain.found(
                "dT",
                "surface over air",
                riseK,
                "K",
                "bracketed root of heat made = heat given off, with q_made below",
                BALANCE);
        chain.step("T_s", "surface", steady.surfaceK(), "K", "T_a+dT", Chain.ARITHMETIC);
        double surfaceC = Temperature.cFromK(steady.surfaceK());
        chain.step("t_s", "surface, in the unit of the answer", surfaceC, "°C", "T_s-273.15", Chain.ARITHMETIC);
        if (task.surroundings().enclosure() == Enclosure.FOAM_CHANNEL) {
            foam();
        } else {
            convection(riseK);
            radiation();
        }
        chain.step(
                "T_c",
                "copper temperature",
                Temperature.cFromK(steady.conductorK()),
                "°C",
                "T_s+q*R_i-273.15",
                BALANCE);
    }

    private void resistances() {
        double conductivity = wire.insulation().material().conductivityWPerMK();
        double count = task.effectiveSurroundings().bundledConductors();
        String table = "IEC 60287-2-1 (secondary table), or typical of the material";
        chain.given("k_i", "conductivity of the insulation", conductivity, "W/(m K)", table);
        chain.given("N", "loaded conductors in the bundle", count, "1");
        String cylinder = "centre of an evenly heated cylinder; the 0.2 W/(m K) meets FAA" + " AC 43.13-1B page 11-27";
        chain.step(
                "R_i",
                "thermal resistance from copper to surface",
                path.innerResistanceKMPerW(),
                "K m/W",
                "ln(D/d)/(2*pi*k_i)+(N-1)/(4*pi*" + Chain.number(HeatPath.BUNDLE_CONDUCTIVITY_W_PER_M_K) + ")",
                BALANCE + "; " + cylinder);
        String envelope = Chain.number(HeatPath.BUNDLE_ENVELOPE_RATIO) + "*sqrt(N)*D";
        chain.step(
                "D_s",
                count > 1 ? "surface of the bundle" : "surface of the wire",
                surfaceMm(),
                "mm",
                count > 1 ? envelope : "D",
                "common practice, no source");
    }

    private double surfaceMm() {
        double count = task.effectiveSurroundings().bundledConductors();
        double outerMm = Length.mmFromM(wire.outerDiameterM());
        return count > 1 ? HeatPath.BUNDLE_ENVELOPE_RATIO * Math.sqrt(count) * outerMm : outerMm;
    }

    private void foam() {
        chain.given("h", "foam wall", Length.mmFromM(task.surroundings().foamWallM()), "mm");
        chain.step(
                "q",
                "heat through the foam, one conductor's share",
                path.heatWPerM(steady.surfaceK()),
                "W/m",
                "2*pi*" + Chain.number(HeatPath.FOAM_CONDUCTIVITY_W_PER_M_K) + "/ln(1+2*h/D_s)*dT/N",
                BALANCE);
    }

    private void convection(double riseK) {
        double filmK = (steady.surfaceK() + path.sinkK()) / 2;
        double pressurePa = StandardAtmosphere.pressurePa(task.surroundings().altitudeM());
        AirState film = new AirState(filmK, pressurePa);
        double conductivity = NaturalConvection.airConductivityWPerMK(filmK);
        double viscosity = film.viscosityPaS();
        double prandtl = viscosity * NaturalConvection.AIR_SPECIFIC_HEAT_J_PER_KG_K / conductivity;
        double kinematic = viscosity / film.densityKgPerM3();
        double diameterM = Length.mFromMm(surfaceMm());
        double rayleigh = StandardAtmosphere.GRAVITY_M_PER_S2
                * Math.max(0, riseK)
                / filmK
                * Math.pow(diameterM, 3)
                * prandtl
                / (kinematic * kinematic);
        double convected = NaturalConvection.heatWPerM(steady.surfaceK(), path.sinkK(), diameterM, pressurePa);
        chain.given("p", "air pressure", pressurePa, "Pa", AIR + ", at the request's altitude");
        chain.step("T_f", "film temperature", filmK, "K", "(T_s+T_a)/2", CONVECTION);
        chain.step(
                "k_a",
                "conductivity of the air",
                conductivity,
                "W/(m K)",
                "2.64638e-3*T_f^1.5/(T_f+245.4*10^(-12/T_f))",
                AIR);
        chain.step("mu", "viscosity", viscosity, "Pa s", "1.458e-6*T_f^1.5/(T_f+110.4)", AIR);
        double density = film.densityKgPerM3();
        chain.step("rho", "density", density, "kg/m³", "p*28.9644/(8314.32*T_f)", AIR);
        chain.step("Pr", "Prandtl number", prandtl, "1", "mu*1004.7/k_a", CONVECTION);
        chain.step(
                "Ra", "Rayleigh number", rayleigh, "1", "9.80665*max(0,dT)/T_f*(D_s/1000)^3*Pr/(mu/rho)^2", CONVECTION);
        chain.step(
                "q_c",
                "heat by convection, Nu = (...)^2 in pi k Nu dT",
                convected,
                "W/m",
                "pi*k_a*(0.60+0.387*Ra^(1/6)/(1+(0.559/Pr)^(9/16))^(8/27))^2*dT",
                CONVECTION);
    }

    private void radiation() {
        double riseK = steady.surfaceK() - path.sinkK();
        double sumK = steady.surfaceK() + path.sinkK();
        double squaresK2 = steady.surfaceK() * steady.surfaceK() + path.sinkK() * path.sinkK();
        double radiated = HeatPath.EMISSIVITY
                * HeatPath.RADIATION_W_PER_M2_K4
                * Math.PI
                * Length.mFromMm(surfaceMm())
                * riseK
                * sumK
                * squaresK2;
        chain.step(
                "q_r",
                "heat by radiation, T_s^4-T_a^4 in factors",
                radiated,
                "W/m",
                Chain.number(HeatPath.EMISSIVITY) + "*5.670374419e-8*pi*D_s/1000*dT*(T_s+T_a)*(T_s^2+T_a^2)",
                BALANCE);
        chain.step(
                "q",
                "heat given off, one conductor's share",
                path.heatWPerM(steady.surfaceK()),
                "W/m",
                "(q_c+q_r)/N",
                BALANCE);
    }
}
