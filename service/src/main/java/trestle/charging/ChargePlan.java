package trestle.charging;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.battery.Covering;
import trestle.battery.Pack;
import trestle.battery.Segment;
import trestle.battery.Surroundings;
import trestle.numeric.Guard;

/**
 * A charge but for the pack.
 *
 * @param startFraction state of charge that segments start from, 0 to 1
 * @param ambientK air around the pack, K
 * @param startK cells at the start, K
 * @param leadOhm leads and connectors between charger and cells, both ways, Ω
 * @param connection how the segments are charged
 * @param charger what charges them
 * @param setA current that is set for each string, A; empty: the greatest that every limit allows
 * @param target what is to be reached
 * @param holdV voltage that each cell is held at, V; empty: the full voltage of each
 * @param endRatePerS the charge ends when the current has fallen to this share of the capacity, 1/s
 * @param imbalanceFraction how far the states of charge of the cells differ, 0 to 1
 * @param supply where the energy is from; empty: it is not looked at
 * @param coldRatingK temperature that the charge rating of the cells holds for, K; empty: 25 °C
 * @param storageS how long the pack will rest afterwards, s; empty where it is not known
 */
public record ChargePlan(
        double startFraction,
        double ambientK,
        double startK,
        double leadOhm,
        Connection connection,
        Charger charger,
        OptionalDouble setA,
        ChargeTarget target,
        OptionalDouble holdV,
        double endRatePerS,
        double imbalanceFraction,
        Optional<ChargeSupply> supply,
        OptionalDouble coldRatingK,
        OptionalDouble storageS) {
    /** Checks the physics. */
    public ChargePlan {
        Guard.within("startFraction", startFraction, 0, 1);
        Guard.notNegative("leadOhm", leadOhm);
    }

    /**
     * The charge of segments at the charge that each has.
     *
     * @param segments of the pack
     * @param covering of the pack
     * @return the question
     */
    public ChargeTask of(List<Segment> segments, Covering covering) {
        return new ChargeTask(
                new Pack(segments, leadOhm),
                new Surroundings(ambientK, startK, covering),
                connection,
                charger,
                setA,
                target,
                holdV,
                endRatePerS,
                imbalanceFraction,
                supply,
                coldRatingK,
                storageS);
    }

    /**
     * The charge of segments that come back from a flight.
     *
     * @param segments of the pack, at any charge
     * @param covering of the pack
     * @return the question
     */
    public ChargeTask afterFlight(List<Segment> segments, Covering covering) {
        return of(
                segments.stream()
                        .map(segment -> segment.atCharge(startFraction))
                        .toList(),
                covering);
    }

    /**
     * Whether a string of these segments may be charged.
     *
     * @param segments of the pack
     * @return false for unlike capacities in one string without a balancer
     */
    public boolean suits(List<Segment> segments) {
        boolean unlike = segments.stream()
                        .map(segment -> segment.parallelCount() * segment.cell().capacityC())
                        .distinct()
                        .count()
                > 1;
        return connection != Connection.IN_SERIES || !unlike || charger.balances();
    }
}
