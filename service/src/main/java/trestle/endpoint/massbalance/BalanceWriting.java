package trestle.endpoint.massbalance;

import java.util.List;
import java.util.Map;
import trestle.api.model.ApiBallast;
import trestle.api.model.ApiCorrection;
import trestle.api.model.ApiInertia;
import trestle.api.model.ApiJudgement;
import trestle.api.model.ApiMassBalanceAnswer;
import trestle.api.model.ApiMassOrigin;
import trestle.api.model.ApiMoment;
import trestle.api.model.ApiWeighed;
import trestle.endpoint.MainFigure;
import trestle.endpoint.Writing;
import trestle.massbalance.Aim;
import trestle.massbalance.Balance;
import trestle.massbalance.Centre;
import trestle.massbalance.JointMove;
import trestle.massbalance.Moment;
import trestle.massbalance.Move;
import trestle.massbalance.Planform;
import trestle.massbalance.Weighed;
import trestle.units.Area;
import trestle.units.Length;
import trestle.units.Mass;
import trestle.units.Share;

/** Writes a balance into its answer. */
public final class BalanceWriting {
    private static final double G_PER_DM2_OF_KG_PER_M2 = 10;

    private BalanceWriting() {}

    /**
     * The numbers that carry a band.
     *
     * @param balance the balance
     * @param figures takes each under its name
     */
    public static void figures(Balance balance, Map<MainFigure, Double> figures) {
        figures.put(MainFigure.STATIC_MARGIN, Writing.in(balance.staticMarginFraction(), Share::percentFromFraction));
        figures.put(MainFigure.CG_ARM, Length.mmFromM(balance.centre().armM()));
        figures.put(MainFigure.TOTAL_MASS, Mass.gFromKg(balance.centre().massKg()));
    }

    public static ApiMassBalanceAnswer write(Balance balance, ApiJudgement judgement) {
        ApiMassBalanceAnswer.Builder answer = ApiMassBalanceAnswer.builder().judgement(judgement);
        centre(answer, balance.centre());
        balance.planform().ifPresent(planform -> planform(answer, planform));
        return answer.cgPercentMac(Writing.in(balance.cgMacFraction(), Share::percentFromFraction))
                .wingLoadingGPerDm2(Writing.in(balance.wingLoadingKgPerM2(), BalanceWriting::gPerDm2FromKgPerM2))
                .neutralPointArmMm(balance.neutralPoint()
                        .map(np -> Length.mmFromM(np.armM()))
                        .orElse(null))
                .neutralPointToleranceMm(balance.neutralPoint()
                        .map(np -> Length.mmFromM(np.toleranceM()))
                        .orElse(null))
                .staticMarginPercent(Writing.in(balance.staticMarginFraction(), Share::percentFromFraction))
                .staticMarginTolerancePercent(
                        Writing.in(balance.staticMarginToleranceFraction(), Share::percentFromFraction))
                .inertiaKgM2(balance.inertia()
                        .map(i -> new ApiInertia(i.rollKgM2(), i.pitchKgM2(), i.yawKgM2()))
                        .orElse(null))
                .moments(balance.moments().stream().map(BalanceWriting::moment).toList())
                .corrections(balance.aim().map(Aim::alone).orElse(List.of()).stream()
                        .map(BalanceWriting::correction)
                        .toList())
                .leastMovement(balance.aim()
                        .flatMap(Aim::together)
                        .map(BalanceWriting::together)
                        .orElse(null))
                .ballast(balance.aim().map(Aim::ballast).orElse(List.of()).stream()
                        .map(b -> new ApiBallast(b.place(), Length.mmFromM(b.armM()), Mass.gFromKg(b.massKg())))
                        .toList())
                .massFrom(balance.weighed().isPresent() ? ApiMassOrigin.WEIGHING : ApiMassOrigin.ITEMS)
                .weighed(balance.weighed().map(BalanceWriting::weighed).orElse(null))
                .build();
    }

    private static void centre(ApiMassBalanceAnswer.Builder answer, Centre centre) {
        answer.totalMassG(Mass.gFromKg(centre.massKg()))
                .cgArmMm(Length.mmFromM(centre.armM()))
                .cgLateralMm(Length.mmFromM(centre.lateralM()))
                .cgVerticalMm(Length.mmFromM(centre.verticalM()))
                .totalMassToleranceG(Mass.gFromKg(centre.massToleranceKg()))
                .cgArmToleranceMm(Length.mmFromM(centre.armToleranceM()));
    }

    private static void planform(ApiMassBalanceAnswer.Builder answer, Planform planform) {
        answer.meanAerodynamicChordMm(Length.mmFromM(planform.meanAerodynamicChordM()))
                .macLeadingEdgeArmMm(Length.mmFromM(planform.macLeadingEdgeArmM()))
                .wingAreaDm2(Area.dm2FromM2(planform.areaM2()))
                .wingSpanMm(Length.mmFromM(planform.spanM()))
                .aspectRatio(planform.aspectRatio());
    }

    private static ApiMoment moment(Moment moment) {
        return ApiMoment.builder()
                .name(moment.name())
                .massG(Mass.gFromKg(moment.massKg()))
                .armMm(Length.mmFromM(moment.armM()))
                .momentGMm(Mass.gFromKg(Length.mmFromM(moment.momentKgM())))
                .sharePercent(Share.percentFromFraction(moment.massFraction()))
                .build();
    }

    private static ApiCorrection correction(Move move) {
        return new ApiCorrection(
                move.item(), Length.mmFromM(move.toArmM()), Length.mmFromM(move.byM()), move.reachable());
    }

    private static List<ApiCorrection> together(JointMove joint) {
        return joint.moves().stream()
                .map(move -> new ApiCorrection(
                        move.item(), Length.mmFromM(move.toArmM()), Length.mmFromM(move.byM()), joint.reachesTarget()))
                .toList();
    }

    private static ApiWeighed weighed(Weighed weighed) {
        return ApiWeighed.builder()
                .totalMassG(Mass.gFromKg(weighed.massKg()))
                .cgArmMm(Writing.in(weighed.armM(), Length::mmFromM))
                .cgLateralMm(Writing.in(weighed.lateralM(), Length::mmFromM))
                .differenceFromItemsG(Mass.gFromKg(weighed.differenceFromItemsKg()))
                .differenceFromItemsMm(Writing.in(weighed.differenceFromItemsM(), Length::mmFromM))
                .missingMassG(
                        weighed.missing().map(m -> Mass.gFromKg(m.massKg())).orElse(null))
                .missingArmMm(
                        weighed.missing().map(m -> Length.mmFromM(m.armM())).orElse(null))
                .build();
    }

    /** Wing loading as builders quote it. */
    public static double gPerDm2FromKgPerM2(double loadingKgPerM2) {
        return loadingKgPerM2 * G_PER_DM2_OF_KG_PER_M2;
    }
}
