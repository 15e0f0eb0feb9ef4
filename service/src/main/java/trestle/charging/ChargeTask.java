package trestle.charging;

import java.util.Optional;
import java.util.OptionalDouble;
import trestle.battery.Pack;
import trestle.battery.Surroundings;
import trestle.numeric.Guard;

/**
 * What is asked of a charge.
 *
 * @param pack the pack, each segment at the charge it starts from
 * @param surroundings air, cells at the start, covering
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
public record ChargeTask(
        Pack pack,
        Surroundings surroundings,
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
    public ChargeTask {
        Guard.present("pack", pack);
        Guard.present("surroundings", surroundings);
        Guard.present("connection", connection);
        Guard.present("charger", charger);
        setA.ifPresent(it -> Guard.positive("setA", it));
        Guard.present("target", target);
        holdV.ifPresent(it -> Guard.positive("holdV", it));
        Guard.positive("endRatePerS", endRatePerS);
        Guard.within("imbalanceFraction", imbalanceFraction, 0, 1);
    }

    /** The same with cells that start at another temperature. */
    ChargeTask startingAtK(double startK) {
        return new ChargeTask(
                pack,
                new Surroundings(surroundings.ambientK(), startK, surroundings.covering()),
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

    /** The same with a charger of more power than the cells take. */
    ChargeTask onStrongCharger() {
        Charger strong = new Charger(
                charger.maxCurrentA(),
                OptionalDouble.empty(),
                charger.maxVoltageV(),
                charger.maxSeriesCells(),
                charger.channels(),
                charger.efficiencyFraction(),
                charger.balances(),
                charger.balanceCurrentA());
        return new ChargeTask(
                pack,
                surroundings,
                connection,
                strong,
                setA,
                target,
                holdV,
                endRatePerS,
                imbalanceFraction,
                Optional.empty(),
                coldRatingK,
                storageS);
    }
}
