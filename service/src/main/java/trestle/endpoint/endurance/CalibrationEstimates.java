package trestle.endpoint.endurance;

import trestle.api.model.ApiCalibration;
import trestle.api.model.ApiCalibrationFit;
import trestle.api.model.ApiEnduranceRequest;
import trestle.endpoint.Estimating;
import trestle.estimate.Estimate;
import trestle.estimate.Spread;
import trestle.units.Share;

/** A calibration at one draw of what its own fit leaves open. */
final class CalibrationEstimates {
    private static final String AT = ApiEnduranceRequest.CALIBRATION.at("");
    private static final String PARASITE = ApiCalibration.PARASITE_POWER_COEFFICIENT.at(AT);
    private static final String INDUCED = ApiCalibration.INDUCED_POWER_COEFFICIENT.at(AT);
    private static final String FROM = "the calibration's own deviation";
    private static final String SOURCE = "the flight that was measured";

    private CalibrationEstimates() {}

    /**
     * The calibration.
     *
     * @param given of the request, or null
     * @param estimating gives the draw
     * @return the same where it says nothing of its fit
     */
    static ApiCalibration calibration(ApiCalibration given, Estimating estimating) {
        if (given == null || given.fit() == null) {
            return given;
        }
        ApiCalibrationFit fit = given.fit();
        double parasite =
                estimating.drawn(PARASITE, spread(given.parasitePowerCoefficient(), fit.parasiteDeviationPercent()));
        Estimate induced = spread(given.inducedPowerCoefficient(), fit.inducedDeviationPercent())
                .movingWith(PARASITE, fit.deviationCorrelationCoefficient());
        return given.toBuilder()
                .parasitePowerCoefficient(parasite)
                .inducedPowerCoefficient(estimating.drawn(INDUCED, induced))
                .build();
    }

    /** A power coefficient is above 0, so its scatter is taken as one of ratios. */
    private static Estimate spread(double coefficient, double deviationPercent) {
        return Estimate.of(
                Spread.logNormal(coefficient, Math.log1p(Share.fractionFromPercent(deviationPercent))), FROM, SOURCE);
    }
}
