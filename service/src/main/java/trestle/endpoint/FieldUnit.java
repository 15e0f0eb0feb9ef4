package trestle.endpoint;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;

/** The unit that a field's name ends in, as the contract's table of suffixes has it. */
public final class FieldUnit {
    /** Longest suffixes first: {@code _g_per_dm2} before {@code _dm2}. */
    private static final Map<String, String> UNITS = units();

    private FieldUnit() {}

    /**
     * The unit of a field.
     *
     * @param field its name, or a JSON Pointer that ends in it
     * @return the unit as written in print; empty for a field without one
     */
    public static String of(String field) {
        for (Map.Entry<String, String> unit : UNITS.entrySet()) {
            if (field.endsWith(unit.getKey())) {
                return unit.getValue();
            }
        }
        return "";
    }

    /**
     * The end of a field's name that says its unit.
     *
     * @param field its name
     * @return the suffix; empty for a field without one
     */
    public static String suffixOf(String field) {
        return UNITS.keySet().stream().filter(field::endsWith).findFirst().orElse("");
    }

    /**
     * A value with the unit of its field.
     *
     * @param value the value
     * @param field name of the field
     * @return for example {@code 25 °C}
     */
    public static String withUnit(Object value, String field) {
        String unit = of(field);
        String text = value instanceof Number number ? plain(number) : String.valueOf(value);
        return unit.isEmpty() ? text : text + " " + unit;
    }

    private static String plain(Number number) {
        BigDecimal exact = new BigDecimal(number.toString()).stripTrailingZeros();
        return Math.abs(exact.scale()) > 12 ? exact.toString() : exact.toPlainString();
    }

    private static Map<String, String> units() {
        Map<String, String> units = new LinkedHashMap<>();
        units.put("_g_per_dm2", "g/dm²");
        units.put("_w_per_kg", "W/kg");
        units.put("_wh_per_kg", "Wh/kg");
        units.put("_wh_per_km", "Wh/km");
        units.put("_m_per_s", "m/s");
        units.put("_rpm_per_v", "rpm/V");
        units.put("_k_per_w", "K/W");
        units.put("_n_per_m", "N/m");
        units.put("_n_m", "N m");
        units.put("_milliohm", "mΩ");
        units.put("_percent", "%");
        units.put("_percent_mac", "% of the mean aerodynamic chord");
        units.put("_percent_chord", "% of the chord");
        units.put("_mpa", "MPa");
        units.put("_dm2", "dm²");
        units.put("_km2", "km²");
        units.put("_mm2", "mm²");
        units.put("_hpa", "hPa");
        units.put("_deg", "°");
        units.put("_rpm", "rpm");
        units.put("_min", "min");
        units.put("_days", "days");
        units.put("_ah", "Ah");
        units.put("_wh", "Wh");
        units.put("_mm", "mm");
        units.put("_cm", "cm");
        units.put("_px", "pixels");
        units.put("_km", "km");
        units.put("_in", "inch");
        units.put("_ut", "µT");
        units.put("_uf", "µF");
        units.put("_g", "g");
        units.put("_m", "m");
        units.put("_s", "s");
        units.put("_h", "h");
        units.put("_v", "V");
        units.put("_a", "A");
        units.put("_w", "W");
        units.put("_c", "°C");
        units.put("_n", "N");
        units.put("_k", "K");
        units.put("_j", "J");
        return units;
    }
}
