package trestle.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.startsWith;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trestle.catalogue.Catalogue;
import trestle.endpoint.Calculation;
import trestle.endpoint.ReferenceTable;

/** What every calculation of the catalogue does alike. */
class CatalogueHttpTest {

    static List<String> calculations() {
        return Catalogue.calculations().stream().map(Calculation::name).toList();
    }

    static List<String> tables() {
        return Catalogue.tables().stream().map(ReferenceTable::name).toList();
    }

    @ParameterizedTest
    @MethodSource("calculations")
    void theExampleIsAnsweredAsItStands(String name) {
        LiveService.lawful()
                .body(LiveService.example(name).toString())
                .post("/v1/" + name)
                .then()
                .statusCode(200)
                .contentType(startsWith("application/json"))
                .body("computed_by.version", equalTo("0.2.0"))
                .body("computed_by.models", not(empty()))
                .body("cautions", not(empty()));
    }

    @ParameterizedTest
    @MethodSource("calculations")
    void theSameRequestGetsTheSameAnswer(String name) {
        String example = LiveService.example(name).toString();
        String first = LiveService.lawful().body(example).post("/v1/" + name).asString();
        String second = LiveService.lawful().body(example).post("/v1/" + name).asString();
        assertThat(second).isEqualTo(first);
    }

    @ParameterizedTest
    @MethodSource("calculations")
    void anEmptyObjectIsToldEveryMissingField(String name) {
        LiveService.unlawful()
                .body("{}")
                .post("/v1/" + name)
                .then()
                .statusCode(400)
                .contentType(startsWith("application/problem+json"))
                .body("errors.code", hasItem("missing"));
    }

    @ParameterizedTest
    @MethodSource("calculations")
    void anUnknownFieldIsRefusedWithItsPointer(String name) {
        LiveService.unlawful()
                .body("{\"wat/~\": 1}")
                .post("/v1/" + name)
                .then()
                .statusCode(400)
                .body("errors.at", hasItem("/wat~1~0"))
                .body("errors.code", hasItem("unknown_field"));
    }

    @ParameterizedTest
    @MethodSource("calculations")
    void theIndexLeadsToTheCalculation(String name) {
        LiveService.lawful()
                .get("/v1")
                .then()
                .statusCode(200)
                .body("calculations.name", hasItem(name))
                .body("calculations.href", hasItem("/v1/" + name));
    }

    @ParameterizedTest
    @MethodSource("tables")
    void theReferenceTableHasRows(String table) {
        LiveService.lawful()
                .get("/v1/reference/" + table)
                .then()
                .statusCode(200)
                .body("name", equalTo(table))
                .body("rows", not(empty()));
    }

    @Test
    void theIndexListsExactlyTheCatalogue() {
        LiveService.lawful()
                .get("/v1")
                .then()
                .body("calculations", hasSize(Catalogue.calculations().size()))
                .body("reference", hasSize(Catalogue.tables().size()));
    }
}
