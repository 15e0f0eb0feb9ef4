package trestle.endpoint.reference;

import java.util.List;
import trestle.api.model.ApiConnectorRow;
import trestle.endpoint.ReferenceTable;
import trestle.units.Resistance;
import trestle.wiring.ConnectorRow;

/** The table {@code connectors}. */
public final class ConnectorsTable implements ReferenceTable {
    @Override
    public String name() {
        return "connectors";
    }

    @Override
    public String summary() {
        return "Power connectors by rated current with the contact resistance that is typical of each class; common"
                + " practice, no source";
    }

    @Override
    public List<ApiConnectorRow> rows() {
        return ConnectorRow.rows().stream().map(ConnectorsTable::row).toList();
    }

    private static ApiConnectorRow row(ConnectorRow row) {
        return ApiConnectorRow.builder()
                .ratedCurrentA(row.ratedCurrentA())
                .contactResistanceMilliohm(Resistance.milliohmFromOhm(row.contactResistanceOhm()))
                .build();
    }
}
