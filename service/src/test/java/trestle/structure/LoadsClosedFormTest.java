package trestle.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Closed forms worked apart from this code; nothing published but where the line says so. */
class LoadsClosedFormTest {
    private static HalfWing tapered(double taper, double halfSpanM) {
        return new HalfWing(List.of(new WingPanel(0.3, 0.3 * taper, halfSpanM, 0, 0)));
    }

    private static double centroid(LiftDistribution lift, double taper) {
        return lift.centroidM(tapered(taper, 1.4)) / 1.4;
    }

    @Test
    void liftStandsWhereItsClosedFormsSay() {
        assertThat(centroid(LiftDistribution.ELLIPTIC, 1)).isCloseTo(0.424413, within(1e-6));
        assertThat(centroid(LiftDistribution.SCHRENK, 1)).isCloseTo(0.462207, within(1e-6));
        assertThat(centroid(LiftDistribution.SCHRENK, 0.6)).isCloseTo(0.44137, within(5e-6));
        assertThat(centroid(LiftDistribution.SCHRENK, 0.5)).isCloseTo(0.43443, within(5e-6));
        assertThat(centroid(LiftDistribution.SCHRENK, 0.25)).isCloseTo(0.41221, within(5e-6));
        assertThat(centroid(LiftDistribution.SCHRENK, 0)).isCloseTo(0.37887, within(5e-6));
    }

    @Test
    void schrenkOnARectangle() {
        HalfWing wing = tapered(1, 1.4);
        double chord = wing.areaM2() / 0.3;
        assertThat(LiftDistribution.SCHRENK.perLength(wing, 0) * chord).isCloseTo(1.136620, within(5e-7));
        assertThat(LiftDistribution.SCHRENK.perLength(wing, 1.4) * chord).isCloseTo(0.5, within(1e-9));
    }

    /** Our own vortex lattice: rectangles of aspect ratio 6, 10, 14, taper 0.5 at 10. */
    @Test
    void schrenkLiesUpToFourPercentOutboardOfALattice() {
        assertThat(centroid(LiftDistribution.SCHRENK, 1) / 0.4447).isBetween(1.0, 1.04);
        assertThat(centroid(LiftDistribution.SCHRENK, 1) / 0.4551).isBetween(1.0, 1.04);
        assertThat(centroid(LiftDistribution.SCHRENK, 1) / 0.4621).isBetween(1.0, 1.04);
        assertThat(centroid(LiftDistribution.SCHRENK, 0.5) / 0.4302).isBetween(1.0, 1.04);
    }

    @Test
    void cantilevers() {
        Beam even = Beam.of(1.4, y -> 50, List.of());
        Beam falling = Beam.of(1.4, y -> 50 * (1 - y / 1.4), List.of());
        Beam ellipse = Beam.of(1.4, y -> 50 * Math.sqrt(1 - y * y / 1.96), List.of());
        Beam tip = Beam.of(1.4, y -> 0, List.of(new PointLoad(1.4, 50)));
        assertThat(even.bendingNm(0)).isCloseTo(49, within(1e-9));
        assertThat(falling.bendingNm(0)).isCloseTo(16.333, within(5e-4));
        assertThat(ellipse.bendingNm(0)).isCloseTo(32.667, within(5e-4));
        assertThat(tip.bendingNm(0)).isCloseTo(70, within(1e-9));
        assertThat(tipMm(even)).isCloseTo(400.17, within(5e-3));
        assertThat(tipMm(falling)).isCloseTo(106.71, within(5e-3));
        assertThat(tipMm(ellipse)).isCloseTo(243.15, within(5e-3));
        assertThat(tipMm(tip)).isCloseTo(762.22, within(5e-3));
    }

    private static double tipMm(Beam beam) {
        List<Double> deflection = beam.deflectionM(y -> 60);
        return 1000 * deflection.get(deflection.size() - 1);
    }

    @Test
    void sections() {
        Section tube = Section.round(0.016, 0.014);
        assertThat(1e12 * tube.inertiaM4()).isCloseTo(1331.25, within(5e-3));
        assertThat(1e12 * Section.round(0.012, 0.010).inertiaM4()).isCloseTo(527.002, within(5e-4));
        assertThat(1e12 * Section.round(0.008, 0).inertiaM4()).isCloseTo(201.062, within(5e-4));
        assertThat(1e9 / tube.bendingStressPa(1)).isCloseTo(166.406, within(5e-4));
        assertThat(new Section(SparShape.CAPPED, 0.024, 0.008, 0, 0.0015, 0, 0).inertiaM4() * 1e12)
                .isCloseTo(3042.0, within(5e-2));
        assertThat(new Section(SparShape.CAPPED, 0.024, 0.008, 0, 0.0015, 0.002, 0.025).inertiaM4() * 1e12)
                .isCloseTo(3080.59, within(5e-3));
    }

    @Test
    void shearOfTubes() {
        assertThat(factor(0.016, 0.014)).isCloseTo(1.99410, within(5e-6));
        assertThat(factor(0.016, 0.0159999)).isCloseTo(2, within(1e-5));
        assertThat(factor(0.016, 0)).isCloseTo(4.0 / 3, within(1e-9));
    }

    private static double factor(double outside, double inside) {
        double area = Math.PI * (outside * outside - inside * inside) / 4;
        return Section.round(outside, inside).shearStressPa(1) * area;
    }

    /** The formula of NASA SP-8007 stands from memory. */
    @Test
    void knockdownsOfThinTubes() {
        double[] ratios = {8, 25, 100, 400};
        double[] bending = {0.88155, 0.80381, 0.66028, 0.47844};
        double[] axial = {0.85401, 0.75819, 0.58127, 0.35714};
        for (int i = 0; i < ratios.length; i++) {
            assertThat(Buckling.bendingKnockdown(ratios[i])).isCloseTo(bending[i], within(5e-6));
            assertThat(Buckling.axialKnockdown(ratios[i])).isCloseTo(axial[i], within(5e-6));
        }
    }

    @Test
    void pinInItsSocket() {
        assertThat(Pin.mouthNPerM(30, 12, 0.15)).isCloseTo(4000, within(1e-9));
        assertThat(Pin.reverseShearN(0, 12, 0.15)).isCloseTo(120, within(1e-9));
        double engagement = Pin.engagementM(30, 12, 4000);
        assertThat(engagement).isCloseTo(0.15, within(1e-9));
    }

    /** The plate about its leading edge has −π/2, a known result; the rest are the cited equations. */
    @Test
    void hingeMoments() {
        double[] ratio = {0.10, 0.20, 0.25, 0.30, 0.40, 0.50};
        double[] b1 = {-0.34486, -0.49938, -0.56535, -0.62741, -0.74480, -0.85841};
        double[] b2 = {-0.88423, -0.92288, -0.94361, -0.96540, -1.01266, -1.06582};
        double[] tau = {0.39582, 0.54982, 0.60900, 0.66075, 0.74778, 0.81831};
        for (int i = 0; i < ratio.length; i++) {
            assertThat(Hinge.b1(ratio[i])).isCloseTo(b1[i], within(5e-6));
            assertThat(Hinge.b2(ratio[i])).isCloseTo(b2[i], within(5e-6));
            assertThat(Hinge.effectiveness(ratio[i])).isCloseTo(tau[i], within(5e-6));
        }
        assertThat(Hinge.b1(1)).isCloseTo(-Math.PI / 2, within(1e-9));
        assertThat(Hinge.b2(1)).isCloseTo(-Math.PI / 2, within(1e-9));
        assertThat(Hinge.effectiveness(1)).isCloseTo(1, within(1e-9));
    }

    @Test
    void pullsAndSpeeds() {
        assertThat(Flight.pull(9, 1.5)).isCloseTo(2.753, within(5e-4));
        assertThat(Flight.pull(14, 3)).isCloseTo(3.331, within(5e-4));
        assertThat(Flight.manoeuvreMPerS(1, 3.8)).isCloseTo(1.94936, within(5e-6));
    }
}
