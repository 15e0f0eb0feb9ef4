package trestle.structure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Loads on an airframe. */
public final class AirframeLoads {
    /** Bending beyond the last spar over that of the root that needs no spar. */
    private static final double NO_SPAR_NEEDED = 0.02;

    private static final int SHOWN = 14;
    private static final double FORWARD = 9;
    private static final double UP = 3;
    private static final double SIDE = 1.5;

    private final LoadsTask task;
    private final double stall;
    private final Beam beam;
    private final Beam oneG;
    private final List<Optional<StationStress>> stresses = new ArrayList<>();

    private AirframeLoads(LoadsTask task) {
        this.task = task;
        this.stall = Flight.stallMPerS(task.massKg(), task.wing().areaM2(), task.maxLift());
        double n = task.designLoadFactor();
        this.beam = WingLoads.beam(task, n, n);
        this.oneG = WingLoads.beam(task, 1, 1);
        for (int i = 0; i + 1 < beam.count(); i++) {
            stresses.add(stressAt(i));
        }
        stresses.add(Optional.empty());
    }

    /**
     * Works out the loads and judges them.
     *
     * @param task the aircraft
     * @return loads, reserves and what is to be said
     */
    public static LoadsResult of(LoadsTask task) {
        LoadsResult result = new AirframeLoads(task).result();
        return result.judged(LoadsChecks.of(task, result));
    }

    private LoadsResult result() {
        List<JointLoad> joints = task.joints().stream()
                .map(j -> JointLoad.of(j, beam, task.factorOfSafety()))
                .toList();
        boolean whole = gapless();
        Optional<Weakest> weakest = whole ? weakest(joints) : Optional.empty();
        double limit = task.statedLimit()
                .orElse(task.proofLoadFactor()
                        .orElse(weakest.map(Weakest::limitLoadFactor).orElse(LoadsTask.CONVENTION)));
        GustCase gust = new GustCase(task, stall);
        List<Double> deflection = oneG.deflectionM(this::stiffness);
        Optional<LandingLoad> landing = task.landing().map(this::landing);
        return new LoadsResult(
                stall,
                Flight.manoeuvreMPerS(stall, limit),
                limit,
                from(weakest),
                envelope(gust, limit),
                gust,
                stations(whole ? Optional.of(deflection) : Optional.empty()),
                joints,
                weakest,
                whole ? OptionalDouble.of(deflection.get(deflection.size() - 1)) : OptionalDouble.empty(),
                proof(limit),
                landing,
                task.restraints().stream().map(r -> restraint(r, landing)).toList(),
                task.surfaces().stream().map(SurfaceLoad::of).toList(),
                stresses.stream().flatMap(Optional::stream).toList(),
                null);
    }

    private LimitFrom from(Optional<Weakest> weakest) {
        if (task.statedLimit().isPresent()) {
            return LimitFrom.STATED;
        }
        if (task.proofLoadFactor().isPresent()) {
            return LimitFrom.PROOF_TEST;
        }
        return weakest.isPresent() ? LimitFrom.WING_STRENGTH : LimitFrom.CONVENTION;
    }

    private double middle(int i) {
        return (beam.stationM(i) + beam.stationM(i + 1)) / 2;
    }

    private List<Spar> at(double lateralM) {
        return task.spars().stream().filter(s -> s.covers(lateralM)).toList();
    }

    /** The tip beyond the last spar bends no further. */
    private double stiffness(double lateralM) {
        double sum = at(lateralM).stream().mapToDouble(Spar::stiffnessNm2).sum();
        return sum > 0 ? sum : Double.MAX_VALUE;
    }

    private Optional<StationStress> stressAt(int i) {
        double y = beam.stationM(i);
        return stressAt(y, middle(i), beam.shearN(y), beam.bendingNm(y));
    }

    private Optional<StationStress> stressAt(double lateralM, double justOutboardM, double shearN, double bendingNm) {
        List<Spar> spars = at(justOutboardM);
        double all = spars.stream().mapToDouble(Spar::stiffnessNm2).sum();
        return spars.stream()
                .map(s -> new StationStress(
                        lateralM,
                        s,
                        shearN * s.stiffnessNm2() / all,
                        bendingNm * s.stiffnessNm2() / all,
                        Stress.worst(
                                s,
                                shearN * s.stiffnessNm2() / all,
                                bendingNm * s.stiffnessNm2() / all,
                                task.factorOfSafety(),
                                Stress.wrinkling(s, task.foamModulusPa(), task.foamShearPa()))))
                .min(Comparator.comparingDouble(s -> s.stress().reserve()));
    }

    private boolean gapless() {
        double least = NO_SPAR_NEEDED * Math.abs(beam.bendingNm(0));
        for (int i = 0; i + 1 < beam.count(); i++) {
            if (stresses.get(i).isEmpty() && Math.abs(beam.bendingNm(beam.stationM(i))) > least) {
                return false;
            }
        }
        return true;
    }

    private Optional<Weakest> weakest(List<JointLoad> joints) {
        List<Weakest> all = new ArrayList<>();
        for (int i = 0; i < stresses.size(); i++) {
            double y = beam.stationM(i);
            stresses.get(i)
                    .ifPresent(s -> all.add(Weakest.of(
                            s.spar().said(), y, s.stress().mode(), s.stress().reserve(), task)));
        }
        for (JointLoad joint : joints) {
            String name = "joiner of " + joint.name();
            all.add(Weakest.of(
                    name,
                    joint.lateralM(),
                    joint.stress().mode(),
                    joint.stress().reserve(),
                    task));
            joint.bearingReserve()
                    .ifPresent(r -> all.add(
                            Weakest.of("socket of " + joint.name(), joint.lateralM(), FailureMode.BEARING, r, task)));
        }
        return all.stream().min(Comparator.comparingDouble(Weakest::reserve));
    }

    private List<EnvelopePoint> envelope(GustCase gust, double limit) {
        TreeSet<Double> speeds = new TreeSet<>();
        speeds.add(stall);
        speeds.add(Flight.manoeuvreMPerS(stall, limit));
        speeds.add(task.cruiseMPerS());
        Stream.of(task.topMPerS(), task.neverExceedMPerS(), task.diveMPerS()).forEach(s -> s.ifPresent(speeds::add));
        return speeds.stream()
                .map(v -> {
                    double stalled = v * v / (stall * stall);
                    return new EnvelopePoint(
                            v,
                            Math.min(stalled, limit),
                            Math.max(stalled * task.minLift() / task.maxLift(), task.negativeLimit()),
                            gust.up(v),
                            gust.down(v));
                })
                .toList();
    }

    private List<StationLoad> stations(Optional<List<Double>> deflection) {
        List<Double> torsion = WingLoads.torsionNm(task, beam, task.designLoadFactor());
        TreeSet<Integer> shown = new TreeSet<>();
        double half = task.wing().halfSpanM();
        double next = 0;
        for (int i = 0; i < beam.count(); i++) {
            double y = beam.stationM(i);
            boolean joint = task.joints().stream().anyMatch(j -> j.lateralM() == y);
            if (y >= next || joint || i + 1 == beam.count()) {
                shown.add(i);
                next = y >= next ? next + half / SHOWN : next;
            }
        }
        return shown.stream()
                .map(i -> new StationLoad(
                        beam.stationM(i),
                        task.wing().chordM(beam.stationM(i)),
                        task.designLoadFactor() * task.weightN() * task.lift().perLength(task.wing(), beam.stationM(i)),
                        beam.shearN(beam.stationM(i)),
                        beam.bendingNm(beam.stationM(i)),
                        torsion.get(i),
                        stresses.get(i).map(StationStress::stress),
                        deflection
                                .map(d -> OptionalDouble.of(d.get(i) * task.designLoadFactor()))
                                .orElse(OptionalDouble.empty())))
                .toList();
    }

    private ProofTest proof(double limit) {
        double each = Math.max(0, task.massKg() - task.wingMassKg()) / 2;
        double load = limit * each * Flight.GRAVITY_M_PER_S2;
        double at = task.lift().centroidM(task.wing());
        return new ProofTest(limit, load, at, load * at);
    }

    private LandingLoad landing(Landing landing) {
        double sink = landing.sinkMPerS()
                .orElse(Flight.sinkMPerS(task.weightN() / task.wing().areaM2()));
        double factor = 1 + LandingLoad.increment(sink, landing.stoppingM(), landing.efficiency());
        Beam down = WingLoads.beam(task, landing.liftFraction(), factor);
        boolean slides =
                landing.slideM().isPresent() && landing.touchdownMPerS().isPresent();
        return new LandingLoad(
                sink,
                LandingLoad.energyJ(task.massKg(), sink),
                factor,
                slides
                        ? OptionalDouble.of(Flight.pull(
                                landing.touchdownMPerS().getAsDouble(),
                                landing.slideM().getAsDouble()))
                        : OptionalDouble.empty(),
                Math.max(0, -down.bendingNm(0)),
                down.bendingNm(0) < 0
                        ? stressAt(0, middle(0), down.shearN(0), down.bendingNm(0))
                                .map(s -> OptionalDouble.of(s.stress().reserve()))
                                .orElse(OptionalDouble.empty())
                        : OptionalDouble.empty());
    }

    private RestraintLoad restraint(Restraint held, Optional<LandingLoad> landing) {
        double weight = held.massKg() * Flight.GRAVITY_M_PER_S2;
        double slide = landing.flatMap(l -> l.forwardLoadFactor().isPresent()
                        ? Optional.of(l.forwardLoadFactor().getAsDouble())
                        : Optional.empty())
                .orElse(0.0);
        return new RestraintLoad(
                held.name(),
                weight * Math.max(FORWARD, slide),
                weight * task.launch().map(LaunchPull::peakLoadFactor).orElse(0.0),
                weight * Math.max(UP, -task.negativeLimit()),
                weight * SIDE,
                slide > FORWARD ? "landing" : "crash");
    }
}
