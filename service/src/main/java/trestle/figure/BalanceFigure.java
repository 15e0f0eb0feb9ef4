package trestle.figure;

import trestle.massbalance.Balance;
import trestle.massbalance.BalanceTask;
import trestle.units.Length;
import trestle.units.Mass;
import trestle.units.Share;

/** The aircraft from the side, its masses and where its CG lies, and a close-up of that. */
public final class BalanceFigure {
    private static final String TITLE = "Mass and balance";

    private BalanceFigure() {}

    /**
     * Draws a balance.
     *
     * @param task the aircraft
     * @param balance its balance
     * @param theme colours
     * @return an SVG document
     */
    public static String of(BalanceTask task, Balance balance, Theme theme) {
        Page page = new Page(TITLE, summary(balance), balance.judgement().findings());
        Landmarks landmarks = Landmarks.of(task, balance);
        new SideView(task, balance, landmarks).draw(page);
        new CloseUp(balance, landmarks).draw(page);
        return page.finished(theme, TITLE + ". " + summary(balance));
    }

    private static String summary(Balance balance) {
        StringBuilder summary = new StringBuilder();
        summary.append(balance.weighed().isPresent() ? "Weighed " : "")
                .append(mass(balance.centre().massKg()))
                .append(", CG ")
                .append(mm(balance.centre().armM()))
                .append(" mm aft of the datum");
        if (balance.cgMacFraction().isPresent()) {
            summary.append(", ")
                    .append(percent(balance.cgMacFraction().getAsDouble()))
                    .append(" % of the mean aerodynamic chord");
        }
        if (balance.staticMarginFraction().isPresent()) {
            summary.append(", static margin ")
                    .append(percent(balance.staticMarginFraction().getAsDouble()))
                    .append(" ± ")
                    .append(percent(balance.staticMarginToleranceFraction().getAsDouble()))
                    .append(" %");
        }
        return summary.append('.').toString();
    }

    static String mass(double massKg) {
        double massG = Mass.gFromKg(massKg);
        return (massG < 10 ? Numbers.significant(massG, 2) : Numbers.whole(massG)) + " g";
    }

    static String mm(double lengthM) {
        return Numbers.fixed(Length.mmFromM(lengthM), 1);
    }

    static String wholeMm(double lengthM) {
        return Numbers.whole(Length.mmFromM(lengthM));
    }

    private static String percent(double fraction) {
        return Numbers.fixed(Share.percentFromFraction(fraction), 1);
    }
}
