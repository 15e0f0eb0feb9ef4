package trestle.review;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import trestle.battery.PackEnergy;
import trestle.battery.PackTask;
import trestle.charging.ChargeTask;
import trestle.charging.PackCharge;
import trestle.finding.Judge;
import trestle.finding.Judgement;
import trestle.flight.EnduranceResult;
import trestle.flight.EnduranceTask;
import trestle.flight.SpeedPoint;
import trestle.joint.ChargeBack;
import trestle.joint.GoAround;
import trestle.joint.GoAroundTask;
import trestle.launch.LaunchAndClimb;
import trestle.launch.LaunchAndClimbResult;
import trestle.launch.LaunchAndClimbTask;
import trestle.massbalance.Balance;
import trestle.massbalance.BalanceTask;
import trestle.rails.RailBudget;
import trestle.rails.RailTask;
import trestle.survey.SurveyCoverage;
import trestle.survey.SurveyTask;

/**
 * What the review of an aircraft found. Each part is worked out when it is first asked for, so that one part alone costs
 * what it needs; a review is read by one thread.
 */
public final class Review {
    private final Round round;
    private final List<RunReview> runs;
    private final Once<PackTask> packTask;
    private final Once<PackEnergy> pack;
    private final Once<Optional<DriveMatch>> propulsion;
    private final Once<Optional<LaunchAndClimbTask>> launchTask;
    private final Once<Optional<LaunchAndClimbResult>> launch;
    private final Once<Optional<Compass>> compass;
    private final Once<Optional<PackCharge>> charge;
    private final Once<Optional<SurveyTask>> surveyTask;
    private final Once<Optional<SurveyCoverage>> survey;
    private final Once<Optional<GoAroundTask>> goAroundTask;
    private final Once<Optional<GoAround>> goAround;
    private final Once<Optional<MotorOutOfAircraft>> motorOut;
    private final Once<Judgement> ofItsParts;
    private final Once<Judgement> judgement;

    Review(Round round, List<RunReview> runs) {
        this.round = round;
        this.runs = List.copyOf(runs);
        Aircraft aircraft = round.base().aircraft();
        packTask = Once.of(round::packTask);
        pack = Once.of(() -> {
            PackEnergy energy = PackEnergy.of(packTask.get());
            return energy.withChargeTimeS(ChargeBack.timeS(packTask.get(), energy));
        });
        propulsion = Once.of(round::match);
        launchTask = Once.of(round::launchTask);
        launch = Once.of(() -> launchTask.get().map(LaunchAndClimb::of));
        compass = Once.of(() -> aircraft.compass().map(plan -> Compass.of(plan, this.runs)));
        surveyTask = Once.of(() -> aircraft.survey()
                .flatMap(plan -> cruise().map(point ->
                        plan.task(point, pack(), aircraft.flight().reserveFraction()))));
        survey = Once.of(() -> surveyTask().map(SurveyCoverage::of));
        charge = Once.of(() -> chargeTask().map(PackCharge::of));
        goAroundTask = Once.of(round::goAroundTask);
        goAround = Once.of(() -> goAroundTask.get().map(GoAround::of));
        motorOut = Once.of(round::motorOut);
        ofItsParts =
                Once.of(() -> ReviewChecks.of(aircraft, round.cruise(), round.fullThrottle(), round.pack(), this.runs));
        judgement = Once.of(() -> {
            Judge judge = new Judge();
            judge.join(ofItsParts.get());
            judge.join(GoAroundChecks.of(aircraft, goAround()));
            judge.join(MotorOutChecks.of(aircraft, motorOut()));
            return judge.judgement();
        });
    }

    /** The last pass. */
    Round round() {
        return round;
    }

    /** The aircraft. */
    public Aircraft aircraft() {
        return round.base().aircraft();
    }

    /** Mass at take-off, kg. */
    public double massKg() {
        return round.massKg();
    }

    /** Mass and balance with packs and wires; empty where only the mass of the whole is known. */
    public Optional<Balance> balance() {
        return round.balance();
    }

    /** What mass and balance was asked; empty where only the mass of the whole is known. */
    public Optional<BalanceTask> balanceTask() {
        return round.balanceTask();
    }

    /** Endurance at that mass, on these packs. */
    public EnduranceResult endurance() {
        return round.endurance();
    }

    /** What the flight was asked. */
    public EnduranceTask enduranceTask() {
        return round.enduranceTask();
    }

    /** The flight that packs and wires are judged at; empty where none can be flown. */
    public Optional<SpeedPoint> cruise() {
        return round.cruise();
    }

    /** The packs at cruise power. */
    public PackEnergy pack() {
        return pack.get();
    }

    /** What the packs were asked. */
    public PackTask packTask() {
        return packTask.get();
    }

    /** The packs at full throttle; empty where no power is given for it. */
    public Optional<FullThrottle> fullThrottle() {
        return round.fullThrottle();
    }

    /** The runs of wire, in their order. */
    public List<RunReview> runs() {
        return runs;
    }

    /** The drive at cruise and full throttle; empty where only efficiencies are known. */
    public Optional<DriveMatch> propulsion() {
        return propulsion.get();
    }

    /** The regulated rails; empty where there are none. */
    public Optional<RailBudget> rails() {
        return round.base().rails();
    }

    /** What the rails were asked; empty where there are none. */
    public Optional<RailTask> railTask() {
        return round.base().railTask();
    }

    /** Launch, climb, glide and turn; empty where no launch or no thrust is given. */
    public Optional<LaunchAndClimbResult> launch() {
        return launch.get();
    }

    /** What the launch was asked; empty where no launch or no thrust is given. */
    public Optional<LaunchAndClimbTask> launchTask() {
        return launchTask.get();
    }

    /** The compass; empty where none is described. */
    public Optional<Compass> compass() {
        return compass.get();
    }

    /** The charge of the packs after a flight; empty where it is not described. */
    public Optional<PackCharge> charge() {
        return charge.get();
    }

    /** What the charge was asked; empty where it is not described. */
    public Optional<ChargeTask> chargeTask() {
        return aircraft()
                .charging()
                .map(plan -> plan.afterFlight(aircraft().segments(), aircraft().covering()));
    }

    /** How the ground is covered; empty where there is none to cover, or no cruise. */
    public Optional<SurveyCoverage> survey() {
        return survey.get();
    }

    /** What the survey was asked; empty where there is none, or no cruise. */
    public Optional<SurveyTask> surveyTask() {
        return surveyTask.get();
    }

    /** The go-around on what the flight leaves; empty where nothing flies, or the full power is not known. */
    public Optional<GoAround> goAround() {
        return goAround.get();
    }

    /** What the go-around was asked; empty where it is. */
    public Optional<GoAroundTask> goAroundTask() {
        return goAroundTask.get();
    }

    /** One motor of several stopped; empty with one motor, or where a place is not known. */
    public Optional<MotorOutOfAircraft> motorOut() {
        return motorOut.get();
    }

    /** Voltage that a go-around leaves above what the rails need, V; empty without one or the other. */
    public OptionalDouble goAroundRailMarginV() {
        OptionalDouble neededV = GoAroundChecks.neededV(aircraft());
        return neededV.isPresent() && goAround().isPresent()
                ? OptionalDouble.of(goAround().get().lowestVoltageV() - neededV.getAsDouble())
                : OptionalDouble.empty();
    }

    /** Codes of what stops the whole, worked out without what only its sentences need: for a sample. */
    public Set<String> stops() {
        Set<String> stops = new TreeSet<>(ofItsParts.get().stops());
        stops.addAll(MotorOutChecks.of(aircraft(), motorOut()).stops());
        goAroundTask.get().ifPresent(task -> stops.addAll(GoAroundChecks.stops(aircraft(), task)));
        return stops;
    }

    /** What is to be said of the whole; what is to be said of a part is in the part. */
    public Judgement judgement() {
        return judgement.get();
    }
}
