package trestle.endpoint.packcharge;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import trestle.api.model.ApiJudgement;
import trestle.api.model.ApiPackChargeAnswer;
import trestle.api.model.ApiPackChargeRequest;
import trestle.api.model.ApiPackCovering;
import trestle.api.model.ApiPackSegment;
import trestle.api.model.ApiWorking;
import trestle.battery.Covering;
import trestle.battery.Pack;
import trestle.charging.ChargePlan;
import trestle.charging.ChargeTask;
import trestle.charging.ChargeWorkings;
import trestle.charging.PackCharge;
import trestle.endpoint.Calculation;
import trestle.endpoint.Done;
import trestle.endpoint.Estimating;
import trestle.endpoint.JudgementWriting;
import trestle.endpoint.Pointers;
import trestle.endpoint.Premises;
import trestle.endpoint.Reading;
import trestle.endpoint.WorkingWriting;
import trestle.endpoint.common.PackEstimates;
import trestle.endpoint.packenergy.PackReading;
import trestle.figure.ChargeFigure;
import trestle.figure.Theme;
import trestle.finding.Subject;

/** The door of {@code /v1/pack-charge}: reads the request once, writes the answer once. */
public final class PackChargeEndpoint
        implements Calculation<ApiPackChargeRequest, ChargeTask, PackCharge, ApiPackChargeAnswer> {
    private static final String SEGMENTS = ApiPackChargeRequest.SEGMENTS.at("");

    private static final List<String> MODELS = List.of(
            "cell of two electrodes with diffusion, kinetic and ohmic losses and self-heating, fitted to discharges of"
                    + " published parameter sets (O'Kane et al. 2022; Prada et al. 2013) and of a measured pouch cell"
                    + " (Rieger et al. 2016; Ai et al. 2020), with the current turned round",
            "what cells may take in the cold: exp(-3200 (1/T - 1/298.15)) of their rating, after the largest rate without"
                    + " plating of published sets (O'Kane et al. 2022; Chen et al. 2020)",
            "lead-acid battery: Peukert's relation with the exponent 1.2 (from memory)");

    private static final List<String> CAUTIONS = List.of(
            "Charge on a fireproof surface, away from what burns, outside the aircraft, and never unattended: a charging"
                    + " lithium pack can catch fire and cannot be put out easily.",
            "Set the charger to the chemistry and to the number of cells; a wrong setting overcharges them. Stop at"
                    + " swelling, smell, or a cell more than 10 °C warmer than its neighbours.",
            "The data sheet of the cells and the manual of the charger come before all of this; a damaged pack is not"
                    + " charged at all.");

    private static final String TOGETHER =
            "Before segments are charged as one string, check polarity and that their charge is alike.";

    @Override
    public String name() {
        return "pack-charge";
    }

    @Override
    public Class<ApiPackChargeRequest> requestType() {
        return ApiPackChargeRequest.class;
    }

    @Override
    public ApiPackChargeRequest complete(ApiPackChargeRequest request, Estimating estimating) {
        Double startC = request.packTemperatureC() == null ? request.ambientC() : request.packTemperatureC();
        return request.toBuilder()
                .segments(new PackEstimates(estimating, startC).segments(request.segments(), SEGMENTS))
                .build();
    }

    @Override
    public ChargeTask read(ApiPackChargeRequest request, Reading reading) {
        ChargeReading charge = new ChargeReading(request, "", reading);
        ChargePlan plan = charge.plan();
        Optional<Pack> pack = PackReading.pack(charged(request), request.leadResistanceMilliohm(), SEGMENTS, reading);
        Covering covering = Covering.valueOf(reading.orDefault(
                        request.covering(),
                        ApiPackCovering.WRAPPED,
                        ApiPackChargeRequest.COVERING.at(""),
                        "the request gives none")
                .name());
        pack.ifPresent(known -> charge.requireAlike(plan, known.segments()));
        reading.refuseContradictions();
        return plan.of(pack.orElseThrow().segments(), covering);
    }

    /** Segments that say nothing of their charge start from that of the whole. */
    private static List<ApiPackSegment> charged(ApiPackChargeRequest request) {
        double startPercent =
                Reading.or(request.startStateOfChargePercent(), ApiPackChargeRequest.START_STATE_OF_CHARGE_PERCENT);
        return request.segments().stream()
                .map(segment -> segment.stateOfChargePercent() == null
                        ? segment.toBuilder().stateOfChargePercent(startPercent).build()
                        : segment)
                .toList();
    }

    @Override
    public PackCharge work(ChargeTask read) {
        return PackCharge.of(read);
    }

    @Override
    public ApiPackChargeAnswer answer(Done<ApiPackChargeRequest, ChargeTask, PackCharge> done) {
        return ChargeWriting.write(
                done.read(), done.work(), judgement(done.read(), done.work(), pointers()::to, done.assumed()));
    }

    @Override
    public List<ApiWorking> workings(Done<ApiPackChargeRequest, ChargeTask, PackCharge> done) {
        return WorkingWriting.write(ChargeWorkings.of(done.read(), done.work()));
    }

    @Override
    public String figure(Done<ApiPackChargeRequest, ChargeTask, PackCharge> done, Theme theme) {
        return ChargeFigure.of(done.read(), done.work(), theme);
    }

    private static Pointers pointers() {
        Map<Enum<?>, String> places = new HashMap<>(PackReading.pointers(SEGMENTS, ""));
        places.putAll(ChargeReading.pointers(""));
        return new Pointers(places);
    }

    /**
     * What every answer about a charge carries.
     *
     * @param task what was asked
     * @param result what came of it
     * @param place where its parts stand in the request
     * @param assumed the defaults noted while reading the request
     * @return the judgement
     */
    public static ApiJudgement judgement(
            ChargeTask task, PackCharge result, Function<Subject, String> place, Premises assumed) {
        List<String> cautions = new ArrayList<>(CAUTIONS);
        if (task.pack().segments().size() > 1) {
            cautions.add(TOGETHER);
        }
        return JudgementWriting.of(result.judgement(), place, assumed, cautions, MODELS);
    }
}
