package trestle.review;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import trestle.battery.Covering;
import trestle.battery.Cutoff;
import trestle.battery.Segment;
import trestle.charging.ChargePlan;
import trestle.massbalance.Item;
import trestle.massbalance.Limits;
import trestle.massbalance.TailArrangement;
import trestle.massbalance.Target;
import trestle.massbalance.Weighing;
import trestle.massbalance.Wing;
import trestle.motorout.Fin;
import trestle.numeric.Guard;
import trestle.numeric.ImpossibleValue;
import trestle.rails.Rail;

/**
 * One aircraft, whole.
 *
 * @param items everything on board except packs and wires; empty where only the mass of the whole is known
 * @param takeoffMassKg mass of the whole, kg, above 0; empty where items tell it
 * @param packs the packs, joined in series in this order, at least one
 * @param cutoff where the packs count as empty
 * @param covering what covers the packs
 * @param wing the wing
 * @param tail the tail, or that there is none; needed for the neutral point
 * @param fin its fins and rudders; empty where they are not described
 * @param limits what the balance is held against
 * @param target where the centre of gravity should be
 * @param weighing the aircraft on scales
 * @param aerodynamics drag and lift
 * @param propulsion what turns pack power into thrust
 * @param systemsPowerW power for what neither motors nor rails feed, W, not negative
 * @param runs runs of wire
 * @param rails regulated rails; empty for none
 * @param compass the compass and what passes it
 * @param survey the ground that it is to cover; empty where there is none
 * @param charging how its packs are charged; empty where that is not described
 * @param goAround the go-around that its packs are to hold at the end of it
 * @param flight the day and the flight
 * @param notFitted what it does without
 */
public record Aircraft(
        List<Item> items,
        OptionalDouble takeoffMassKg,
        List<InstalledPack> packs,
        Cutoff cutoff,
        Covering covering,
        Wing wing,
        Optional<TailArrangement> tail,
        Optional<Fin> fin,
        Optional<Limits> limits,
        Optional<Target> target,
        Optional<Weighing> weighing,
        Aerodynamics aerodynamics,
        Propulsion propulsion,
        double systemsPowerW,
        List<InstalledRun> runs,
        List<Rail> rails,
        Optional<CompassPlan> compass,
        Optional<SurveyOfAircraft> survey,
        Optional<ChargePlan> charging,
        GoAroundPlan goAround,
        PlannedFlight flight,
        Set<Fitting> notFitted) {
    /** Checks the physics and copies the lists. */
    public Aircraft {
        items = List.copyOf(items);
        packs = List.copyOf(packs);
        runs = List.copyOf(runs);
        rails = List.copyOf(rails);
        notFitted = Set.copyOf(notFitted);
        Guard.notNegative("systemsPowerW", systemsPowerW);
        takeoffMassKg.ifPresent(massKg -> Guard.positive("takeoffMassKg", massKg));
        if (items.isEmpty() == takeoffMassKg.isEmpty()) {
            throw new ImpossibleValue("items", "an aircraft has items, or a mass as a whole");
        }
    }

    /**
     * Whether it is known where its masses are.
     *
     * @return false where only the mass of the whole is known
     */
    public boolean balanced() {
        return !items.isEmpty();
    }

    /**
     * The segments of the packs in series.
     *
     * @return the segments, in the order of the packs
     */
    public List<Segment> segments() {
        return packs.stream().map(InstalledPack::segment).toList();
    }
}
