package trestle.massbalance;

import java.util.ArrayList;
import java.util.List;

/** Moments of inertia of spread things about their own CG; all formulas closed, strips apart. */
final class SpreadInertia {
    /** Twenty strips a panel keep within 0.13 % of the integral over a straight taper. */
    static final int STRIPS = 20;

    /** Where the mass of a solid section lies in its chord; common practice, no source. */
    private static final double SOLID_CENTRE_FRACTION = 0.42;

    private SpreadInertia() {}

    /** A strip of a wing: share of the mass, place, chord. */
    private record Strip(double share, double x, double y, double z, double chordM) {}

    /**
     * Own inertia of a spread item.
     *
     * @param spread how it is spread
     * @param massKg its mass, kg
     * @param wing the wing that it may be spread over; null only where it is not
     * @param tail the tail that it may be spread over; null only where it is not
     * @return moments of inertia about its own CG
     */
    static Inertia of(Spread spread, double massKg, Wing wing, Tail tail) {
        if (spread instanceof Spread.OverWing over) {
            return ofStrips(strips(wing, over.build().chordPower()), massKg);
        }
        if (spread instanceof Spread.OverTail over) {
            return ofStrips(strips(shape(tail), over.build().chordPower()), massKg);
        }
        return spread instanceof Spread.Rod rod ? rod(rod, massKg) : block((Spread.Block) spread, massKg);
    }

    /** A tail as a wing of one rectangular panel a side. */
    private static Wing shape(Tail tail) {
        double chordM = tail.areaM2() / tail.spanM();
        return new Wing(
                List.of(new Panel(
                        chordM, chordM, tail.spanM() / 2, 0, tail.dihedralRad().orElse(0))),
                0);
    }

    /** One half in strips; the other half is its mirror image. */
    private static List<Strip> strips(Wing wing, int chordPower) {
        List<Strip> strips = new ArrayList<>();
        double edgeX = 0;
        double edgeY = 0;
        double edgeZ = 0;
        double whole = 0;
        for (Panel panel : wing.panels()) {
            for (int i = 0; i < STRIPS; i++) {
                double along = (i + 0.5) / STRIPS;
                double chordM = panel.rootChordM() + along * (panel.tipChordM() - panel.rootChordM());
                double weight = Math.pow(chordM, chordPower) * panel.spanM() / STRIPS;
                double behindEdge = chordPower == Spread.Build.SOLID.chordPower() ? SOLID_CENTRE_FRACTION * chordM : 0;
                strips.add(new Strip(
                        weight,
                        edgeX + along * panel.sweepM() + behindEdge,
                        edgeY + along * panel.projectedSpanM(),
                        edgeZ + along * panel.spanM() * Math.sin(panel.dihedralRad()),
                        chordM));
                whole += weight;
            }
            edgeX += panel.sweepM();
            edgeY += panel.projectedSpanM();
            edgeZ += panel.spanM() * Math.sin(panel.dihedralRad());
        }
        double sum = whole;
        return strips.stream()
                .map(s -> new Strip(s.share() / sum, s.x(), s.y(), s.z(), s.chordM()))
                .toList();
    }

    /** A strip is a plate of its chord: {@code c²/12} in pitch and in yaw. */
    private static Inertia ofStrips(List<Strip> strips, double massKg) {
        double meanX = strips.stream().mapToDouble(s -> s.share() * s.x()).sum();
        double meanZ = strips.stream().mapToDouble(s -> s.share() * s.z()).sum();
        double xx = 0;
        double yy = 0;
        double zz = 0;
        double plate = 0;
        for (Strip strip : strips) {
            xx += strip.share() * (strip.x() - meanX) * (strip.x() - meanX);
            yy += strip.share() * strip.y() * strip.y();
            zz += strip.share() * (strip.z() - meanZ) * (strip.z() - meanZ);
            plate += strip.share() * strip.chordM() * strip.chordM() / 12;
        }
        return new Inertia(massKg * (yy + zz), massKg * (xx + zz + plate), massKg * (xx + yy + plate));
    }

    /** {@code m L²/12} about the axes across it; a tube adds {@code m r²} about its own and half of it about the others. */
    private static Inertia rod(Spread.Rod rod, double massKg) {
        double across = massKg * rod.lengthM() * rod.lengthM() / 12;
        double own = massKg * rod.diameterM() * rod.diameterM() / 4;
        double aboutAcross = across + own / 2;
        return new Inertia(
                rod.axis() == Spread.Axis.LONGITUDINAL ? own : aboutAcross,
                rod.axis() == Spread.Axis.LATERAL ? own : aboutAcross,
                rod.axis() == Spread.Axis.VERTICAL ? own : aboutAcross);
    }

    private static Inertia block(Spread.Block block, double massKg) {
        double ll = block.lengthM() * block.lengthM();
        double ww = block.widthM() * block.widthM();
        double hh = block.heightM() * block.heightM();
        return new Inertia(massKg * (ww + hh) / 12, massKg * (ll + hh) / 12, massKg * (ll + ww) / 12);
    }
}
