package trestle.catalogue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import trestle.endpoint.Calculation;
import trestle.endpoint.ReferenceTable;
import trestle.endpoint.airframeloads.AirframeLoadsEndpoint;
import trestle.endpoint.buildreview.BuildReviewEndpoint;
import trestle.endpoint.compassclearance.CompassClearanceEndpoint;
import trestle.endpoint.endurance.EnduranceEndpoint;
import trestle.endpoint.flightreview.FlightReviewEndpoint;
import trestle.endpoint.launch.LaunchAndClimbEndpoint;
import trestle.endpoint.massbalance.MassBalanceEndpoint;
import trestle.endpoint.packcharge.PackChargeEndpoint;
import trestle.endpoint.packenergy.PackEnergyEndpoint;
import trestle.endpoint.propulsionmatch.PropulsionMatchEndpoint;
import trestle.endpoint.railbudget.RailBudgetEndpoint;
import trestle.endpoint.reference.AirframesTable;
import trestle.endpoint.reference.CellChemistriesTable;
import trestle.endpoint.reference.CellsTable;
import trestle.endpoint.reference.ConnectorsTable;
import trestle.endpoint.reference.ContactTemperaturesTable;
import trestle.endpoint.reference.FusesTable;
import trestle.endpoint.reference.InsulationsTable;
import trestle.endpoint.reference.MaterialsTable;
import trestle.endpoint.reference.MotorsTable;
import trestle.endpoint.reference.ServosTable;
import trestle.endpoint.reference.StandardAtmosphereTable;
import trestle.endpoint.reference.WireGaugesTable;
import trestle.endpoint.surveycoverage.SurveyCoverageEndpoint;
import trestle.endpoint.wiresizing.WireSizingEndpoint;
import trestle.study.Sensitivity;
import trestle.study.SolveFor;
import trestle.study.TradeStudy;
import trestle.study.UncertaintyStudy;

/** Every calculation that the service offers. A new one is one line here. */
public final class Catalogue {
    private static final List<Calculation<?, ?, ?, ?>> CALCULATIONS = List.of(
            new BuildReviewEndpoint(),
            new MassBalanceEndpoint(),
            new PackEnergyEndpoint(),
            new PackChargeEndpoint(),
            new SurveyCoverageEndpoint(),
            new WireSizingEndpoint(),
            new PropulsionMatchEndpoint(),
            new EnduranceEndpoint(),
            new RailBudgetEndpoint(),
            new LaunchAndClimbEndpoint(),
            new CompassClearanceEndpoint(),
            new AirframeLoadsEndpoint(),
            new FlightReviewEndpoint());

    /** They run the others, at other numbers. */
    private static final List<Calculation<?, ?, ?, ?>> STUDIES = List.of(
            new SolveFor(Catalogue::studied),
            new TradeStudy(Catalogue::studied),
            new Sensitivity(Catalogue::studied),
            new UncertaintyStudy(Catalogue::studied));

    private static final List<Calculation<?, ?, ?, ?>> ALL =
            Stream.concat(CALCULATIONS.stream(), STUDIES.stream()).toList();

    private static final List<ReferenceTable> TABLES = List.of(
            new WireGaugesTable(),
            new InsulationsTable(),
            new ConnectorsTable(),
            new FusesTable(),
            new ContactTemperaturesTable(),
            new CellChemistriesTable(),
            new StandardAtmosphereTable(),
            new CellsTable(),
            new AirframesTable(),
            new MotorsTable(),
            new ServosTable(),
            new MaterialsTable());

    private Catalogue() {}

    /** What a study may name; a study cannot, since the contract lists what can. */
    private static Calculation<?, ?, ?, ?> studied(String name) {
        return CALCULATIONS.stream()
                .filter(c -> c.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /**
     * All calculations, studies too, in the order of the index.
     *
     * @return the calculations
     */
    public static List<Calculation<?, ?, ?, ?>> calculations() {
        return ALL;
    }

    /**
     * Whether a calculation runs others.
     *
     * @param calculation of the catalogue
     * @return whether it is a study
     */
    public static boolean isStudy(Calculation<?, ?, ?, ?> calculation) {
        return STUDIES.contains(calculation);
    }

    /**
     * The calculation of a name.
     *
     * @param name kebab-case name
     * @return the calculation, if there is one
     */
    public static Optional<Calculation<?, ?, ?, ?>> named(String name) {
        return ALL.stream().filter(c -> c.name().equals(name)).findFirst();
    }

    /**
     * All reference tables, in the order of the index.
     *
     * @return the tables
     */
    public static List<ReferenceTable> tables() {
        return TABLES;
    }
}
