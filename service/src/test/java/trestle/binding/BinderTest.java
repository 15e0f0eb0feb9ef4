package trestle.binding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.tuple;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trestle.api.model.ApiFault;

class BinderTest {
    private static byte[] bytes(String json) {
        return json.getBytes(StandardCharsets.UTF_8);
    }

    private static Craft bound(String more) {
        return Binder.bind(bytes("{" + Craft.LEAST + more + "}"), Craft.class);
    }

    private static Refusal refused(String json) {
        return catchThrowableOfType(Refusal.class, () -> Binder.bind(bytes(json), Craft.class));
    }

    private static List<ApiFault> faults(String more) {
        Refusal refusal = refused("{" + Craft.LEAST + more + "}");
        assertThat(refusal.reason()).isEqualTo(Reason.INVALID);
        return refusal.faults();
    }

    private static Craft text(String... namesAndValues) {
        return Binder.bind(fields(namesAndValues), Craft.class);
    }

    private static List<DottedField> fields(String... namesAndValues) {
        List<DottedField> fields = new ArrayList<>();
        fields.add(new DottedField("name", "Heron"));
        fields.add(new DottedField("mass_g", "1200"));
        for (int i = 0; i < namesAndValues.length; i += 2) {
            fields.add(new DottedField(namesAndValues[i], namesAndValues[i + 1]));
        }
        return fields;
    }

    private static List<ApiFault> textFaults(String... namesAndValues) {
        return catchThrowableOfType(Refusal.class, () -> text(namesAndValues)).faults();
    }

    @Test
    void whatIsNotGivenIsNull() {
        Craft craft = bound("");
        assertThat(craft.name()).isEqualTo("Heron");
        assertThat(craft.massG()).isEqualTo(1200.0);
        assertThat(craft.wing()).isNull();
        assertThat(craft.spars()).isNull();
    }

    @Test
    void aFieldOfEveryKindBinds() {
        Craft craft = bound(",\"span_mm\":1800.5,\"motor_count\":2,\"tailless\":true,\"covering\":\"glass_cloth\","
                + "\"mark\":\"DX\",\"wing\":{\"area_dm2\":40,\"winglet\":{\"area_dm2\":2}},"
                + "\"spars\":[{\"length_mm\":900},{\"length_mm\":300}],\"stations_mm\":[0,450]");
        assertThat(craft.spanMm()).isEqualTo(1800.5);
        assertThat(craft.motorCount()).isEqualTo(2);
        assertThat(craft.tailless()).isTrue();
        assertThat(craft.covering()).isEqualTo(Craft.Covering.GLASS_CLOTH);
        assertThat(craft.mark()).isEqualTo("DX");
        assertThat(craft.wing()).isEqualTo(new Craft.Wing(40.0, new Craft.Wing(2.0, null)));
        assertThat(craft.spars()).containsExactly(new Craft.Spar(900.0), new Craft.Spar(300.0));
        assertThat(craft.stationsMm()).containsExactly(0.0, 450.0);
    }

    @Test
    void anExplicitNullMeansAbsent() {
        assertThat(bound(",\"wing\":null,\"motor_count\":null")).isEqualTo(bound(""));
    }

    @Test
    void aWholeNumberMayBeWrittenWithADot() {
        assertThat(bound(",\"motor_count\":2.0").motorCount()).isEqualTo(2);
    }

    @Test
    void aListMayBeEmptyButForItsLimit() {
        assertThat(faults(",\"spars\":[]"))
                .containsExactly(new ApiFault("/spars", "wrong_size", "spars has 0 entries: it must have 1 to 3"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"spars\":{}|/spars|wrong_type|spars must be a list, not an object",
                "\"wing\":[]|/wing|wrong_type|wing must be an object, not a list",
                "\"wing\":7|/wing|wrong_type|wing must be an object, not 7",
                "\"spars\":[null]|/spars/0|wrong_type|spars[0] must be a value, not null",
                "\"spars\":[{\"length_mm\":5},3]|/spars/1|wrong_type|spars[1] must be an object, not 3",
                "\"stations_mm\":[0,\"x\"]|/stations_mm/1|wrong_type|stations_mm[1] must be a number, not the text \"x\"",
                "\"mark\":4|/mark|wrong_type|mark must be text, not 4",
                "\"tailless\":\"true\"|/tailless|wrong_type|tailless must be true or false, not the text \"true\"",
                "\"tailless\":0|/tailless|wrong_type|tailless must be true or false, not 0",
                "\"covering\":1|/covering|wrong_type|covering must be one of film, glass_cloth, not 1",
                "\"covering\":\"silk\"|/covering|unknown_value|covering must be one of film, glass_cloth, not the text \"silk\"",
                "\"motor_count\":1.5|/motor_count|wrong_type|motor_count must be a whole number, not 1.5",
                "\"motor_count\":3e9|/motor_count|wrong_type|motor_count must be a whole number, not 3.0E9",
                "\"motor_count\":\"2\"|/motor_count|wrong_type|motor_count must be a whole number, not the text \"2\"",
                "\"span_mm\":\"1,5\"|/span_mm|wrong_type|span_mm must be a number in mm, not the text \"1,5\"",
                "\"span_mm\":1e999|/span_mm|not_finite|span_mm is beyond any number that can be computed with",
                "\"spam_mm\":1|/spam_mm|unknown_field|spam_mm is not a field here; did you mean span_mm?",
                "\"wing\":{\"area_dm2\":4,\"x/~\":1}|/wing/x~1~0|unknown_field|x/~ is not a field here; known are area_dm2, winglet",
                "\"motor_count\":0|/motor_count|below_minimum|motor_count is 0: it must be at least 1",
                "\"motor_count\":9|/motor_count|above_maximum|motor_count is 9: it must be at most 8",
                "\"span_mm\":199.5|/span_mm|below_minimum|span_mm is 199.5 mm: it must be at least 200 mm",
                "\"span_mm\":9000|/span_mm|above_maximum|span_mm is 9000 mm: it must be below 9000 mm",
                "\"wing\":{}|/wing/area_dm2|missing|area_dm2 is missing",
                "\"wing\":{\"area_dm2\":4,\"winglet\":{\"area_dm2\":0.5}}|/wing/winglet/area_dm2|below_minimum|area_dm2 is 0.5 dm²: it must be at least 1 dm²",
                "\"stations_mm\":[0,-1]|/stations_mm/1|below_minimum|stations_mm is -1 mm: it must be at least 0 mm",
                "\"stations_mm\":[0]|/stations_mm|wrong_size|stations_mm has 1 entries: it must have at least 2",
                "\"mark\":\"dx\"|/mark|wrong_form|mark is not of the form it must have"
            })
    void eachFaultIsNamedWithWhatWouldBeRight(String more, String at, String code, String message) {
        assertThat(faults("," + more)).containsExactly(new ApiFault(at, code, message));
    }

    @Test
    void ofAListThatIsTooLongOnlyOneEntryTooManyIsHeldAgainstItsLimits() {
        String spars = "{},".repeat(30_000) + "{}";
        assertThat(faults(",\"spars\":[" + spars + "]"))
                .extracting(ApiFault::at, ApiFault::message)
                .containsExactly(
                        tuple("/spars", "spars has 30001 entries: it must have 1 to 3"),
                        tuple("/spars/0/length_mm", "length_mm is missing"),
                        tuple("/spars/1/length_mm", "length_mm is missing"),
                        tuple("/spars/2/length_mm", "length_mm is missing"),
                        tuple("/spars/3/length_mm", "length_mm is missing"));
    }

    @Test
    void aListWithOneEntryTooManyIsToldSo() {
        String spar = "{\"length_mm\":5},";
        assertThat(faults(",\"spars\":[" + spar.repeat(3) + "{\"length_mm\":5}]"))
                .containsExactly(new ApiFault("/spars", "wrong_size", "spars has 4 entries: it must have 1 to 3"));
        assertThat(bound(",\"spars\":[" + spar.repeat(2) + "{\"length_mm\":5}]").spars())
                .hasSize(3);
    }

    @Test
    void theStructureOfEveryEntryIsLookedAt() {
        String spars = "{\"length_mm\":5},".repeat(5) + "{\"length_mm\":5,\"x\":1}";
        assertThat(faults(",\"spars\":[" + spars + "]"))
                .extracting(ApiFault::at)
                .containsExactly("/spars/5/x");
    }

    @Test
    void aTextOfTheWrongLengthIsToldItsLimits() {
        assertThat(refused("{\"name\":\"Heron the 9th\",\"mass_g\":1}").faults())
                .containsExactly(new ApiFault("/name", "wrong_size", "name has 13 characters: it must have 1 to 8"));
    }

    @Test
    void aMassOfNothingIsBelowAnOpenLimit() {
        assertThat(refused("{\"name\":\"Heron\",\"mass_g\":0}").faults())
                .containsExactly(new ApiFault("/mass_g", "below_minimum", "mass_g is 0 g: it must be above 0 g"));
    }

    @Test
    void faultsOfStructureAndOfRangeComeTogetherAndOnce() {
        Refusal refusal = refused("{\"name\":7,\"motor_count\":0,\"spars\":[{\"length_mm\":\"a\"},{}]}");
        assertThat(refusal.getMessage()).isNull();
        assertThat(refusal.faults())
                .extracting(ApiFault::at, ApiFault::code)
                .containsExactly(
                        tuple("/name", "wrong_type"),
                        tuple("/spars/0/length_mm", "wrong_type"),
                        tuple("/mass_g", "missing"),
                        tuple("/motor_count", "below_minimum"),
                        tuple("/spars/1/length_mm", "missing"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\0',
            value = {
                "[]|the body must be a JSON object",
                "7|the body must be a JSON object",
                "null|the body must be a JSON object"
            })
    void aBodyThatIsNoObjectIsInvalidAsAWhole(String json, String message) {
        Refusal refusal = refused(json);
        assertThat(refusal.reason()).isEqualTo(Reason.INVALID);
        assertThat(refusal.faults()).containsExactly(new ApiFault("", "wrong_type", message));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\0',
            nullValues = "-",
            value = {
                "-|the body is empty",
                "{\"a\":|column 6: Unexpected end-of-input within/between Object entries",
                "{\"a\":1} x|column 9: Unrecognized token 'x': was expecting (JSON String, Number, Array, Object or token 'null', 'true' or 'false')",
                "{\"a\":1}{}|column 8: something follows after the end of the object",
                "{\"a\":1,\"a\":2}|column 11: Duplicate field 'a'",
                "{\"a\":NaN}|column 9: Non-standard token 'NaN': JSON has no such number"
            })
    void aBodyThatIsNoJsonIsUnreadable(String json, String detail) {
        Refusal refusal = refused(json == null ? "" : json);
        assertThat(refusal.reason()).isEqualTo(Reason.UNREADABLE);
        assertThat(refusal.faults()).isEmpty();
        assertThat(refusal).hasMessage(detail);
    }

    @Test
    void bytesThatAreNoTextAreUnreadable() {
        Refusal refusal = catchThrowableOfType(
                Refusal.class, () -> Binder.bind(new byte[] {'{', '"', (byte) 0xc3, (byte) 0x28, '"'}, Craft.class));
        assertThat(refusal.reason()).isEqualTo(Reason.UNREADABLE);
    }

    @Test
    void aTreeBindsAsItsTextDoes() {
        ObjectNode tree = JsonNodeFactory.instance.objectNode();
        tree.put("name", "Heron").put("mass_g", 1200);
        assertThat(Binder.bind(tree, Craft.class)).isEqualTo(bound(""));
    }

    @Test
    void dottedNamesBindAsJsonDoes() {
        Craft craft = text(
                "spars.1.length_mm",
                "300",
                "spars.0.length_mm",
                " 9e2 ",
                "tailless",
                "TRUE",
                "motor_count",
                "+2",
                "covering",
                "film",
                "wing.area_dm2",
                ".5e2");
        assertThat(craft)
                .isEqualTo(bound(",\"spars\":[{\"length_mm\":900},{\"length_mm\":300}],\"tailless\":true,"
                        + "\"motor_count\":2,\"covering\":\"film\",\"wing\":{\"area_dm2\":50}"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "span_mm|1,5|/span_mm|decimal_comma|span_mm is the text \"1,5\": write the decimal point as a dot and nothing between thousands, like 22.5",
                "span_mm|1.800,5|/span_mm|decimal_comma|span_mm is the text \"1.800,5\": write the decimal point as a dot and nothing between thousands, like 22.5",
                "span_mm|wide|/span_mm|wrong_type|span_mm must be a number in mm, not the text \"wide\"",
                "span_mm|1e9999|/span_mm|not_finite|span_mm is beyond any number that can be computed with",
                "motor_count|two|/motor_count|wrong_type|motor_count must be a whole number, not the text \"two\"",
                "tailless|yes|/tailless|wrong_type|tailless must be true or false, not the text \"yes\"",
                "wing|7|/wing|wrong_type|wing must be an object, not the text \"7\"",
                "spars|7|/spars|wrong_type|spars must be a list, not the text \"7\"",
                "spars.1.length_mm|7|/spars/0|index_gap|spars.0 is not given but a later one is: count from 0 without a gap",
                "wing..area_dm2|7|/wing//area_dm2|not_a_name|wing..area_dm2 has an empty part: write names like wing.panels.0.span_mm",
                "name|Egret|/name|repeated|name is given more than once",
                "name.x|Egret|/name|conflict|name is given both a value and parts of its own"
            })
    void eachFaultOfATextIsNamed(String name, String value, String at, String code, String message) {
        assertThat(textFaults(name, value)).containsExactly(new ApiFault(at, code, message));
    }
}
