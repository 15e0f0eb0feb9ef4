package trestle;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import trestle.finding.Caution;
import trestle.http.LiveService;

/** What a person sees first. */
class DemoTest {
    @Test
    void theDemoPrintsVerdictFindingsAndKeyFigures() {
        String printed = Demo.run(new Caller(LiveService.address(), Optional.empty()));
        assertThat(printed.lines()).first().asString().matches("verdict +(fit|attention|stop)");
        assertThat(printed)
                .containsPattern("  (note|attention|stop): .+ \\[/.+]")
                .containsPattern("checks +[0-9]+ passed, [0-9]+ not passed, [0-9]+ not judged")
                .containsPattern("usable_energy_wh +[0-9.]+")
                .containsPattern("best_endurance_h +[0-9.]+")
                .endsWith(Caution.AID + "\n");
    }

    @Test
    void aServiceThatIsNotThereIsOneLine() {
        assertThat(Demo.run(new Caller("http://127.0.0.1:9", Optional.empty())))
                .startsWith("the demo could not reach the service: ");
    }
}
