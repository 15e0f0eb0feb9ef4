package trestle.binding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import trestle.api.model.ApiFault;

class DottedTreeTest {
    private final Faults faults = new Faults();

    private String tree(String... names) {
        List<DottedField> fields =
                Arrays.stream(names).map(n -> new DottedField(n, "v")).toList();
        return DottedTree.of(fields, faults).toString();
    }

    private List<ApiFault> faults() {
        return catchThrowableOfType(Refusal.class, () -> faults.refuseIfAny(Reason.INVALID))
                .faults();
    }

    private static String name(int steps) {
        return String.join(".", Collections.nCopies(steps, "a"));
    }

    @Test
    void namesGrowIntoObjectsAndIndicesIntoLists() {
        assertThat(tree("b", "a.1", "a.0", "c.d.0.e", "c.f"))
                .isEqualTo("{\"b\":\"v\",\"a\":[\"v\",\"v\"],\"c\":{\"d\":[{\"e\":\"v\"}],\"f\":\"v\"}}");
        faults.refuseIfAny(Reason.INVALID);
    }

    @Test
    void aBranchWithANameIsNoList() {
        assertThat(tree("a.0", "a.x")).isEqualTo("{\"a\":{\"0\":\"v\",\"x\":\"v\"}}");
        assertThat(tree("b.00")).isEqualTo("{\"b\":{\"00\":\"v\"}}");
    }

    @Test
    void nothingIsAnEmptyObject() {
        assertThat(tree()).isEqualTo("{}");
    }

    @Test
    void aListWithAGapIsLeftOut() {
        assertThat(tree("a/b.c.0", "a/b.c.2", "d")).isEqualTo("{\"a/b\":{},\"d\":\"v\"}");
        assertThat(faults())
                .containsExactly(new ApiFault(
                        "/a~1b/c/1",
                        "index_gap",
                        "a/b.c.1 is not given but a later one is: count from 0 without a gap"));
    }

    @Test
    void aGapWithinAListLeavesItsPlace() {
        assertThat(tree("a.0.1", "a.1.0")).isEqualTo("{\"a\":[null,[\"v\"]]}");
        assertThat(faults()).extracting(ApiFault::at).containsExactly("/a/0/0");
    }

    @Test
    void aBranchThatIsAlsoAValueIsAConflictWhicheverComesFirst() {
        assertThat(tree("a", "a.b.c")).isEqualTo("{\"a\":\"v\"}");
        assertThat(tree("x.y.z", "x.y")).isEqualTo("{\"x\":{\"y\":{\"z\":\"v\"}}}");
        assertThat(faults())
                .containsExactly(
                        new ApiFault("/a", "conflict", "a is given both a value and parts of its own"),
                        new ApiFault("/x/y", "conflict", "x.y is given both a value and parts of its own"));
    }

    @Test
    void theFirstOfTwoValuesStays() {
        List<DottedField> twice = List.of(new DottedField("a.b", "1"), new DottedField("a.b", "2"));
        assertThat(DottedTree.of(twice, faults)).hasToString("{\"a\":{\"b\":\"1\"}}");
        assertThat(faults()).containsExactly(new ApiFault("/a/b", "repeated", "a.b is given more than once"));
    }

    @Test
    void aNameMayHaveThirtyTwoPartsAndNoMore() {
        tree(name(32));
        faults.refuseIfAny(Reason.INVALID);
        assertThat(tree(name(33))).isEqualTo("{}");
        assertThat(faults())
                .singleElement()
                .satisfies(f -> assertThat(f.message()).endsWith("… has more than 32 parts"))
                .satisfies(f -> assertThat(f.code()).isEqualTo("not_a_name"));
    }
}
