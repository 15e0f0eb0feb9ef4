package trestle.endpoint.packcharge;

import java.util.Comparator;
import trestle.api.model.ApiChargeBalance;
import trestle.api.model.ApiChargeCurvePoint;
import trestle.api.model.ApiChargeEndReason;
import trestle.api.model.ApiChargeLimit;
import trestle.api.model.ApiChargeStorage;
import trestle.api.model.ApiChargeSupplyUse;
import trestle.api.model.ApiChargedSegment;
import trestle.api.model.ApiJudgement;
import trestle.api.model.ApiPackChargeAnswer;
import trestle.charging.ChargePoint;
import trestle.charging.ChargeTask;
import trestle.charging.LimitedBy;
import trestle.charging.PackCharge;
import trestle.charging.SegmentCharge;
import trestle.charging.StringCharge;
import trestle.charging.SupplyUse;
import trestle.endpoint.Writing;
import trestle.units.Charge;
import trestle.units.Energy;
import trestle.units.Share;
import trestle.units.Temperature;
import trestle.units.Time;

/** Writes a charge into its answer. */
public final class ChargeWriting {
    private ChargeWriting() {}

    public static ApiPackChargeAnswer write(ChargeTask task, PackCharge charge, ApiJudgement judgement) {
        StringCharge slowest = charge.slowest();
        return ApiPackChargeAnswer.builder()
                .judgement(judgement)
                .timeTo80PercentH(Writing.in(charge.timeTo80S(), Time::hFromS))
                .timeToFullH(Writing.in(charge.timeToFullS(), Time::hFromS))
                .timeToTargetH(Writing.in(charge.timeToTargetS(), Time::hFromS))
                .constantCurrentH(Time.hFromS(slowest.constantCurrentS()))
                .constantVoltageH(Time.hFromS(slowest.constantVoltageS()))
                .shareInConstantCurrentPercent(Share.percentFromFraction(slowest.constantCurrentFraction()))
                .startCurrentA(slowest.startA())
                .limitedBy(limit(slowest.limit()))
                .endReason(ApiChargeEndReason.valueOf(slowest.end().name()))
                .chargeInAh(Charge.ahFromC(charge.chargeC()))
                .energyInWh(Energy.whFromJ(charge.energyJ()))
                .heatWh(Energy.whFromJ(charge.heatJ()))
                .highestTemperatureC(Temperature.cFromK(charge.highestK()))
                .supply(supply(charge.supply()))
                .segments(charge.segments().stream()
                        .map(segment -> segment(task, segment))
                        .toList())
                .balance(ApiChargeBalance.builder()
                        .extraH(Time.hFromS(charge.balanceS()))
                        .highestCellVoltageV(charge.segments().stream()
                                .map(SegmentCharge::highestCellV)
                                .max(Comparator.naturalOrder())
                                .orElseThrow())
                        .build())
                .storage(ApiChargeStorage.builder()
                        .stateOfChargePercent(
                                Share.percentFromFraction(charge.rest().fraction()))
                        .cellVoltageV(charge.rest().cellV())
                        .chargeAh(Charge.ahFromC(charge.rest().chargeC()))
                        .build())
                .curve(charge.curve().stream().map(ChargeWriting::point).toList())
                .build();
    }

    private static ApiChargeLimit limit(LimitedBy limit) {
        return ApiChargeLimit.valueOf(limit.name());
    }

    private static ApiChargeSupplyUse supply(SupplyUse use) {
        var answer = ApiChargeSupplyUse.builder()
                .energyWh(Energy.whFromJ(use.energyJ()))
                .peakPowerW(use.peakW());
        if (use.charges().isPresent()) {
            double charges = use.charges().getAsDouble();
            answer.chargeAh(Charge.ahFromC(use.chargeC().getAsDouble()))
                    .usableAh(Charge.ahFromC(use.usableC().getAsDouble()))
                    .shareUsedPercent(Share.percentFromFraction(1 / charges))
                    .charges((int) Math.floor(charges));
        }
        return answer.build();
    }

    private static ApiChargedSegment segment(ChargeTask task, SegmentCharge segment) {
        return ApiChargedSegment.builder()
                .name(task.pack().nameOf(segment.index()))
                .startStateOfChargePercent(Share.percentFromFraction(segment.startFraction()))
                .endStateOfChargePercent(Share.percentFromFraction(segment.endFraction()))
                .endCellVoltageV(segment.endCellV())
                .highestCellVoltageV(segment.highestCellV())
                .currentA(segment.currentA())
                .timeH(Time.hFromS(segment.timeS()))
                .allowedCurrentA(segment.allowedA())
                .allowedBecause(limit(segment.allowedBecause()))
                .build();
    }

    private static ApiChargeCurvePoint point(ChargePoint point) {
        return ApiChargeCurvePoint.builder()
                .timeS(point.timeS())
                .currentA(point.currentA())
                .voltageV(point.voltageV())
                .cellVoltageV(point.cellV())
                .stateOfChargePercent(Share.percentFromFraction(point.fraction()))
                .temperatureC(Temperature.cFromK(point.temperatureK()))
                .energyWh(Energy.whFromJ(point.energyJ()))
                .build();
    }
}
