package trestle.endpoint.packenergy;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import trestle.api.model.ApiDischargePoint;
import trestle.api.model.ApiEndReason;
import trestle.api.model.ApiJudgement;
import trestle.api.model.ApiPackEnergyAnswer;
import trestle.api.model.ApiSegmentAtEnd;
import trestle.battery.CurvePoint;
import trestle.battery.Discharge;
import trestle.battery.DischargeEnd;
import trestle.battery.EnergyBudget;
import trestle.battery.PackEnergy;
import trestle.battery.PackRatings;
import trestle.battery.PowerAllowed;
import trestle.battery.SegmentOutcome;
import trestle.endpoint.MainFigure;
import trestle.endpoint.Writing;
import trestle.units.Charge;
import trestle.units.Energy;
import trestle.units.Mass;
import trestle.units.Share;
import trestle.units.Temperature;
import trestle.units.Time;

/** Writes what a pack gives into its answer. */
public final class PackWriting {
    private PackWriting() {}

    /**
     * The numbers that carry a band.
     *
     * @param pack the pack
     * @param figures takes each under its name
     */
    public static void figures(PackEnergy pack, Map<MainFigure, Double> figures) {
        figures.put(MainFigure.USABLE_ENERGY, Energy.whFromJ(pack.budget().usableEnergyJ()));
    }

    public static ApiPackEnergyAnswer write(PackEnergy result, List<String> names, ApiJudgement judgement) {
        ApiPackEnergyAnswer.Builder answer = ApiPackEnergyAnswer.builder().judgement(judgement);
        ratings(answer, result.ratings());
        budget(answer, result.budget());
        discharge(answer, result.discharge());
        return answer.specificEnergyWhPerKg(Energy.whFromJ(result.budget().usableEnergyJ())
                        / result.ratings().massKg())
                .cutoffVoltageV(result.cutoffVoltageV())
                .cRate(result.cRatePerH())
                .maxPowerW(result.allowed().map(PowerAllowed::startW).orElse(null))
                .maxPowerMidwayW(result.allowed().map(PowerAllowed::midW).orElse(null))
                .maxPowerAtEndW(result.allowed().map(PowerAllowed::endW).orElse(null))
                .chargeTimeH(Writing.in(result.chargeTimeS(), Time::hFromS))
                .limitingSegment(names.get(result.discharge().limitingSegment()))
                .segments(segments(result.discharge().segments(), names))
                .curve(result.curve().stream().map(PackWriting::point).toList())
                .build();
    }

    private static void ratings(ApiPackEnergyAnswer.Builder answer, PackRatings ratings) {
        answer.seriesCount(ratings.seriesCount())
                .nominalVoltageV(ratings.nominalVoltageV())
                .fullVoltageV(ratings.fullVoltageV())
                .capacityAh(Charge.ahFromC(ratings.capacityC()))
                .nominalEnergyWh(Energy.whFromJ(ratings.nominalEnergyJ()))
                .packMassG(Mass.gFromKg(ratings.massKg()))
                .maxContinuousCurrentA(Writing.boxed(ratings.maxContinuousCurrentA()));
    }

    private static void budget(ApiPackEnergyAnswer.Builder answer, EnergyBudget budget) {
        answer.usableEnergyWh(Energy.whFromJ(budget.usableEnergyJ()))
                .energyBelowCutoffWh(Energy.whFromJ(budget.energyBelowCutoffJ()))
                .reserveEnergyWh(Energy.whFromJ(budget.reserveEnergyJ()))
                .usableChargeAh(Charge.ahFromC(budget.usableChargeC()))
                .durationS(budget.durationS())
                .durationToReserveS(budget.durationToReserveS());
    }

    private static void discharge(ApiPackEnergyAnswer.Builder answer, Discharge discharge) {
        answer.endReason(reason(discharge.ending()))
                .voltageAtStartV(discharge.startVoltageV())
                .lowestVoltageV(discharge.lowestVoltageV())
                .heatWh(Energy.whFromJ(discharge.heatJ()))
                .highestTemperatureC(Temperature.cFromK(discharge.highestTemperatureK()));
    }

    private static List<ApiSegmentAtEnd> segments(List<SegmentOutcome> ends, List<String> names) {
        return IntStream.range(0, ends.size())
                .mapToObj(i -> ApiSegmentAtEnd.builder()
                        .name(names.get(i))
                        .cellVoltageV(ends.get(i).cellVoltageV())
                        .stateOfChargePercent(
                                Share.percentFromFraction(ends.get(i).stateOfChargeFraction()))
                        .temperatureC(Temperature.cFromK(ends.get(i).temperatureK()))
                        .build())
                .toList();
    }

    private static ApiEndReason reason(DischargeEnd ending) {
        return ApiEndReason.valueOf(ending.name());
    }

    private static ApiDischargePoint point(CurvePoint point) {
        return ApiDischargePoint.builder()
                .timeS(point.timeS())
                .voltageV(point.voltageV())
                .currentA(point.currentA())
                .powerW(point.powerW())
                .stateOfChargePercent(Share.percentFromFraction(point.stateOfChargeFraction()))
                .energyWh(Energy.whFromJ(point.energyJ()))
                .temperatureC(Temperature.cFromK(point.temperatureK()))
                .build();
    }
}
