package trestle.survey;

import java.util.List;
import trestle.finding.Chain;
import trestle.finding.Working;
import trestle.units.Energy;
import trestle.units.Length;

/** How a survey was reached. */
public final class SurveyWorkings {
    private static final String PHOTOGRAMMETRY =
            "P. Wolf, B. Dewitt, B. Wilkinson, Elements of Photogrammetry (from memory)";
    private static final String WIND = "wind triangle";
    private static final String GEOMETRY = "geometry of the block (see the models)";

    private SurveyWorkings() {}

    /**
     * The workings of a survey.
     *
     * @param task what was asked
     * @param found what came of it
     * @return lines in order of computation
     */
    public static List<Working> of(SurveyTask task, SurveyCoverage found) {
        Chain chain = new Chain();
        Camera camera = task.camera();
        chain.given("s_x", "side of the sensor across the track", Length.mmFromM(camera.sensorAcrossM()), "mm");
        chain.given("s_y", "side along it", Length.mmFromM(camera.sensorAlongM()), "mm");
        chain.given("n_x", "pixels across", camera.pixelsAcross(), "1");
        chain.given("n_y", "pixels along", camera.pixelsAlong(), "1");
        chain.given("f", "focal length", Length.mmFromM(camera.focalM()), "mm");
        chain.given("H", "height above the ground", task.heightM(), "m");
        chain.step(
                "G", "ground under a pixel", Length.cmFromM(found.sampleM()), "cm", "100*H*s_x/n_x/f", PHOTOGRAMMETRY);
        chain.step("W", "footprint across the track", found.footprintAcrossM(), "m", "H*s_x/f", PHOTOGRAMMETRY);
        chain.step("L", "footprint along it", found.footprintAlongM(), "m", "H*s_y/f", PHOTOGRAMMETRY);
        chain.given("p", "forward overlap", task.forwardOverlap(), "1");
        chain.given("q", "side overlap", task.sideOverlap(), "1");
        chain.step("B", "distance of photos", task.betweenPhotosM(), "m", "L*(1-p)", PHOTOGRAMMETRY);
        chain.step("D", "distance of lines", task.betweenLinesM(), "m", "W*(1-q)", PHOTOGRAMMETRY);
        chain.found("V_g", "fastest ground speed on a line", Math.max(0, found.fastestMPerS()), "m/s", WIND, WIND);
        if (found.fastestMPerS() > 0) {
            chain.step("t", "time between photos", found.intervalS(), "s", "B/V_g", Chain.ARITHMETIC);
        }
        camera.exposureS().stream().filter(s -> found.fastestMPerS() > 0).forEach(s -> {
            chain.given("e", "exposure", s, "s");
            chain.step(
                    "b",
                    "way during an exposure",
                    found.blurPixels().orElse(0),
                    "px",
                    "V_g*e/(H*s_y/n_y/f)",
                    PHOTOGRAMMETRY);
        });
        chain.found("N", "lines", found.lines().size(), "1", "strips of the block in this direction", GEOMETRY);
        chain.found("X", "length of the lines", Length.kmFromM(found.lengthM()), "km", "their sum", GEOMETRY);
        chain.found("n", "photos", found.photos(), "1", "their sum over the lines", GEOMETRY);
        if (found.flyable()) {
            chain.found("T_l", "time on the lines", found.lineS(), "s", "their sum", WIND);
            chain.found("T_t", "time between them", found.turnS(), "s", "their sum", GEOMETRY);
            chain.step("T", "both", found.lineS() + found.turnS(), "s", "T_l+T_t", Chain.ARITHMETIC);
        }
        task.energy().ifPresent(energy -> {
            chain.given("E_u", "usable energy of a flight", Energy.whFromJ(energy.usableJ()), "Wh");
            chain.given("r", "reserve", energy.reserveFraction(), "1");
            chain.step(
                    "E_a",
                    "energy of a flight above its reserve",
                    Energy.whFromJ(energy.availableJ()),
                    "Wh",
                    "E_u*(1-r)",
                    Chain.ARITHMETIC);
        });
        return chain.lines();
    }
}
