package trestle.endpoint.airframeloads;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.api.model.ApiAirframeLoadsRequest;
import trestle.api.model.ApiGustRule;
import trestle.api.model.ApiLiftDistribution;
import trestle.api.model.ApiLoadLimits;
import trestle.api.model.ApiLoadsGust;
import trestle.api.model.ApiLoadsLanding;
import trestle.api.model.ApiLoadsRestraint;
import trestle.api.model.ApiLoadsSection;
import trestle.api.model.ApiLoadsServo;
import trestle.api.model.ApiLoadsSpeeds;
import trestle.api.model.ApiLoadsSurface;
import trestle.api.model.ApiLoadsWingItem;
import trestle.api.model.ApiWingPanel;
import trestle.endpoint.Reading;
import trestle.endpoint.common.FlightReading;
import trestle.structure.ControlSurface;
import trestle.structure.Gust;
import trestle.structure.HalfWing;
import trestle.structure.Joint;
import trestle.structure.Landing;
import trestle.structure.LaunchPull;
import trestle.structure.LiftDistribution;
import trestle.structure.LoadsTask;
import trestle.structure.Restraint;
import trestle.structure.Spar;
import trestle.structure.TorsionMoments;
import trestle.structure.WingItem;
import trestle.structure.WingPanel;
import trestle.units.Angle;
import trestle.units.Length;
import trestle.units.Mass;
import trestle.units.Pressure;
import trestle.units.Share;

/** Reads a question of loads. */
final class LoadsReading {
    private static final String NOT_GIVEN = "the request gives none; common practice, no source";

    private final ApiAirframeLoadsRequest request;
    private final Reading reading;
    private final HalfWing wing;
    private final SparReading spars;

    LoadsReading(ApiAirframeLoadsRequest request, Reading reading) {
        this.request = request;
        this.reading = reading;
        this.wing = new HalfWing(
                request.wing().panels().stream().map(LoadsReading::panel).toList());
        this.spars = new SparReading(request, Length.mmFromM(wing.halfSpanM()), reading);
    }

    private static WingPanel panel(ApiWingPanel panel) {
        double dihedral = Angle.radFromDeg(Reading.or(panel.dihedralDeg(), ApiWingPanel.DIHEDRAL_DEG));
        return new WingPanel(
                Length.mFromMm(panel.rootChordMm()),
                Length.mFromMm(panel.tipChordMm()),
                Length.mFromMm(panel.spanMm()) * Math.cos(dihedral),
                Length.mFromMm(Reading.or(panel.sweepMm(), ApiWingPanel.SWEEP_MM)),
                Mass.kgFromG(Reading.or(panel.massG(), 0.0)));
    }

    LoadsTask task() {
        Optional<List<Spar>> read = Reading.each(request.spars(), ApiAirframeLoadsRequest.SPARS.at(""), spars::spar);
        Optional<List<Joint>> joints =
                Reading.each(Reading.listed(request.joints()), ApiAirframeLoadsRequest.JOINTS.at(""), spars::joint);
        Optional<List<WingItem>> items = Reading.each(
                Reading.listed(request.wingItems()), ApiAirframeLoadsRequest.WING_ITEMS.at(""), this::item);
        Optional<LaunchPull> launch =
                PullReading.launch(request.launch(), Mass.kgFromG(request.takeoffMassG()), reading);
        Optional<List<ControlSurface>> surfaces = Reading.each(
                Reading.listed(request.surfaces()), ApiAirframeLoadsRequest.SURFACES.at(""), this::surface);
        ApiLoadLimits limits = request.loadLimits();
        Double positive = limits == null ? null : limits.positiveLoadFactor();
        Double proof = limits == null ? null : limits.proofLoadFactor();
        double negative = reading.orDefault(
                limits == null ? null : limits.negativeLoadFactor(),
                ApiLoadLimits.NEGATIVE_LOAD_FACTOR,
                ApiAirframeLoadsRequest.LOAD_LIMITS.at(""),
                "CS-VLA 337 for light aeroplanes, which binds no aircraft of this kind");
        limits(positive, proof, negative);
        speeds();
        masses();
        reading.refuseContradictions();
        ApiLoadsSpeeds speeds = request.speeds();
        ApiLoadsGust gust = request.gust();
        return new LoadsTask(
                Mass.kgFromG(request.takeoffMassG()),
                wing,
                LiftDistribution.valueOf(Reading.or(request.liftDistribution(), ApiLiftDistribution.SCHRENK)
                        .name()),
                reading.orDefault(
                        request.maxLiftCoefficient(), ApiAirframeLoadsRequest.MAX_LIFT_COEFFICIENT, "", NOT_GIVEN),
                reading.orDefault(
                        request.minLiftCoefficient(), ApiAirframeLoadsRequest.MIN_LIFT_COEFFICIENT, "", NOT_GIVEN),
                Reading.or(request.liftSlopePerRad(), wing.liftSlopePerRad()),
                FlightReading.conditions(request.conditions(), ApiAirframeLoadsRequest.CONDITIONS.at(""), reading)
                        .air()
                        .densityKgPerM3(),
                speeds.cruiseAirspeedMPerS(),
                Reading.optional(speeds.topAirspeedMPerS()),
                neverExceed(),
                Reading.optional(speeds.diveAirspeedMPerS()),
                Reading.optional(positive),
                negative,
                Reading.optional(proof),
                reading.orDefault(
                        request.factorOfSafety(),
                        ApiAirframeLoadsRequest.FACTOR_OF_SAFETY,
                        "",
                        "light aeroplanes' rules"),
                gust(gust),
                Reading.optional(gust == null ? null : gust.windMPerS()),
                items.orElseThrow(),
                read.orElseThrow(),
                joints.orElseThrow(),
                Reading.optional(request.foamModulusMpa(), Pressure::paFromMpa),
                Reading.optional(request.foamShearModulusMpa(), Pressure::paFromMpa),
                moments(),
                launch,
                Reading.listed(request.restraints()).stream()
                        .map(LoadsReading::restraint)
                        .toList(),
                landing(),
                surfaces.orElseThrow());
    }

    private void limits(Double positive, Double proof, double negative) {
        double greatest = positive != null ? positive : proof != null ? proof : LoadsTask.CONVENTION;
        if (-negative > greatest) {
            reading.fault(
                    ApiLoadLimits.NEGATIVE_LOAD_FACTOR.at(ApiAirframeLoadsRequest.LOAD_LIMITS.at("")),
                    "contradiction",
                    "negative_load_factor is further from 0 than the positive limit of " + greatest
                            + ": spars are judged at the positive one");
        }
    }

    /** Never exceed is 0.9 of the dive speed where only that is stated (14 CFR 23.1505, from memory). */
    private OptionalDouble neverExceed() {
        ApiLoadsSpeeds speeds = request.speeds();
        if (speeds.neverExceedAirspeedMPerS() != null || speeds.diveAirspeedMPerS() == null) {
            return Reading.optional(speeds.neverExceedAirspeedMPerS());
        }
        double taken = 0.9 * speeds.diveAirspeedMPerS();
        reading.assume(
                ApiLoadsSpeeds.NEVER_EXCEED_AIRSPEED_M_PER_S.at(ApiAirframeLoadsRequest.SPEEDS.at("")),
                String.format(java.util.Locale.ROOT, "%.1f m/s", taken),
                "0.9 of the stated dive speed; 14 CFR 23.1505, from memory");
        return OptionalDouble.of(taken);
    }

    private void speeds() {
        ApiLoadsSpeeds speeds = request.speeds();
        String at = ApiAirframeLoadsRequest.SPEEDS.at("");
        if (speeds.neverExceedAirspeedMPerS() != null) {
            reading.notBelow(
                    at,
                    ApiLoadsSpeeds.DIVE_AIRSPEED_M_PER_S.name(),
                    speeds.diveAirspeedMPerS(),
                    ApiLoadsSpeeds.NEVER_EXCEED_AIRSPEED_M_PER_S.name(),
                    speeds.neverExceedAirspeedMPerS());
        }
    }

    private void masses() {
        double items = Reading.listed(request.wingItems()).stream()
                .mapToDouble(i -> i.massG() * Reading.or(i.quantity(), ApiLoadsWingItem.QUANTITY))
                .sum();
        double whole = Mass.gFromKg(wing.massKg()) + 2 * items;
        if (whole > request.takeoffMassG()) {
            reading.fault(
                    ApiAirframeLoadsRequest.TAKEOFF_MASS_G.at(""),
                    "contradiction",
                    String.format(
                            java.util.Locale.ROOT,
                            "the wing and what is in it weigh %.0f g, more than the whole aircraft",
                            whole));
        }
    }

    private Optional<WingItem> item(ApiLoadsWingItem item, String at) {
        int quantity = Reading.or(item.quantity(), ApiLoadsWingItem.QUANTITY);
        return spars.inside(item.lateralMm(), ApiLoadsWingItem.LATERAL_MM.at(at))
                ? Optional.of(new WingItem(
                        item.name(),
                        quantity * Mass.kgFromG(item.massG()),
                        Math.min(wing.halfSpanM(), Length.mFromMm(item.lateralMm()))))
                : Optional.empty();
    }

    private double gust(ApiLoadsGust gust) {
        if (gust != null && gust.derivedGustMPerS() != null) {
            return gust.derivedGustMPerS();
        }
        String at = ApiLoadsGust.DERIVED_GUST_M_PER_S.at(ApiAirframeLoadsRequest.GUST.at(""));
        boolean scaled = gust == null || Reading.or(gust.rule(), ApiGustRule.SCALED) == ApiGustRule.SCALED;
        double taken = scaled ? Gust.scaledMPerS(wing.meanChordM()) : Gust.REGULATION_M_PER_S;
        reading.assume(
                at,
                String.format(java.util.Locale.ROOT, "%.1f m/s", taken),
                scaled
                        ? "15.24 m/s of CS-VLA 333 scaled to the chord after 14 CFR 25.341, exponent from memory: an"
                                + " extrapolation"
                        : "CS-VLA 333");
        return taken;
    }

    private TorsionMoments moments() {
        ApiLoadsSection s = request.section();
        String at = ApiAirframeLoadsRequest.SECTION.at("");
        return new TorsionMoments(
                reading.orDefault(
                        s == null ? null : s.momentCoefficient(), ApiLoadsSection.MOMENT_COEFFICIENT, at, NOT_GIVEN),
                Share.fractionFromPercent(reading.orDefault(
                        s == null ? null : s.sparPercentChord(), ApiLoadsSection.SPAR_PERCENT_CHORD, at, NOT_GIVEN)),
                s == null ? 0 : Reading.or(s.aileronDeflectionDeg(), ApiLoadsSection.AILERON_DEFLECTION_DEG),
                s == null ? 0 : Length.mFromMm(Reading.or(s.aileronFromLateralMm(), 0.0)),
                s == null || s.aileronToLateralMm() == null
                        ? wing.halfSpanM()
                        : Length.mFromMm(s.aileronToLateralMm()));
    }

    private static Restraint restraint(ApiLoadsRestraint r) {
        return new Restraint(
                r.name(),
                Mass.kgFromG(r.massG()),
                Reading.optional(r.forwardStrengthN()),
                Reading.optional(r.aftStrengthN()),
                Reading.optional(r.upStrengthN()),
                Reading.optional(r.sideStrengthN()));
    }

    private Optional<Landing> landing() {
        ApiLoadsLanding l = request.landing();
        String at = ApiAirframeLoadsRequest.LANDING.at("");
        return l == null
                ? Optional.empty()
                : Optional.of(new Landing(
                        Reading.optional(l.sinkRateMPerS()),
                        Reading.optional(l.touchdownAirspeedMPerS()),
                        Length.mFromMm(reading.orDefault(
                                l.stoppingDistanceMm(), ApiLoadsLanding.STOPPING_DISTANCE_MM, at, NOT_GIVEN)),
                        reading.orDefault(l.absorberEfficiency(), ApiLoadsLanding.ABSORBER_EFFICIENCY, at, NOT_GIVEN),
                        reading.orDefault(l.liftFraction(), ApiLoadsLanding.LIFT_FRACTION, at, "14 CFR 23.725(b)"),
                        Reading.optional(l.slideDistanceM())));
    }

    private Optional<ControlSurface> surface(ApiLoadsSurface s, String at) {
        if (s.surfaceChordMm() > s.sectionChordMm()) {
            reading.fault(
                    ApiLoadsSurface.SURFACE_CHORD_MM.at(at),
                    "contradiction",
                    "surface_chord_mm is above section_chord_mm, of which it is a part");
            return Optional.empty();
        }
        ApiLoadsServo servo = s.servo();
        return Optional.of(new ControlSurface(
                s.name(),
                Length.mFromMm(s.hingeSpanMm()),
                Length.mFromMm(s.surfaceChordMm()),
                Length.mFromMm(s.sectionChordMm()),
                Angle.radFromDeg(s.deflectionDeg()),
                Angle.radFromDeg(Reading.or(s.angleOfAttackDeg(), ApiLoadsSurface.ANGLE_OF_ATTACK_DEG)),
                airspeed(s, at),
                Reading.or(s.count(), ApiLoadsSurface.COUNT),
                Reading.optional(servo == null ? null : servo.torqueNM()),
                Angle.radFromDeg(
                        servo == null
                                ? ApiLoadsServo.TRAVEL_DEG.fallback()
                                : reading.orDefault(
                                        servo.travelDeg(),
                                        ApiLoadsServo.TRAVEL_DEG,
                                        ApiLoadsSurface.SERVO.at(at),
                                        NOT_GIVEN)),
                Reading.optional(servo == null ? null : servo.stallCurrentA()),
                Reading.optional(servo == null ? null : servo.idleCurrentA())));
    }

    private double airspeed(ApiLoadsSurface s, String at) {
        if (s.airspeedMPerS() != null) {
            return s.airspeedMPerS();
        }
        ApiLoadsSpeeds speeds = request.speeds();
        double taken = Reading.or(
                speeds.neverExceedAirspeedMPerS(), Reading.or(speeds.topAirspeedMPerS(), speeds.cruiseAirspeedMPerS()));
        reading.assume(
                ApiLoadsSurface.AIRSPEED_M_PER_S.at(at),
                String.format(java.util.Locale.ROOT, "%.1f m/s", taken),
                "never exceed, else top, else planned speed");
        return taken;
    }
}
