package trestle.endpoint.packenergy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import trestle.api.model.ApiJudgement;
import trestle.api.model.ApiPackEnergyAnswer;
import trestle.api.model.ApiPackEnergyRequest;
import trestle.api.model.ApiPackLoad;
import trestle.api.model.ApiWorking;
import trestle.battery.Cutoff;
import trestle.battery.Load;
import trestle.battery.Pack;
import trestle.battery.PackEnergy;
import trestle.battery.PackTask;
import trestle.battery.PackWorkings;
import trestle.battery.PowerStep;
import trestle.battery.Surroundings;
import trestle.endpoint.Calculation;
import trestle.endpoint.Done;
import trestle.endpoint.Estimating;
import trestle.endpoint.JudgementWriting;
import trestle.endpoint.MainFigure;
import trestle.endpoint.Pointers;
import trestle.endpoint.Premises;
import trestle.endpoint.Reading;
import trestle.endpoint.WorkingWriting;
import trestle.endpoint.common.PackEstimates;
import trestle.figure.PackFigure;
import trestle.figure.Theme;
import trestle.finding.Subject;
import trestle.joint.ChargeBack;
import trestle.units.Share;

/** The door of {@code /v1/pack-energy}: reads the request once, writes the answer once. */
public final class PackEnergyEndpoint
        implements Calculation<ApiPackEnergyRequest, PackTask, PackEnergy, ApiPackEnergyAnswer> {
    private static final String SEGMENTS = ApiPackEnergyRequest.SEGMENTS.at("");
    private static final String LOAD = ApiPackEnergyRequest.LOAD.at("");

    private static final List<String> MODELS = List.of(
            "cell of two electrodes with diffusion, kinetic and ohmic losses and self-heating, fitted to published"
                    + " parameter sets (O'Kane et al. 2022; Prada et al. 2013) and to a measured pouch cell"
                    + " (Rieger et al. 2016; Ai et al. 2020)",
            "growth of the drop in the cold: the middle of one measured cell of each chemistry (Kollmeyer et al., doi"
                    + " 10.17632/cp3473x7xv.3 and 10.17632/4fx8cjprxm.1; Plett 2015)",
            "segments in series share one current; each keeps its own charge and" + " temperature");

    @Override
    public String name() {
        return "pack-energy";
    }

    @Override
    public Class<ApiPackEnergyRequest> requestType() {
        return ApiPackEnergyRequest.class;
    }

    @Override
    public ApiPackEnergyRequest complete(ApiPackEnergyRequest request, Estimating estimating) {
        return request.toBuilder()
                .segments(new PackEstimates(estimating, request.ambientC()).segments(request.segments(), SEGMENTS))
                .build();
    }

    @Override
    public void figures(PackEnergy work, Map<MainFigure, Double> figures) {
        PackWriting.figures(work, figures);
    }

    @Override
    public Set<String> stops(PackEnergy work) {
        return work.judgement().stops();
    }

    @Override
    public PackTask read(ApiPackEnergyRequest request, Reading reading) {
        Optional<Load> load = load(request.load(), reading);
        Optional<Pack> pack = PackReading.pack(request.segments(), request.leadResistanceMilliohm(), SEGMENTS, reading);
        Optional<Cutoff> cutoff = pack.map(p -> PackReading.cutoff(
                request.cutoff(), p.seriesCount(), p.fullVoltageV(), ApiPackEnergyRequest.CUTOFF.at(""), reading));
        Surroundings surroundings = PackReading.surroundings(request.ambientC(), request.covering(), "", reading);
        reading.refuseContradictions();
        return new PackTask(
                pack.orElseThrow(),
                load.orElseThrow(),
                cutoff.orElseThrow(),
                surroundings,
                Share.fractionFromPercent(Reading.or(request.reservePercent(), ApiPackEnergyRequest.RESERVE_PERCENT)));
    }

    @Override
    public PackEnergy work(PackTask read) {
        PackEnergy energy = PackEnergy.of(read);
        return energy.withChargeTimeS(ChargeBack.timeS(read, energy));
    }

    @Override
    public ApiPackEnergyAnswer answer(Done<ApiPackEnergyRequest, PackTask, PackEnergy> done) {
        Pointers pointers = new Pointers(PackReading.pointers(SEGMENTS, ""));
        return PackWriting.write(
                done.work(),
                names(done.read().pack()),
                judgement(done.read(), done.work(), pointers::to, done.assumed()));
    }

    @Override
    public List<ApiWorking> workings(Done<ApiPackEnergyRequest, PackTask, PackEnergy> done) {
        return WorkingWriting.write(PackWorkings.of(done.read(), done.work()));
    }

    @Override
    public String figure(Done<ApiPackEnergyRequest, PackTask, PackEnergy> done, Theme theme) {
        return PackFigure.of(done.read(), done.work(), theme);
    }

    /**
     * What every answer about a pack carries.
     *
     * @param task what was asked
     * @param result what came of it
     * @param place where the parts of a pack stand in the request
     * @param assumed the defaults noted while reading the request
     * @return the judgement
     */
    public static ApiJudgement judgement(
            PackTask task, PackEnergy result, Function<Subject, String> place, Premises assumed) {
        return JudgementWriting.of(result.judgement(), place, assumed, PackCautions.of(task), MODELS);
    }

    private static Optional<Load> load(ApiPackLoad load, Reading reading) {
        reading.exactlyOne(
                LOAD,
                List.of(ApiPackLoad.POWER_W.name(), ApiPackLoad.CURRENT_A.name(), ApiPackLoad.PROFILE.name()),
                load.powerW(),
                load.currentA(),
                load.profile());
        if (load.powerW() != null) {
            return Optional.of(new Load.Power(load.powerW()));
        }
        if (load.currentA() != null) {
            return Optional.of(new Load.Current(load.currentA()));
        }
        if (load.profile() == null) {
            return Optional.empty();
        }
        if (load.profile().stream().noneMatch(step -> step.powerW() > 0)) {
            reading.fault(ApiPackLoad.PROFILE.at(LOAD), "contradiction", "one step or more must be above 0 W");
            return Optional.empty();
        }
        return Optional.of(new Load.Profile(load.profile().stream()
                .map(step -> new PowerStep(step.powerW(), step.durationS()))
                .toList()));
    }

    private static List<String> names(Pack pack) {
        return IntStream.range(0, pack.segments().size()).mapToObj(pack::nameOf).toList();
    }
}
