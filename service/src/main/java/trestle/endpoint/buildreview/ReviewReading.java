package trestle.endpoint.buildreview;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import trestle.api.Field;
import trestle.api.model.ApiAircraftCompass;
import trestle.api.model.ApiAircraftSurvey;
import trestle.api.model.ApiAirframe;
import trestle.api.model.ApiBuildReviewRequest;
import trestle.api.model.ApiFitting;
import trestle.api.model.ApiInstalledRun;
import trestle.api.model.ApiLaunch;
import trestle.api.model.ApiLaunchAndClimbRequest;
import trestle.api.model.ApiPackCovering;
import trestle.api.model.ApiPassingRun;
import trestle.api.model.ApiPlannedFlight;
import trestle.api.model.ApiRunCurrent;
import trestle.battery.Covering;
import trestle.battery.Cutoff;
import trestle.battery.Pack;
import trestle.battery.Surroundings;
import trestle.charging.ChargePlan;
import trestle.endpoint.Reading;
import trestle.endpoint.common.FlightReading;
import trestle.endpoint.compassclearance.CompassReading;
import trestle.endpoint.launch.FlightWind;
import trestle.endpoint.launch.LaunchReading;
import trestle.endpoint.massbalance.AirframeReading;
import trestle.endpoint.massbalance.BalanceReading;
import trestle.endpoint.packcharge.ChargeReading;
import trestle.endpoint.packenergy.PackReading;
import trestle.endpoint.railbudget.RailReading;
import trestle.endpoint.surveycoverage.SurveyReading;
import trestle.endpoint.wiresizing.WireReading;
import trestle.flight.Conditions;
import trestle.flight.Leg;
import trestle.launch.Launch;
import trestle.launch.LaunchWind;
import trestle.launch.Turn;
import trestle.magnetics.CompassTask;
import trestle.massbalance.Item;
import trestle.rails.Rail;
import trestle.review.Aerodynamics;
import trestle.review.Aircraft;
import trestle.review.CompassLead;
import trestle.review.CompassPlan;
import trestle.review.Fitting;
import trestle.review.InstalledRun;
import trestle.review.LaunchPlan;
import trestle.review.PlannedFlight;
import trestle.review.Propulsion;
import trestle.review.SurveyOfAircraft;
import trestle.survey.SurveyPlan;
import trestle.units.Angle;
import trestle.units.Energy;
import trestle.units.Length;
import trestle.units.Mass;
import trestle.units.Temperature;

/**
 * Reads the document of an aircraft.
 *
 * @param request the document
 * @param reading notes defaults and contradictions
 */
record ReviewReading(ApiBuildReviewRequest request, Reading reading) {
    private static final String NOT_GIVEN = "the document gives none";

    private static final String USUAL = "the document gives none; common practice, no source";

    Aircraft aircraft() {
        ApiAirframe airframe = request.airframe();
        BalanceReading parts = new BalanceReading(reading);
        boolean tailless = Boolean.TRUE.equals(airframe.tailless());
        AirframeReading.marginNeedsTail(
                airframe.targetStaticMarginPercent(), airframe.tail(), tailless, "/airframe", reading);
        var tail = AirframeReading.tail(
                airframe.tail(), tailless, airframe.fuselageShiftPercentMac(), "/airframe", reading);
        var limits = Optional.ofNullable(airframe.limits()).map(l -> parts.limits(l, true, "/airframe/limits"));
        var target = parts.target(
                airframe.targetArmMm(), airframe.targetPercentMac(), airframe.targetStaticMarginPercent(), "/airframe");
        Optional<Pack> pack = PackReading.pack(request.packs(), null, "/packs", reading);
        List<Optional<InstalledRun>> runs = runs();
        var items = parts.items(Reading.listed(request.items()), "/items");
        parts.spreadNeeds(Reading.listed(request.items()), true, airframe.tail() != null, "/items");
        Aerodynamics aerodynamics = aerodynamics(airframe);
        Optional<Cutoff> cutoff = pack.map(this::cutoff);
        Optional<Propulsion> propulsion = propulsion();
        Optional<List<Rail>> rails = rails();
        Optional<CompassPlan> compass = compass();
        Optional<SurveyOfAircraft> survey =
                Optional.ofNullable(request.survey()).flatMap(this::survey);
        Optional<ChargePlan> charging = charging(pack);
        PlannedFlight flight = flight();
        InstalledPackReading installed = new InstalledPackReading(request.packs(), "/packs", reading);
        List<Item> packItems = installed.items(parts, pack);
        double systemsPowerW = systemsPowerW();
        Covering covering = covering();
        Set<Fitting> notFitted = notFitted();
        reading.refuseContradictions();
        return new Aircraft(
                items,
                Reading.optional(airframe.takeoffMassG(), Mass::kgFromG),
                InstalledPackReading.joined(packItems, pack.orElseThrow()),
                cutoff.orElseThrow(),
                covering,
                AirframeReading.wing(WingCompletion.of(airframe.wing())),
                tail,
                new MarginsReading(request, reading).fin(),
                limits,
                target,
                Optional.ofNullable(request.weighing()).map(BalanceReading::weighing),
                aerodynamics,
                propulsion.orElseThrow(),
                systemsPowerW,
                runs.stream().map(Optional::orElseThrow).toList(),
                rails.orElseThrow(),
                compass,
                survey,
                charging,
                new MarginsReading(request, reading).goAround(),
                flight,
                notFitted);
    }

    private Aerodynamics aerodynamics(ApiAirframe airframe) {
        return new Aerodynamics(
                airframe.drag().zeroLiftCoefficient(),
                airframe.drag().oswaldEfficiency(),
                reading.orDefault(airframe.maxLiftCoefficient(), ApiAirframe.MAX_LIFT_COEFFICIENT, "/airframe", USUAL),
                Reading.optional(airframe.neverExceedAirspeedMPerS()));
    }

    private Optional<Propulsion> propulsion() {
        return new AircraftPropulsionReading(request.propulsion(), "/propulsion", reading).read();
    }

    private Optional<List<Rail>> rails() {
        return RailReading.rails(Reading.listed(request.rails()), "/rails", reading);
    }

    private Optional<SurveyOfAircraft> survey(ApiAircraftSurvey survey) {
        String at = ApiBuildReviewRequest.SURVEY.at("");
        SurveyReading read = new SurveyReading(survey, at, reading);
        Optional<SurveyPlan> plan = read.plan();
        String home = ApiAircraftSurvey.HOME.at(at);
        reading.atMostOne(
                at,
                List.of(ApiAircraftSurvey.HOME.name(), ApiAircraftSurvey.WAY_KM.name()),
                survey.home(),
                survey.wayKm());
        if (survey.home() != null && survey.area() == null) {
            reading.fault(home, "contradiction", "home needs a polygon to be away from: give way_km, or area");
        }
        return plan.map(known -> new SurveyOfAircraft(
                known,
                Energy.jFromWh(Reading.or(survey.overheadEnergyWh(), ApiAircraftSurvey.OVERHEAD_ENERGY_WH)),
                survey.home() == null ? Optional.empty() : read.position(survey.home(), home),
                Reading.optional(survey.wayKm(), Length::mFromKm).orElse(0)));
    }

    private Optional<ChargePlan> charging(Optional<Pack> pack) {
        return Optional.ofNullable(request.charging()).map(charging -> {
            ChargeReading charge = new ChargeReading(charging, "/charging", reading);
            ChargePlan plan = charge.plan();
            pack.ifPresent(known -> charge.requireAlike(plan, known.segments()));
            return plan;
        });
    }

    private Optional<CompassPlan> compass() {
        ApiAircraftCompass compass = request.compass();
        if (compass == null) {
            return Optional.empty();
        }
        List<String> names = Reading.listed(request.wiring()).stream()
                .map(ApiInstalledRun::name)
                .toList();
        Optional<List<CompassLead>> leads =
                Reading.each(compass.runs(), "/compass/runs", (run, at) -> lead(run, names, at));
        return leads.map(all -> {
            CompassTask field = CompassReading.task(
                    List.of(), compass.earthField(), compass.allowedHeadingErrorDeg(), "/compass", reading);
            return new CompassPlan(all, field.earthHorizontalT(), field.allowedHeadingErrorRad(), field.allowedBasis());
        });
    }

    private Optional<CompassLead> lead(ApiPassingRun run, List<String> names, String at) {
        int index = names.indexOf(run.run());
        if (index < 0) {
            reading.fault(
                    at + "/run",
                    "unknown_value",
                    "there is no run of that name in wiring; its runs are " + String.join(", ", names));
            return Optional.empty();
        }
        return Optional.of(new CompassLead(
                index,
                Reading.optional(run.separationMm(), Length::mFromMm),
                Reading.or(run.twisted(), ApiPassingRun.TWISTED),
                Length.mFromMm(run.distanceMm())));
    }

    private Optional<LaunchPlan> launch(FlightWind flight) {
        ApiLaunch launch = request.flight().launch();
        if (launch == null) {
            return Optional.empty();
        }
        LaunchReading launching = new LaunchReading(launch, "/flight/launch", reading);
        Optional<Launch> read = launching.read();
        double motorDelayS = launching.motorDelayS();
        Turn turn = Turn.ofBankRad(Angle.radFromDeg(ApiLaunchAndClimbRequest.BANK_DEG.fallback()));
        Optional<LaunchWind> wind = launching.wind(Optional.of(flight));
        return read.flatMap(it -> wind.map(w -> new LaunchPlan(
                it, w, launching.limits(request.airframe().neverExceedAirspeedMPerS()), motorDelayS, turn)));
    }

    private Set<Fitting> notFitted() {
        Set<Fitting> absent = EnumSet.noneOf(Fitting.class);
        for (ApiFitting fitting : Reading.listed(request.notFitted())) {
            absent.add(Fitting.valueOf(fitting.name()));
        }
        contradicted(
                absent,
                Fitting.WIRING,
                ApiBuildReviewRequest.WIRING,
                !Reading.listed(request.wiring()).isEmpty());
        contradicted(
                absent,
                Fitting.RAILS,
                ApiBuildReviewRequest.RAILS,
                !Reading.listed(request.rails()).isEmpty());
        contradicted(absent, Fitting.COMPASS, ApiBuildReviewRequest.COMPASS, request.compass() != null);
        return absent;
    }

    private void contradicted(Set<Fitting> absent, Fitting fitting, Field<?> field, boolean given) {
        if (given && absent.contains(fitting)) {
            reading.fault(
                    field.at(""), "contradiction", field.name() + " is described, and not_fitted says there is none");
        }
    }

    private double systemsPowerW() {
        return reading.orDefault(request.systemsPowerW(), ApiBuildReviewRequest.SYSTEMS_POWER_W, "", NOT_GIVEN);
    }

    private Cutoff cutoff(Pack pack) {
        return PackReading.cutoff(request.cutoff(), pack.seriesCount(), pack.fullVoltageV(), "/cutoff", reading);
    }

    private Covering covering() {
        return Covering.valueOf(reading.orDefault(request.covering(), ApiPackCovering.WRAPPED, "/covering", NOT_GIVEN)
                .name());
    }

    private List<Optional<InstalledRun>> runs() {
        List<ApiInstalledRun> given = Reading.listed(request.wiring());
        return IntStream.range(0, given.size())
                .mapToObj(i -> run(given.get(i), "/wiring/" + i))
                .toList();
    }

    private Optional<InstalledRun> run(ApiInstalledRun run, String at) {
        boolean pack = run.carries() == ApiRunCurrent.PACK_CURRENT;
        if (pack) {
            takesNoCurrent(run, at);
        } else if (run.currentA() == null) {
            reading.fault(ApiInstalledRun.CURRENT_A.at(at), "missing", "a run of given_current needs it");
            return Optional.empty();
        }
        if (run.supplyVoltageV() == null) {
            reading.assume(
                    ApiInstalledRun.SUPPLY_VOLTAGE_V.at(at),
                    "the nominal voltage of the pack",
                    "the document gives none; the drop is held against it");
        }
        return WireReading.laid(run, run.name(), !pack, at, reading)
                .map(laid -> new InstalledRun(
                        laid.plan(),
                        pack ? OptionalDouble.empty() : Reading.optional(run.currentA()),
                        laid.peak(),
                        Reading.optional(run.supplyVoltageV()),
                        Reading.optional(run.armMm(), Length::mFromMm)));
    }

    private void takesNoCurrent(ApiInstalledRun run, String at) {
        String because = "a run of pack_current takes its current from the aircraft";
        if (run.currentA() != null) {
            reading.fault(ApiInstalledRun.CURRENT_A.at(at), "contradiction", because);
        }
        if (run.peakCurrentA() != null) {
            reading.fault(ApiInstalledRun.PEAK_CURRENT_A.at(at), "contradiction", because);
        }
    }

    /** Air that an aircraft may meet can be colder than the cell model goes. */
    private void packStands(double airK) {
        if (airK < Surroundings.COLDEST_K || airK > Surroundings.HOTTEST_K) {
            reading.fault(
                    "/flight/conditions/temperature_c",
                    "outside_model",
                    String.format(
                            Locale.ROOT,
                            "air of %.0f °C is outside the %.0f to %.0f °C that the pack model" + " covers",
                            Temperature.cFromK(airK),
                            Temperature.cFromK(Surroundings.COLDEST_K),
                            Temperature.cFromK(Surroundings.HOTTEST_K)));
        }
    }

    private PlannedFlight flight() {
        ApiPlannedFlight flight = request.flight();
        double headwindMPerS = Reading.or(flight.headwindMPerS(), ApiPlannedFlight.HEADWIND_M_PER_S);
        Double packC = flight.packTemperatureC();
        Conditions conditions = FlightReading.conditions(flight.conditions(), "/flight/conditions", reading);
        packStands(conditions.air().temperatureK());
        double reserve = FlightReading.reserveFraction(flight.reservePercent(), "/flight", reading);
        List<Leg> legs =
                FlightReading.legs(flight.legs(), flight.airspeedMPerS(), headwindMPerS, "/flight/legs", reading);
        return new PlannedFlight(
                conditions,
                packC == null ? OptionalDouble.empty() : OptionalDouble.of(Temperature.kFromC(packC)),
                headwindMPerS,
                reserve,
                Reading.optional(flight.airspeedMPerS()),
                legs,
                launch(FlightWind.of(headwindMPerS, legs)));
    }
}
