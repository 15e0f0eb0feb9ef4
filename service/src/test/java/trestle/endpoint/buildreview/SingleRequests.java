package trestle.endpoint.buildreview;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.battery.Load;
import trestle.battery.PackTask;
import trestle.binding.Json;
import trestle.flight.Airframe;
import trestle.flight.PolarPower;
import trestle.magnetics.LeadRun;
import trestle.massbalance.Item;
import trestle.rails.Supply;
import trestle.review.Review;
import trestle.survey.SurveyEnergy;
import trestle.survey.SurveyTask;
import trestle.units.Area;
import trestle.units.Energy;
import trestle.units.Length;
import trestle.units.Mass;
import trestle.units.Resistance;
import trestle.units.Share;
import trestle.units.Temperature;
import trestle.wiring.WireTask;

/**
 * The requests that a review amounts to: what the document says, copied field by field, and what the
 * review put in, from the tasks that it worked.
 *
 * @param document of the aircraft
 * @param review of it
 */
record SingleRequests(JsonNode document, Review review) {

    ObjectNode balance() {
        ObjectNode request = SharedFields.of("mass-balance", "").copied(document, 0);
        ArrayNode items = (ArrayNode) request.path("items");
        List<Item> all = review.balanceTask().orElseThrow().items();
        for (int i = items.size(); i < all.size(); i++) {
            int pack = i - document.path("items").size();
            items.add(pack < document.path("packs").size() ? pack(pack, all.get(i)) : item(all.get(i)));
        }
        return request;
    }

    ObjectNode wire(int index) {
        WireTask task = review.runs().get(index).task();
        ObjectNode request = SharedFields.of("wire-sizing", "").copied(document, index);
        request.put("current_a", task.run().currentA());
        task.run().peak().ifPresent(peak -> {
            request.put("peak_current_a", peak.currentA());
            request.put("peak_duration_s", peak.durationS());
        });
        request.put("supply_voltage_v", task.run().supplyVoltageV());
        request.put("feeds_controller", review.runs().get(index).carriesPackCurrent());
        request.put("ambient_c", Temperature.cFromK(task.surroundings().ambientTemperatureK()));
        request.put("altitude_m", task.surroundings().altitudeM());
        task.plug().fullVoltageV().ifPresent(voltageV -> request.put("full_voltage_v", voltageV));
        task.plug()
                .sourceResistanceOhm()
                .ifPresent(ohm -> request.put("source_resistance_milliohm", Resistance.milliohmFromOhm(ohm)));
        task.flight()
                .ifPresent(flight -> request.putObject("flight")
                        .put("duration_s", flight.durationS())
                        .put("specific_power_w_per_kg", flight.specificPowerWPerKg()));
        return request;
    }

    ObjectNode rails() {
        Supply supply = review.railTask().orElseThrow().supply();
        ObjectNode request = SharedFields.of("rail-budget", "").copied(document, 0);
        request.putObject("supply")
                .put("full_voltage_v", supply.fullVoltageV())
                .put("lowest_voltage_v", supply.lowestVoltageV());
        return request;
    }

    ObjectNode compass() {
        ObjectNode request = SharedFields.of("compass-clearance", "").copied(document, 0);
        List<LeadRun> worked = review.compass().orElseThrow().task().runs();
        ArrayNode runs = request.putArray("runs");
        for (int i = 0; i < worked.size(); i++) {
            LeadRun lead = worked.get(i);
            ObjectNode run = SharedFields.of("compass-clearance", "/runs/0").copied(document, i);
            run.put("name", document.at("/compass/runs/" + i + "/run").asText());
            run.put("current_a", lead.currentA());
            lead.peakCurrentA().ifPresent(peakA -> run.put("peak_current_a", peakA));
            if (!run.has("separation_mm")) {
                run.put("separation_mm", Length.mmFromM(lead.separationM()));
            }
            // A compass that lies on a lead is moved a millimetre off it by the review.
            if (run.path("distance_mm").asDouble() < run.path("separation_mm").asDouble() / 2 + 1) {
                run.put("distance_mm", Length.mmFromM(lead.distanceM()));
            }
            runs.add(run);
        }
        return request;
    }

    ObjectNode survey() {
        ObjectNode request = SharedFields.of("survey-coverage", "").copied(document, 0);
        SurveyTask task = review.surveyTask().orElseThrow();
        request.put("airspeed_m_per_s", task.airspeedMPerS());
        SurveyEnergy energy = task.energy().orElseThrow();
        ObjectNode plan = request.putObject("energy");
        plan.put("cruise_power_w", energy.cruisePowerW());
        plan.put("usable_energy_wh", Energy.whFromJ(energy.usableJ()));
        plan.put("reserve_percent", Share.percentFromFraction(energy.reserveFraction()));
        for (String field : List.of("home", "way_km", "overhead_energy_wh")) {
            JsonNode given = document.at("/survey/" + field);
            if (!given.isMissingNode()) {
                plan.set(field, given);
            }
        }
        return request;
    }

    ObjectNode charge() {
        ObjectNode request = SharedFields.of("pack-charge", "").copied(document, 0);
        ArrayNode segments = segments();
        for (JsonNode segment : segments) {
            ((ObjectNode) segment).remove("state_of_charge_percent");
        }
        request.set("segments", segments);
        return request;
    }

    ObjectNode pack() {
        PackTask task = review.packTask();
        ObjectNode request = SharedFields.of("pack-energy", "").copied(document, 0);
        request.set("segments", segments());
        request.putObject("load").put("power_w", ((Load.Power) task.load()).powerW());
        request.put("ambient_c", Temperature.cFromK(task.surroundings().ambientK()));
        request.put(
                "lead_resistance_milliohm",
                Resistance.milliohmFromOhm(task.pack().leadResistanceOhm()));
        request.put("reserve_percent", Share.percentFromFraction(task.reserveFraction()));
        return request;
    }

    ObjectNode endurance() {
        ObjectNode request = flown("endurance", review.enduranceTask().airframe());
        PackTask task = review.packTask();
        ObjectNode pack = request.putObject("pack");
        pack.setAll(SharedFields.of("pack-energy", "").copied(document, 0));
        pack.remove("reserve_percent");
        pack.set("segments", segments());
        pack.put("ambient_c", Temperature.cFromK(task.surroundings().ambientK()));
        pack.put(
                "lead_resistance_milliohm",
                Resistance.milliohmFromOhm(task.pack().leadResistanceOhm()));
        review.enduranceTask().pack().ifPresent(carried -> {
            request.put("pack_mass_g", Mass.gFromKg(carried.massKg()));
            limit(request, carried.takeoffMassLimitKg());
        });
        PolarPower power = (PolarPower) review.enduranceTask().power();
        return request.put("systems_power_w", power.systemsPowerW());
    }

    ObjectNode launch() {
        return flown("launch-and-climb", review.launchTask().orElseThrow().airframe());
    }

    private ObjectNode flown(String calculation, Airframe airframe) {
        return SharedFields.of(calculation, "")
                .copied(document, 0)
                .put("takeoff_mass_g", Mass.gFromKg(airframe.massKg()))
                .put("wing_area_dm2", Area.dm2FromM2(airframe.wingAreaM2()))
                .put("wing_span_mm", Length.mmFromM(airframe.wingSpanM()));
    }

    private static void limit(ObjectNode request, OptionalDouble limitKg) {
        limitKg.ifPresent(kg -> request.put("max_takeoff_mass_g", Mass.gFromKg(kg)));
    }

    private ArrayNode segments() {
        ArrayNode segments = Json.MAPPER.createArrayNode();
        for (int i = 0; i < document.path("packs").size(); i++) {
            segments.add(SharedFields.of("pack-energy", "/segments/0").copied(document, i));
        }
        return segments;
    }

    /** A pack stands in the balance as the document places it; only its mass may be the review's. */
    private ObjectNode pack(int index, Item worked) {
        ObjectNode item = Json.MAPPER.createObjectNode();
        for (String field : List.of(
                "name",
                "arm_mm",
                "lateral_mm",
                "vertical_mm",
                "movable_from_mm",
                "movable_to_mm",
                "mass_g",
                "mass_tolerance_g")) {
            Optional.ofNullable(document.path("packs").get(index).get(field)).ifPresent(v -> item.set(field, v));
        }
        return item.has("mass_g") ? item : item.put("mass_g", Mass.gFromKg(worked.massKg()));
    }

    private static ObjectNode item(Item worked) {
        ObjectNode item = Json.MAPPER
                .createObjectNode()
                .put("name", worked.name())
                .put("quantity", worked.quantityCount())
                .put("mass_g", Mass.gFromKg(worked.massKg()))
                .put("arm_mm", Length.mmFromM(worked.armM()));
        worked.lateralM().ifPresent(m -> item.put("lateral_mm", Length.mmFromM(m)));
        worked.verticalM().ifPresent(m -> item.put("vertical_mm", Length.mmFromM(m)));
        return item;
    }
}
