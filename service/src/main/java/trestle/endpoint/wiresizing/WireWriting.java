package trestle.endpoint.wiresizing;

import java.util.Optional;
import trestle.api.model.ApiConnectorHeat;
import trestle.api.model.ApiFuseWindow;
import trestle.api.model.ApiGaugeFailure;
import trestle.api.model.ApiGaugeResult;
import trestle.api.model.ApiJudgement;
import trestle.api.model.ApiPlugInrush;
import trestle.api.model.ApiPrechargeResult;
import trestle.api.model.ApiWireSizingAnswer;
import trestle.endpoint.Writing;
import trestle.units.Area;
import trestle.units.Energy;
import trestle.units.Length;
import trestle.units.Mass;
import trestle.units.Resistance;
import trestle.units.Share;
import trestle.units.Temperature;
import trestle.wiring.ConnectorHeat;
import trestle.wiring.GaugeAnswer;
import trestle.wiring.Plugging;
import trestle.wiring.Shortfall;
import trestle.wiring.WireSizing;
import trestle.wiring.WireTask;

/** Writes a choice of wire into its answer. */
public final class WireWriting {
    private WireWriting() {}

    public static ApiWireSizingAnswer write(WireTask task, WireSizing sizing, ApiJudgement judgement) {
        Optional<GaugeAnswer> reported = sizing.recommended().or(sizing::checked);
        return ApiWireSizingAnswer.builder()
                .judgement(judgement)
                .recommended(sizing.recommended().map(WireWriting::gauge).orElse(null))
                .checked(sizing.checked().map(WireWriting::gauge).orElse(null))
                .candidates(sizing.candidates().stream().map(WireWriting::gauge).toList())
                .lightestGauge(
                        sizing.lightest().map(a -> a.gauge().designation()).orElse(null))
                .enduranceOptimalGauge(sizing.enduranceOptimal()
                        .map(a -> a.gauge().designation())
                        .orElse(null))
                .totalDropV(reported.map(GaugeAnswer::totalDropV).orElse(null))
                .fuse(task.fuse().flatMap(fuse -> window(task, sizing)).orElse(null))
                .inrush(inrush(task, sizing).orElse(null))
                .precharge(precharge(task).orElse(null))
                .connectorDropV(sizing.connectorDropV())
                .connectors(task.run().connectors().stream()
                        .map(connector -> ConnectorHeat.of(
                                connector, task.run(), task.surroundings().sinkTemperatureK()))
                        .map(WireWriting::connector)
                        .toList())
                .build();
    }

    private static Optional<ApiFuseWindow> window(WireTask task, WireSizing sizing) {
        return sizing.fuseWindow(task.run())
                .map(window -> ApiFuseWindow.builder()
                        .leastRatingA(window.leastA())
                        .greatestRatingA(window.greatestA())
                        .recommendedA(Writing.boxed(window.recommendedA()))
                        .shortCircuitCurrentA(Writing.boxed(
                                task.plug().shortCircuitA(task.run().supplyVoltageV())))
                        .build());
    }

    private static Optional<ApiPlugInrush> inrush(WireTask task, WireSizing sizing) {
        return task.plug().capacitanceF().isEmpty()
                ? Optional.empty()
                : sizing.chosen()
                        .map(answer -> Plugging.of(task).inrush(task, answer.wire()))
                        .map(inrush -> ApiPlugInrush.builder()
                                .energyJ(inrush.energyJ())
                                .peakCurrentA(Writing.boxed(inrush.peakCurrentA()))
                                .dampingRatio(Writing.boxed(inrush.damping()))
                                .durationS(Writing.boxed(inrush.durationS()))
                                .build());
    }

    private static Optional<ApiPrechargeResult> precharge(WireTask task) {
        return task.plug().capacitanceF().isEmpty()
                ? Optional.empty()
                : Optional.of(Plugging.of(task))
                        .map(plugging -> ApiPrechargeResult.builder()
                                .resistanceMilliohm(Resistance.milliohmFromOhm(plugging.resistanceOhm()))
                                .waitS(plugging.waitS())
                                .peakPowerW(plugging.peakPowerW())
                                .energyJ(plugging.energyJ())
                                .leftVoltageV(plugging.leftVoltageV())
                                .build());
    }

    private static ApiConnectorHeat connector(ConnectorHeat heat) {
        return ApiConnectorHeat.builder()
                .name(heat.connector().name())
                .contactLossW(heat.lossW())
                .temperatureRiseK(heat.riseK())
                .temperatureC(Temperature.cFromK(heat.temperatureK()))
                .build();
    }

    private static ApiGaugeResult gauge(GaugeAnswer gauge) {
        return ApiGaugeResult.builder()
                .gauge(gauge.gauge().designation())
                .areaMm2(Area.mm2FromM2(gauge.gauge().areaM2()))
                .conductorDiameterMm(Length.mmFromM(gauge.gauge().conductorDiameterM()))
                .resistanceMilliohm(Resistance.milliohmFromOhm(gauge.resistanceOhm()))
                .dropV(gauge.dropV())
                .dropPercent(Share.percentFromFraction(gauge.totalDropFraction()))
                .peakDropV(Writing.boxed(gauge.peakDropV()))
                .peakDropPercent(Writing.in(gauge.peakDropFraction(), Share::percentFromFraction))
                .lossW(gauge.lossW())
                .conductorTemperatureC(Writing.in(gauge.conductorTemperatureK(), Temperature::cFromK))
                .surfaceTemperatureC(Writing.in(gauge.surfaceTemperatureK(), Temperature::cFromK))
                .peakSurfaceTemperatureC(Writing.in(gauge.peakSurfaceTemperatureK(), Temperature::cFromK))
                .peakTemperatureC(Writing.in(gauge.peakTemperatureK(), Temperature::cFromK))
                .ampacityA(gauge.ampacityA())
                .massG(Mass.gFromKg(gauge.massKg()))
                .energyCostWh(Writing.in(gauge.energyCostJ(), Energy::whFromJ))
                .meets(gauge.meets())
                .fails(gauge.fails().stream().map(WireWriting::failure).toList())
                .build();
    }

    private static ApiGaugeFailure failure(Shortfall shortfall) {
        return ApiGaugeFailure.valueOf(shortfall.name());
    }
}
