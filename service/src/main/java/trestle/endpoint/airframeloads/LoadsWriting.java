package trestle.endpoint.airframeloads;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import trestle.api.model.ApiAirframeLoadsAnswer;
import trestle.api.model.ApiEnvelopePoint;
import trestle.api.model.ApiFailureMode;
import trestle.api.model.ApiGustLoads;
import trestle.api.model.ApiJointLoads;
import trestle.api.model.ApiJudgement;
import trestle.api.model.ApiLandingLoads;
import trestle.api.model.ApiLaunchPull;
import trestle.api.model.ApiLimitSource;
import trestle.api.model.ApiNotJudgedItem;
import trestle.api.model.ApiProofTest;
import trestle.api.model.ApiRestraintLoads;
import trestle.api.model.ApiStationLoads;
import trestle.api.model.ApiSurfaceLoads;
import trestle.api.model.ApiTipDeflection;
import trestle.api.model.ApiWeakestPart;
import trestle.endpoint.Writing;
import trestle.structure.EnvelopePoint;
import trestle.structure.JointLoad;
import trestle.structure.LoadsResult;
import trestle.structure.LoadsTask;
import trestle.structure.RestraintLoad;
import trestle.structure.StationLoad;
import trestle.structure.Stress;
import trestle.structure.SurfaceLoad;
import trestle.structure.Weakest;
import trestle.units.Length;
import trestle.units.Pressure;
import trestle.units.Share;

/** Writes loads into their answer. */
final class LoadsWriting {
    private LoadsWriting() {}

    static ApiAirframeLoadsAnswer write(LoadsTask task, LoadsResult r, ApiJudgement judgement) {
        return ApiAirframeLoadsAnswer.builder()
                .judgement(judgement)
                .stallSpeedMPerS(r.stallMPerS())
                .manoeuvreSpeedMPerS(r.manoeuvreMPerS())
                .limitLoadFactor(r.limitLoadFactor())
                .limitLoadFactorFrom(ApiLimitSource.valueOf(r.limitFrom().name()))
                .designLoadFactor(task.designLoadFactor())
                .envelope(r.envelope().stream().map(LoadsWriting::point).toList())
                .gust(gust(task, r))
                .stations(r.stations().stream().map(LoadsWriting::station).toList())
                .joints(r.joints().stream().map(LoadsWriting::joint).toList())
                .weakest(r.weakest().map(LoadsWriting::weakest).orElse(null))
                .tipDeflection(
                        r.tipOneGM().isEmpty()
                                ? null
                                : ApiTipDeflection.builder()
                                        .oneGMm(Length.mmFromM(r.tipOneGM().getAsDouble()))
                                        .atLimitMm(Length.mmFromM(r.tipOneGM().getAsDouble()) * r.limitLoadFactor())
                                        .build())
                .proofTest(ApiProofTest.builder()
                        .loadFactor(r.proof().loadFactor())
                        .halfWingLoadN(r.proof().halfWingLoadN())
                        .atLateralMm(Length.mmFromM(r.proof().lateralM()))
                        .rootBendingNM(r.proof().rootBendingNm())
                        .build())
                .launch(task.launch()
                        .map(l -> ApiLaunchPull.builder()
                                .meanLoadFactor(l.meanLoadFactor())
                                .peakLoadFactor(l.peakLoadFactor())
                                .hookForceN(Writing.boxed(l.hookForceN()))
                                .build())
                        .orElse(null))
                .landing(r.landing()
                        .map(l -> ApiLandingLoads.builder()
                                .sinkRateMPerS(l.sinkMPerS())
                                .verticalEnergyJ(l.energyJ())
                                .loadFactor(l.loadFactor())
                                .forwardLoadFactor(Writing.boxed(l.forwardLoadFactor()))
                                .wingRootBendingDownNM(l.rootBendingDownNm())
                                .build())
                        .orElse(null))
                .restraints(r.restraints().stream().map(LoadsWriting::restraint).toList())
                .surfaces(r.surfaces().stream().map(LoadsWriting::surface).toList())
                .notJudged(notJudged(task))
                .build();
    }

    private static ApiEnvelopePoint point(EnvelopePoint p) {
        return ApiEnvelopePoint.builder()
                .airspeedMPerS(p.airspeedMPerS())
                .positiveLoadFactor(p.positive())
                .negativeLoadFactor(p.negative())
                .gustUpLoadFactor(p.gustUp())
                .gustDownLoadFactor(p.gustDown())
                .build();
    }

    private static ApiGustLoads gust(LoadsTask task, LoadsResult r) {
        return ApiGustLoads.builder()
                .massRatio(r.gust().massRatio())
                .alleviationFactor(r.gust().alleviation())
                .derivedGustMPerS(task.gustMPerS())
                .loadFactorAtCruise(r.gust().up(task.cruiseMPerS()))
                .loadFactorAtNeverExceed(Writing.in(task.neverExceedMPerS(), r.gust()::up))
                .operatingGustMPerS(Writing.in(task.windMPerS(), trestle.structure.Gust::operatingMPerS))
                .build();
    }

    private static ApiStationLoads station(StationLoad s) {
        OptionalDouble stress =
                s.stress().map(Stress::stressPa).map(OptionalDouble::of).orElse(OptionalDouble.empty());
        boolean loaded = s.bendingNm() != 0 || s.shearN() != 0;
        return ApiStationLoads.builder()
                .lateralMm(Length.mmFromM(s.lateralM()))
                .chordMm(Length.mmFromM(s.chordM()))
                .liftNPerM(s.liftNPerM())
                .shearN(s.shearN())
                .bendingNM(s.bendingNm())
                .torsionNM(s.torsionNm())
                .stressMpa(Writing.in(stress, Pressure::mpaFromPa))
                .reserveFactor(loaded ? s.stress().map(Stress::reserve).orElse(null) : null)
                .deflectionMm(Writing.in(s.deflectionM(), Length::mmFromM))
                .build();
    }

    private static ApiJointLoads joint(JointLoad j) {
        return ApiJointLoads.builder()
                .name(j.name())
                .lateralMm(Length.mmFromM(j.lateralM()))
                .shearN(j.shearN())
                .bendingNM(j.bendingNm())
                .joinerStressMpa(Pressure.mpaFromPa(j.stress().stressPa()))
                .reserveFactor(j.stress().reserve())
                .bearingMpa(Pressure.mpaFromPa(j.bearingPa()))
                .bearingReserveFactor(Writing.boxed(j.bearingReserve()))
                .reverseShearN(j.reverseShearN())
                .build();
    }

    private static ApiWeakestPart weakest(Weakest w) {
        return ApiWeakestPart.builder()
                .part(w.part())
                .lateralMm(Length.mmFromM(w.lateralM()))
                .mode(ApiFailureMode.valueOf(w.mode().name()))
                .reserveFactor(w.reserve())
                .loadFactorAtLimit(w.limitLoadFactor())
                .loadFactorAtFailure(w.failureLoadFactor())
                .build();
    }

    private static ApiRestraintLoads restraint(RestraintLoad r) {
        return ApiRestraintLoads.builder()
                .name(r.name())
                .forwardN(r.forwardN())
                .aftN(r.aftN())
                .upN(r.upN())
                .sideN(r.sideN())
                .governedBy(r.governedBy())
                .build();
    }

    private static ApiSurfaceLoads surface(SurfaceLoad s) {
        return ApiSurfaceLoads.builder()
                .name(s.name())
                .hingeMomentNM(s.hingeMomentNm())
                .servoTorqueNM(s.servoTorqueNm())
                .servoLoadPercent(Writing.in(s.loadFraction(), Share::percentFromFraction))
                .servoCurrentA(Writing.boxed(s.currentA()))
                .blowBackAirspeedMPerS(Writing.boxed(s.blowBackMPerS()))
                .build();
    }

    private static List<ApiNotJudgedItem> notJudged(LoadsTask task) {
        List<ApiNotJudgedItem> all = new ArrayList<>(List.of(
                item("flutter", "it needs stiffness, mass distribution and play that no field describes"),
                item("divergence and control reversal", "they need the torsional stiffness of the wing"),
                item("tail, tail boom and fuselage", "no field describes them"),
                item("fatigue", "these are single loads"),
                item("bonds and buckled skins", "spars alone are counted"),
                item("a crash", "a stop against a bank loads far beyond any strap")));
        boolean onFoam = task.spars().stream().anyMatch(trestle.structure.Spar::onFoam);
        if (onFoam && (task.foamModulusPa().isEmpty() || task.foamShearPa().isEmpty())) {
            all.add(item("wrinkling of caps on foam", "foam_modulus_mpa and foam_shear_modulus_mpa are not given"));
        }
        return all;
    }

    private static ApiNotJudgedItem item(String what, String because) {
        return ApiNotJudgedItem.builder().what(what).because(because).build();
    }
}
