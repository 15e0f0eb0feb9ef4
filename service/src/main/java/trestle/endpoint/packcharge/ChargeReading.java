package trestle.endpoint.packcharge;

import static java.util.Map.entry;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import trestle.api.model.ApiChargeConnection;
import trestle.api.model.ApiChargeShape;
import trestle.api.model.ApiChargeTargetKind;
import trestle.api.model.ApiFieldBattery;
import trestle.api.model.ApiFieldBatteryKind;
import trestle.api.model.ApiPackChargeRequest;
import trestle.api.model.ApiPackChargeSupply;
import trestle.api.model.ApiPackCharger;
import trestle.battery.Segment;
import trestle.charging.ChargePart;
import trestle.charging.ChargePlan;
import trestle.charging.ChargeSupply;
import trestle.charging.ChargeTarget;
import trestle.charging.Charger;
import trestle.charging.Connection;
import trestle.charging.FieldBattery;
import trestle.endpoint.Reading;
import trestle.endpoint.packenergy.PackReading;
import trestle.units.Charge;
import trestle.units.Resistance;
import trestle.units.Share;
import trestle.units.Temperature;
import trestle.units.Time;

/**
 * Reads a charge.
 *
 * @param request validated against its constraints, completed
 * @param at JSON Pointer of what holds it
 * @param reading notes defaults and contradictions
 */
public record ChargeReading(ApiChargeShape request, String at, Reading reading) {
    private static final String NOT_GIVEN = "the request gives none";

    /** Seconds of a day. */
    private static final double DAY_S = Time.sFromH(24);

    /**
     * All but the pack.
     *
     * @return the plan
     */
    public ChargePlan plan() {
        double ambientK = PackReading.ambientK(request.ambientC(), at, reading);
        return new ChargePlan(
                Share.fractionFromPercent(reading.orDefault(
                        request.startStateOfChargePercent(),
                        ApiPackChargeRequest.START_STATE_OF_CHARGE_PERCENT,
                        at,
                        NOT_GIVEN)),
                ambientK,
                Reading.optional(request.packTemperatureC(), Temperature::kFromC)
                        .orElse(ambientK),
                Resistance.ohmFromMilliohm(
                        Reading.or(request.leadResistanceMilliohm(), ApiPackChargeRequest.LEAD_RESISTANCE_MILLIOHM)),
                Connection.valueOf(reading.orDefault(
                                request.connection(),
                                ApiChargeConnection.IN_SERIES,
                                ApiPackChargeRequest.CONNECTION.at(at),
                                NOT_GIVEN)
                        .name()),
                charger(),
                Reading.optional(request.currentA()),
                target(),
                Reading.optional(request.holdVoltageV()),
                Share.fractionFromPercent(
                                Reading.or(request.endCurrentPercent(), ApiPackChargeRequest.END_CURRENT_PERCENT))
                        / Time.sFromH(1),
                Share.fractionFromPercent(reading.orDefault(
                        request.imbalancePercent(), ApiPackChargeRequest.IMBALANCE_PERCENT, at, "common practice")),
                Optional.ofNullable(request.supply()).map(this::supply),
                Reading.optional(request.coldRatingC(), Temperature::kFromC),
                Reading.optional(request.storageDays(), days -> days * DAY_S));
    }

    /**
     * Refuses one current through unlike segments: it fills the smaller first, and only a balancer can do with that.
     *
     * @param plan the charge
     * @param segments of the pack
     */
    public void requireAlike(ChargePlan plan, List<Segment> segments) {
        if (!plan.suits(segments)) {
            reading.fault(
                    ApiPackChargeRequest.CONNECTION.at(at),
                    "contradiction",
                    "segments of unlike capacity are not charged as one string without a balancer");
        }
    }

    private ChargeTarget target() {
        ApiChargeTargetKind kind = Reading.or(request.target(), ApiChargeTargetKind.FULL);
        Double percent = request.targetStateOfChargePercent();
        String field = ApiPackChargeRequest.TARGET_STATE_OF_CHARGE_PERCENT.name();
        if (kind != ApiChargeTargetKind.STATE_OF_CHARGE) {
            reading.takesNo("the target " + kind.value(), at, field, percent);
            return kind == ApiChargeTargetKind.FULL ? ChargeTarget.FULL : ChargeTarget.STORAGE;
        }
        return reading.needs("the target state_of_charge", at, field, percent)
                ? new ChargeTarget(ChargeTarget.Kind.STATE_OF_CHARGE, Share.fractionFromPercent(percent))
                : ChargeTarget.FULL;
    }

    private Charger charger() {
        ApiPackCharger charger = Optional.ofNullable(request.charger())
                .orElseGet(() -> ApiPackCharger.builder().build());
        return new Charger(
                Reading.optional(charger.maxCurrentA()),
                Reading.optional(charger.maxPowerW()),
                Reading.optional(charger.maxVoltageV()),
                charger.maxSeriesCells() == null ? OptionalInt.empty() : OptionalInt.of(charger.maxSeriesCells()),
                Reading.or(charger.channels(), ApiPackCharger.CHANNELS),
                reading.orDefault(charger.efficiency(), ApiPackCharger.EFFICIENCY, charger(at), "common practice"),
                reading.orDefault(charger.balances(), ApiPackCharger.BALANCES, charger(at), NOT_GIVEN),
                reading.orDefault(
                        charger.balanceCurrentA(), ApiPackCharger.BALANCE_CURRENT_A, charger(at), "common practice"));
    }

    private ChargeSupply supply(ApiPackChargeSupply supply) {
        return new ChargeSupply(
                Reading.optional(supply.maxPowerW()),
                Optional.ofNullable(supply.battery()).map(this::battery));
    }

    private FieldBattery battery(ApiFieldBattery battery) {
        String place = ApiPackChargeSupply.BATTERY.at(ApiPackChargeRequest.SUPPLY.at(at));
        ApiFieldBatteryKind kind = reading.orDefault(
                battery.kind(), ApiFieldBatteryKind.LEAD_ACID, ApiFieldBattery.KIND.at(place), NOT_GIVEN);
        return new FieldBattery(
                kind == ApiFieldBatteryKind.LEAD_ACID,
                reading.orDefault(battery.nominalVoltageV(), ApiFieldBattery.NOMINAL_VOLTAGE_V, place, NOT_GIVEN),
                Charge.cFromAh(battery.capacityAh()),
                Share.fractionFromPercent(reading.orDefault(
                        battery.usablePercent(), ApiFieldBattery.USABLE_PERCENT, place, "common practice")),
                Time.sFromH(reading.orDefault(battery.ratedH(), ApiFieldBattery.RATED_H, place, "common practice")));
    }

    private static String charger(String at) {
        return ApiPackChargeRequest.CHARGER.at(at);
    }

    /**
     * Where the parts of a charge stand.
     *
     * @param at JSON Pointer of what holds all but the pack
     * @return the places
     */
    public static Map<Enum<?>, String> pointers(String at) {
        return Map.ofEntries(
                entry(ChargePart.CHARGE, at),
                entry(ChargePart.PACK_TEMPERATURE, ApiPackChargeRequest.PACK_TEMPERATURE_C.at(at)),
                entry(ChargePart.CONNECTION, ApiPackChargeRequest.CONNECTION.at(at)),
                entry(ChargePart.CHARGER, charger(at)),
                entry(ChargePart.CHARGER_POWER, ApiPackCharger.MAX_POWER_W.at(charger(at))),
                entry(ChargePart.CHARGER_VOLTAGE, ApiPackCharger.MAX_VOLTAGE_V.at(charger(at))),
                entry(ChargePart.CHARGER_CHANNELS, ApiPackCharger.CHANNELS.at(charger(at))),
                entry(ChargePart.BALANCE_CURRENT, ApiPackCharger.BALANCE_CURRENT_A.at(charger(at))),
                entry(ChargePart.CURRENT, ApiPackChargeRequest.CURRENT_A.at(at)),
                entry(ChargePart.TARGET, ApiPackChargeRequest.TARGET.at(at)),
                entry(ChargePart.HOLD_VOLTAGE, ApiPackChargeRequest.HOLD_VOLTAGE_V.at(at)),
                entry(ChargePart.IMBALANCE, ApiPackChargeRequest.IMBALANCE_PERCENT.at(at)),
                entry(ChargePart.SUPPLY, ApiPackChargeRequest.SUPPLY.at(at)),
                entry(ChargePart.COLD_RATING, ApiPackChargeRequest.COLD_RATING_C.at(at)),
                entry(ChargePart.STORAGE, ApiPackChargeRequest.STORAGE_DAYS.at(at)));
    }
}
