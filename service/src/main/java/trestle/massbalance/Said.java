package trestle.massbalance;

import trestle.finding.Judge;
import trestle.numeric.Decimal;
import trestle.units.Length;
import trestle.units.Mass;

/** Numbers as sentences have them. */
final class Said {
    private static final int MOST_DECIMALS = 4;

    private Said() {}

    /** A length in mm, with enough digits to tell it from another. */
    static String mm(double lengthM, double otherM) {
        return apart(Length.mmFromM(lengthM), Length.mmFromM(otherM), 1);
    }

    /** A mass in g, with enough digits to tell it from another. */
    static String g(double massKg, double otherKg) {
        return apart(Mass.gFromKg(massKg), Mass.gFromKg(otherKg), 0);
    }

    /** A number with at least so many decimals, and with more where another would read the same. */
    static String apart(double value, double other, int decimals) {
        int places = decimals;
        while (places < MOST_DECIMALS && value != other && fixed(value, places).equals(fixed(other, places))) {
            places++;
        }
        return fixed(value, places);
    }

    private static String fixed(double value, int decimals) {
        return Decimal.fixed(value, decimals);
    }

    /** A distance that somebody will set with a ruler. */
    static String distance(double lengthM) {
        double mm = Math.abs(Length.mmFromM(lengthM));
        return Judge.text(mm < 10 ? "%.1f mm" : "%.0f mm", mm);
    }

    /** A mass that somebody will put on scales. */
    static String mass(double massKg) {
        double g = Math.abs(Mass.gFromKg(massKg));
        return Judge.text(g < 10 ? "%.1f g" : "%.0f g", g);
    }

    /** Which way along the fuselage. */
    static String way(double byM) {
        return byM < 0 ? "forward" : "aft";
    }
}
