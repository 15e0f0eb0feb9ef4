package trestle.rails;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

class RailsPropertyTest {
    private static final Supply SUPPLY = new Supply(25.2, 18);

    @Property(tries = 200)
    void energyIsConserved(
            @ForAll("loads") List<Load> loads, @ForAll @DoubleRange(min = 0.5, max = 1) double efficiency) {
        for (Conversion conversion : List.of(new Conversion.Linear(), new Conversion.Switching(efficiency))) {
            RailLoad load = budget(conversion, loads).rails().get(0);
            assertThat(load.inputPowerW()).isCloseTo(5 * load.typicalA() + load.heatW(), within(1e-9));
            assertThat(load.heatW()).isNotNegative();
        }
    }

    @Property(tries = 200)
    void aSwitchingRegulatorDrawsTheSamePowerAtAnyVoltage(
            @ForAll @DoubleRange(min = 0.1, max = 10) double currentA,
            @ForAll @DoubleRange(min = 6, max = 60) double inputV) {
        Regulator regulator = regulator(new Conversion.Switching(0.9));
        assertThat(regulator.inputCurrentA(inputV, currentA) * inputV).isCloseTo(5 * currentA / 0.9, within(1e-9));
    }

    @Property(tries = 200)
    void thePeakIsNeverBelowWhatWorksNorAboveAllPeaks(@ForAll("loads") List<Load> loads) {
        Rail rail = new Rail("rail", regulator(new Conversion.Linear()), loads, false);
        double working = loads.stream().mapToDouble(Load::workingA).sum();
        double peaks = loads.stream().mapToDouble(Load::allPeakA).sum();
        assertThat(rail.peakA()).isBetween(working - 1e-9, peaks + 1e-9);
        assertThat(rail.meanA()).isLessThanOrEqualTo(rail.peakA() + 1e-9);
        if (loads.stream().allMatch(Load::simultaneous)) {
            assertThat(rail.peakA()).isCloseTo(peaks, within(1e-9));
        }
    }

    @Property(tries = 100)
    void orderOfLoadsAndSplittingOfQuantitiesChangeNothing(@ForAll("loads") List<Load> loads) {
        RailLoad whole = budget(new Conversion.Switching(0.85), loads).rails().get(0);
        List<Load> split = new ArrayList<>();
        for (Load load : loads) {
            int pieces = load.simultaneous() ? load.quantityCount() : 1;
            for (int i = 0; i < pieces; i++) {
                split.add(new Load(
                        load.name(),
                        load.quantityCount() / pieces,
                        load.typicalA(),
                        load.peakA(),
                        load.dutyFraction(),
                        load.simultaneous(),
                        load.role()));
            }
        }
        Collections.reverse(split);
        RailLoad other = budget(new Conversion.Switching(0.85), split).rails().get(0);
        assertThat(other.typicalA()).isCloseTo(whole.typicalA(), within(1e-9));
        assertThat(other.peakA()).isCloseTo(whole.peakA(), within(1e-9));
        assertThat(other.inputPowerW()).isCloseTo(whole.inputPowerW(), within(1e-9));
    }

    private static RailBudget budget(Conversion conversion, List<Load> loads) {
        return Rails.of(new RailTask(SUPPLY, List.of(new Rail("rail", regulator(conversion), loads, false))));
    }

    private static Regulator regulator(Conversion conversion) {
        return new Regulator(conversion, 5, 10, OptionalDouble.of(20), 7, 60, Optional.empty());
    }

    @Provide
    static Arbitrary<List<Load>> loads() {
        Arbitrary<Integer> quantity = Arbitraries.integers().between(1, 6);
        Arbitrary<Double> current = Arbitraries.doubles().between(0, 2);
        Arbitrary<Double> rise = Arbitraries.doubles().between(0, 3);
        Arbitrary<Double> duty = Arbitraries.doubles().between(0, 1);
        Arbitrary<Boolean> simultaneous = Arbitraries.of(true, false);
        return Combinators.combine(quantity, current, rise, duty, simultaneous)
                .as((q, a, r, d, s) -> new Load("load", q, a, OptionalDouble.of(a + r), d, s, LoadRole.OTHER))
                .list()
                .ofMinSize(1)
                .ofMaxSize(6);
    }
}
