package trestle.endpoint.airframeloads;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.api.model.ApiAirframeLoadsRequest;
import trestle.api.model.ApiCapSupport;
import trestle.api.model.ApiLoadsJoiner;
import trestle.api.model.ApiLoadsJoint;
import trestle.api.model.ApiLoadsMaterial;
import trestle.api.model.ApiLoadsShape;
import trestle.api.model.ApiLoadsSocket;
import trestle.api.model.ApiLoadsSpar;
import trestle.endpoint.Reading;
import trestle.structure.FoamSocket;
import trestle.structure.Joint;
import trestle.structure.Material;
import trestle.structure.Materials;
import trestle.structure.Section;
import trestle.structure.Spar;
import trestle.structure.SparShape;
import trestle.units.Length;
import trestle.units.Pressure;

/** Reads spars, joiners and their materials. */
final class SparReading {
    /** Rounding of a span and a station, mm. */
    private static final double SLACK_MM = 0.5;

    private final Map<String, Material> own = new HashMap<>();
    private final Reading reading;
    private final double halfSpanMm;
    private final Optional<Material> web;

    SparReading(ApiAirframeLoadsRequest request, double halfSpanMm, Reading reading) {
        this.reading = reading;
        this.halfSpanMm = halfSpanMm;
        Reading.listed(request.materials()).forEach(m -> own.put(m.name(), material(m)));
        this.web = request.webMaterial() == null
                ? Optional.empty()
                : named(request.webMaterial(), ApiAirframeLoadsRequest.WEB_MATERIAL.at(""));
    }

    private static Material material(ApiLoadsMaterial m) {
        return new Material(
                m.name(),
                Pressure.paFromMpa(m.modulusMpa()),
                Reading.optional(m.transverseModulusMpa(), Pressure::paFromMpa),
                Pressure.paFromMpa(m.tensionMpa()),
                Pressure.paFromMpa(m.compressionMpa()),
                Pressure.paFromMpa(m.shearMpa()),
                Reading.optional(m.yieldMpa(), Pressure::paFromMpa),
                m.knockdown(),
                Reading.or(m.shearKnockdown(), m.knockdown()),
                "the request");
    }

    private Optional<Material> named(String name, String at) {
        Optional<Material> found = Optional.ofNullable(own.get(name)).or(() -> Materials.named(name));
        if (found.isEmpty()) {
            reading.fault(
                    at,
                    "unknown_material",
                    "no material is called "
                            + name
                            + ": give it in materials, or one of "
                            + String.join(
                                    ", ",
                                    Materials.all().stream().map(Material::name).toList()));
        }
        return found;
    }

    Optional<Spar> spar(ApiLoadsSpar spar, String at) {
        boolean inside = inside(spar.toLateralMm(), ApiLoadsSpar.TO_LATERAL_MM.at(at));
        boolean outwards = spar.toLateralMm() > spar.fromLateralMm();
        if (!outwards) {
            reading.fault(
                    ApiLoadsSpar.TO_LATERAL_MM.at(at),
                    "contradiction",
                    "to_lateral_mm is not beyond from_lateral_mm: a spar runs outwards");
        }
        Optional<Material> material = named(spar.material(), ApiLoadsSpar.MATERIAL.at(at));
        Optional<Section> section = section(
                spar.shape(),
                new Double[] {
                    spar.outsideDiameterMm(),
                    spar.insideDiameterMm(),
                    spar.widthMm(),
                    spar.heightMm(),
                    spar.capThicknessMm(),
                    spar.webThicknessMm()
                },
                material,
                at);
        if (!inside || !outwards || section.isEmpty() || material.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Spar(
                Length.mFromMm(spar.fromLateralMm()),
                Length.mFromMm(Math.min(spar.toLateralMm(), halfSpanMm)),
                section.get(),
                Reading.or(spar.count(), ApiLoadsSpar.COUNT),
                material.get(),
                Reading.or(spar.capSupport(), ApiCapSupport.FREE) == ApiCapSupport.FOAM));
    }

    /** Notes a station outside the wing. */
    boolean inside(double lateralMm, String at) {
        boolean inside = lateralMm <= halfSpanMm + SLACK_MM;
        if (!inside) {
            reading.fault(
                    at,
                    "contradiction",
                    String.format(
                            java.util.Locale.ROOT,
                            "%.1f mm is outside the wing, whose tip is %.1f mm from the middle",
                            lateralMm,
                            halfSpanMm));
        }
        return inside;
    }

    private Optional<Section> section(ApiLoadsShape shape, Double[] mm, Optional<Material> material, String at) {
        List<String> names = List.of(
                ApiLoadsSpar.OUTSIDE_DIAMETER_MM.name(),
                ApiLoadsSpar.INSIDE_DIAMETER_MM.name(),
                ApiLoadsSpar.WIDTH_MM.name(),
                ApiLoadsSpar.HEIGHT_MM.name(),
                ApiLoadsSpar.CAP_THICKNESS_MM.name(),
                ApiLoadsSpar.WEB_THICKNESS_MM.name());
        List<Integer> needed = switch (shape) {
            case TUBE -> List.of(0, 1);
            case ROD -> List.of(0);
            case RECTANGLE -> List.of(2, 3);
            case CAPPED -> List.of(2, 3, 4);
        };
        boolean sound = true;
        for (int i = 0; i < mm.length; i++) {
            boolean web = shape == ApiLoadsShape.CAPPED && i == 5;
            if (needed.contains(i) && mm[i] == null) {
                reading.fault(at + "/" + names.get(i), "missing", "a " + shape + " needs " + names.get(i));
                sound = false;
            } else if (!needed.contains(i) && !web && mm[i] != null) {
                reading.fault(at + "/" + names.get(i), "contradiction", "a " + shape + " takes no " + names.get(i));
                sound = false;
            }
        }
        return sound ? sized(shape, mm, material, at) : Optional.empty();
    }

    private Optional<Section> sized(ApiLoadsShape shape, Double[] mm, Optional<Material> material, String at) {
        if (shape == ApiLoadsShape.TUBE && mm[1] >= mm[0]) {
            reading.fault(
                    ApiLoadsSpar.INSIDE_DIAMETER_MM.at(at),
                    "contradiction",
                    "inside_diameter_mm is not below outside_diameter_mm: the tube has no wall");
            return Optional.empty();
        }
        if (shape == ApiLoadsShape.CAPPED && 2 * mm[4] >= mm[3]) {
            reading.fault(
                    ApiLoadsSpar.CAP_THICKNESS_MM.at(at),
                    "contradiction",
                    "two caps of cap_thickness_mm are as high as height_mm: nothing is between them");
            return Optional.empty();
        }
        if (shape == ApiLoadsShape.TUBE || shape == ApiLoadsShape.ROD) {
            return Optional.of(Section.round(Length.mFromMm(mm[0]), mm[1] == null ? 0 : Length.mFromMm(mm[1])));
        }
        boolean capped = shape == ApiLoadsShape.CAPPED;
        double ratio = web.isPresent() && material.isPresent()
                ? web.get().modulusPa() / material.get().modulusPa()
                : 0;
        return Optional.of(new Section(
                SparShape.valueOf(shape.name()),
                Length.mFromMm(mm[3]),
                Length.mFromMm(mm[2]),
                0,
                capped ? Length.mFromMm(mm[4]) : 0,
                mm[5] == null ? 0 : Length.mFromMm(mm[5]),
                ratio));
    }

    Optional<Joint> joint(ApiLoadsJoint joint, String at) {
        ApiLoadsJoiner joiner = joint.joiner();
        String place = ApiLoadsJoint.JOINER.at(at);
        boolean inside = inside(joint.lateralMm(), ApiLoadsJoint.LATERAL_MM.at(at));
        Optional<Material> material = named(joiner.material(), ApiLoadsJoiner.MATERIAL.at(place));
        Optional<Section> section = section(
                joiner.shape(),
                new Double[] {
                    joiner.outsideDiameterMm(),
                    joiner.insideDiameterMm(),
                    joiner.widthMm(),
                    joiner.heightMm(),
                    joiner.capThicknessMm(),
                    joiner.webThicknessMm()
                },
                material,
                place);
        Optional<Socket> socket = socket(joint.socket(), ApiLoadsJoint.SOCKET.at(at));
        if (!inside || material.isEmpty() || section.isEmpty() || socket.isEmpty()) {
            return Optional.empty();
        }
        Double width = joint.socket() == null ? null : joint.socket().widthMm();
        return Optional.of(new Joint(
                joint.name(),
                Length.mFromMm(Math.min(joint.lateralMm(), halfSpanMm)),
                new Spar(0, 1, section.get(), Reading.or(joiner.count(), ApiLoadsJoiner.COUNT), material.get(), false),
                Length.mFromMm(joiner.engagementMm()),
                socket.get().pa(),
                FoamSocket.KNOCKDOWN,
                width == null ? section.get().widthM() : Length.mFromMm(width)));
    }

    private record Socket(OptionalDouble pa) {}

    private Optional<Socket> socket(ApiLoadsSocket socket, String at) {
        if (socket == null) {
            return Optional.of(new Socket(OptionalDouble.empty()));
        }
        if (!reading.atMostOne(
                at,
                List.of(ApiLoadsSocket.BEARING_STRENGTH_MPA.name(), ApiLoadsSocket.MATERIAL.name()),
                socket.bearingStrengthMpa(),
                socket.material())) {
            return Optional.empty();
        }
        if (socket.material() == null) {
            return Optional.of(new Socket(Reading.optional(socket.bearingStrengthMpa(), Pressure::paFromMpa)));
        }
        Optional<FoamSocket> foam = FoamSocket.named(socket.material());
        if (foam.isEmpty()) {
            reading.fault(
                    ApiLoadsSocket.MATERIAL.at(at),
                    "unknown_material",
                    "no foam is called "
                            + socket.material()
                            + ": give bearing_strength_mpa, or one of "
                            + String.join(
                                    ", ",
                                    FoamSocket.all().stream()
                                            .map(FoamSocket::name)
                                            .toList()));
        } else {
            reading.assume(
                    ApiLoadsSocket.MATERIAL.at(at),
                    String.format(
                            java.util.Locale.ROOT,
                            "%.3f MPa at 10 %% crushing, of which half is counted on",
                            Pressure.mpaFromPa(foam.get().crushingPa())),
                    foam.get().source());
        }
        return foam.map(f -> new Socket(OptionalDouble.of(f.crushingPa())));
    }
}
