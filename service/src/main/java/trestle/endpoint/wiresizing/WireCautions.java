package trestle.endpoint.wiresizing;

import java.util.ArrayList;
import java.util.List;
import trestle.wiring.ContactMaterial;
import trestle.wiring.Enclosure;
import trestle.wiring.WireTask;

/** What to mind with a run of wire. */
final class WireCautions {
    /** Extra-low voltage of direct current, dry: IEC 61140, from memory. */
    private static final double SHOCK_V = 60;

    private WireCautions() {}

    static List<String> of(WireTask task) {
        List<String> cautions = new ArrayList<>();
        cautions.add("High current: fuse or limit what can be shorted, insulate every joint, and follow the maker's"
                + " ratings for wire and connectors.");
        cautions.add("A computed temperature is for clean, sound joints in the place described; measure with a probe"
                + " after the first full-load run; a wire within its rating can still burn skin and foam.");
        if (inFoam(task)) {
            cautions.add("Foam holds heat in, softens long before insulation does, and burns: keep joints and plugs out"
                    + " of it, and look into the channel after the first full-load run.");
        }
        if (task.run().feedsController()) {
            cautions.add("Plugging in charges the motor controller's capacitors at once: an arc wears the plug. Keep"
                    + " the propeller off or clear, push the plug home in one move, or use one with a precharge"
                    + " resistor.");
        }
        if (task.fuse().isPresent()) {
            cautions.add(
                    "A fuse protects wire, not people or motors, and stops all behind it when it opens: put it next"
                            + " to the pack, keep controls on another source, and take its times from its maker's sheet.");
        }
        if (task.run().supplyVoltageV() > SHOCK_V) {
            cautions.add("Above 60 V (from memory, IEC 61140) a touch can kill: cover every contact, and never work on"
                    + " it while it is connected.");
        }
        return cautions;
    }

    private static boolean inFoam(WireTask task) {
        return task.surroundings().enclosure() == Enclosure.FOAM_CHANNEL
                || task.touches().orElse(List.of()).stream().anyMatch(WireCautions::isFoam);
    }

    private static boolean isFoam(ContactMaterial material) {
        return switch (material) {
            case EPS_FOAM, XPS_FOAM, MOULDED_BEAD_FOAM, EPP_FOAM -> true;
            default -> false;
        };
    }
}
