package trestle.flight;

import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.units.Mass;

/** Whether a calibration speaks of this aircraft. */
final class CalibrationChecks {
    /** Beyond this change of mass a calibration speaks of another aircraft: common practice, no source. */
    private static final double MASS_CHANGE = 0.25;

    private CalibrationChecks() {}

    static void judge(Airframe airframe, CalibratedPower calibration, Judge judge) {
        double massG = Mass.gFromKg(airframe.massKg());
        double flownG = Mass.gFromKg(calibration.massKg());
        boolean heavier = massG > flownG;
        double limitG = (heavier ? 1 + MASS_CHANGE : 1 - MASS_CHANGE) * flownG;
        judge.check(
                "calibration-mass",
                "take-off mass against that of the calibration",
                Subject.of(FlightPart.CALIBRATION),
                trial -> (heavier
                                ? trial.of(massG, "g").atMost(limitG, Basis.COMMON_PRACTICE)
                                : trial.of(massG, "g").atLeast(limitG, Basis.COMMON_PRACTICE))
                        .attention(
                                "calibration-mass-far",
                                "The take-off mass of %.0f g is more than 25 %% (common practice) from the %.0f g that the"
                                        + " calibration was flown at: calibrate at this mass.",
                                massG,
                                flownG));
    }
}
