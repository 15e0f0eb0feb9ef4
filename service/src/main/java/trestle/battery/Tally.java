package trestle.battery;

/** What a discharge has given so far. Not thread-safe; lives inside one run. */
final class Tally {
    double timeS;
    double energyJ;
    double chargeC;
    double heatJ;
    double leadLossJ;

    void take(Tally other) {
        timeS = other.timeS;
        energyJ = other.energyJ;
        chargeC = other.chargeC;
        heatJ = other.heatJ;
        leadLossJ = other.leadLossJ;
    }
}
