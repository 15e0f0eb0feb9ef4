package trestle.endpoint;

import java.util.List;
import java.util.stream.IntStream;
import trestle.api.model.DischargePoint;
import trestle.api.model.EndReason;
import trestle.api.model.Judgement;
import trestle.api.model.PackEnergyAnswer;
import trestle.api.model.SegmentAtEnd;
import trestle.battery.CurvePoint;
import trestle.battery.Discharge;
import trestle.battery.DischargeEnd;
import trestle.battery.EnergyBudget;
import trestle.battery.PackEnergy;
import trestle.battery.PackRatings;
import trestle.battery.SegmentOutcome;
import trestle.units.Charge;
import trestle.units.Energy;
import trestle.units.Mass;
import trestle.units.Share;
import trestle.units.Temperature;
import trestle.units.Time;

/** Writes what a pack gives into its answer. */
final class PackWriting {
    private PackWriting() {}

    static PackEnergyAnswer write(PackEnergy result, List<String> names, Judgement judgement) {
        PackEnergyAnswer.Builder answer = PackEnergyAnswer.builder().judgement(judgement);
        ratings(answer, result.ratings());
        budget(answer, result.budget());
        discharge(answer, result.discharge());
        return answer.specificEnergyWhPerKg(Energy.whFromJ(result.budget().usableEnergyJ())
                        / result.ratings().massKg())
                .cutoffVoltageV(result.cutoffVoltageV())
                .cRate(result.cRatePerH())
                .maxPowerW(result.allowed().startW())
                .maxPowerMidwayW(result.allowed().midW())
                .maxPowerAtEndW(result.allowed().endW())
                .chargeTimeH(Time.hFromS(result.chargeTimeS()))
                .limitingSegment(names.get(result.discharge().limitingSegment()))
                .segments(segments(result.discharge().segments(), names))
                .curve(result.curve().stream().map(PackWriting::point).toList())
                .build();
    }

    private static void ratings(PackEnergyAnswer.Builder answer, PackRatings ratings) {
        answer.seriesCount(ratings.seriesCount())
                .nominalVoltageV(ratings.nominalVoltageV())
                .fullVoltageV(ratings.fullVoltageV())
                .capacityAh(Charge.ahFromC(ratings.capacityC()))
                .nominalEnergyWh(Energy.whFromJ(ratings.nominalEnergyJ()))
                .packMassG(Mass.gFromKg(ratings.massKg()))
                .maxContinuousCurrentA(Writing.boxed(ratings.maxContinuousCurrentA()));
    }

    private static void budget(PackEnergyAnswer.Builder answer, EnergyBudget budget) {
        answer.usableEnergyWh(Energy.whFromJ(budget.usableEnergyJ()))
                .strandedEnergyWh(Energy.whFromJ(budget.strandedEnergyJ()))
                .reserveEnergyWh(Energy.whFromJ(budget.reserveEnergyJ()))
                .usableChargeAh(Charge.ahFromC(budget.usableChargeC()))
                .durationS(budget.durationS())
                .durationToReserveS(budget.durationToReserveS());
    }

    private static void discharge(PackEnergyAnswer.Builder answer, Discharge discharge) {
        answer.endReason(reason(discharge.ending()))
                .voltageAtStartV(discharge.startVoltageV())
                .lowestVoltageV(discharge.lowestVoltageV())
                .heatWh(Energy.whFromJ(discharge.heatJ()))
                .highestTemperatureC(Temperature.cFromK(discharge.highestTemperatureK()));
    }

    private static List<SegmentAtEnd> segments(List<SegmentOutcome> ends, List<String> names) {
        return IntStream.range(0, ends.size())
                .mapToObj(i -> SegmentAtEnd.builder()
                        .name(names.get(i))
                        .cellVoltageV(ends.get(i).cellVoltageV())
                        .stateOfChargePercent(
                                Share.percentFromFraction(ends.get(i).stateOfChargeFraction()))
                        .temperatureC(Temperature.cFromK(ends.get(i).temperatureK()))
                        .build())
                .toList();
    }

    private static EndReason reason(DischargeEnd ending) {
        return EndReason.valueOf(ending.name());
    }

    private static DischargePoint point(CurvePoint point) {
        return DischargePoint.builder()
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
