package trestle.review;

import java.util.List;
import java.util.Optional;
import trestle.battery.PackEnergy;
import trestle.finding.Judgement;
import trestle.flight.EnduranceResult;
import trestle.flight.SpeedPoint;
import trestle.launch.LaunchAndClimbResult;
import trestle.massbalance.Balance;
import trestle.rails.RailBudget;

/**
 * What the review of an aircraft found.
 *
 * @param massKg mass at take-off, kg
 * @param balance mass and balance with packs and wires; empty where only the mass of the whole is known
 * @param endurance endurance at that mass, on these packs
 * @param cruise the flight that packs and wires are judged at; empty where none can be flown
 * @param pack the packs at cruise power
 * @param fullThrottle the packs at full throttle; empty where no power is given for it
 * @param runs the runs of wire, in their order
 * @param propulsion the drive at cruise and full throttle; empty where only efficiencies are known
 * @param rails the regulated rails; empty where there are none
 * @param launch launch, climb, glide and turn; empty where no launch or no thrust is given
 * @param compass the compass; empty where none is described
 * @param tasks what the parts were asked
 * @param judgement what is to be said of the whole; what is to be said of a part is in the part
 */
public record Review(
        double massKg,
        Optional<Balance> balance,
        EnduranceResult endurance,
        Optional<SpeedPoint> cruise,
        PackEnergy pack,
        Optional<FullThrottle> fullThrottle,
        List<RunReview> runs,
        Optional<DriveMatch> propulsion,
        Optional<RailBudget> rails,
        Optional<LaunchAndClimbResult> launch,
        Optional<Compass> compass,
        ReviewTasks tasks,
        Judgement judgement) {
    /** Copies the list. */
    public Review {
        runs = List.copyOf(runs);
    }
}
